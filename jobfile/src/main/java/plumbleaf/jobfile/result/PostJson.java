package plumbleaf.jobfile.result;

import plumbleaf.engine.line.Post;
import plumbleaf.engine.support.Support;
import plumbleaf.jobfile.json.Json;

/** {@code posts[]}. */
final class PostJson {
    private PostJson() {}

    static Json.Members post(Post post) {
        Json.Members members = Json.object().put("id", post.id()).put("run", post.run());
        if (!post.gate().isEmpty()) members.put("gate", post.gate());
        return members.put("role", post.role().key())
                .put("stationIn", post.station().inches())
                .put("xIn", post.at().xIn())
                .put("yIn", post.at().yIn())
                .put("gradeElevationIn", post.grade().inches())
                .put("topElevationIn", post.top().inches())
                .put("outOfGroundIn", post.outOfGround().inches())
                .put("support", supportKey(post.support()));
    }

    static String supportKey(Support support) {
        return support.match(
                newFooting -> "new-footing",
                driven -> "driven",
                plate -> "slab-plate",
                socket -> "core-socket",
                wall -> "wall-anchor",
                existing -> "existing");
    }
}
