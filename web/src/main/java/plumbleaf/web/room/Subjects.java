package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;

/** What the drawings are of, put together from a design. */
record Subjects(Design design) {
    /** A gate with one leaf that was worked out. */
    Optional<GateSubject> of(GateDesign gate) {
        if (gate.plan().leaves().isEmpty()) return Optional.empty();
        Optional<Post> hinge = post(gate.hingePost());
        Optional<Post> latch = post(gate.latchPost());
        if (hinge.isEmpty() || latch.isEmpty()) return Optional.empty();
        return Optional.of(new GateSubject(
                gate.plan(),
                gate.parts(),
                gate.hingePost(),
                gate.latchPost(),
                hinge.get().top().minus(gate.plan().pinElevation()),
                latch.get().top().minus(gate.plan().pinElevation()),
                gate.asked().latch().height(),
                design.job().display()));
    }

    List<PostDetail> posts(RunLayout run) {
        List<PostDetail> details = new ArrayList<>();
        for (PostDesign post : design.posts()) {
            if (!post.post().run().equals(run.run())) continue;
            details.add(new PostDetail(
                    post.post(),
                    post.hole(),
                    post.depth(),
                    post.length(),
                    post.section().name(),
                    post.concrete().volume(),
                    post.depthBy()));
        }
        return details;
    }

    private Optional<Post> post(String id) {
        for (RunLayout run : design.layout().runs())
            for (Post post : run.posts()) if (post.id().equals(id)) return Optional.of(post);
        return Optional.empty();
    }
}
