package plumbleaf.jobfile.result;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.design.Checkpoint;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.footing.BagSize;
import plumbleaf.engine.footing.DepthCause;
import plumbleaf.engine.footing.DepthNeed;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.support.Support;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code posts[]}: where each stands, what it is, its footing, what acts on it and how much of it is used. */
final class PostJson {
    private PostJson() {}

    static Node post(PostDesign design) {
        Post post = design.post();
        Json.Members members = Json.object().put("id", post.id()).put("run", post.run());
        if (!post.gate().isEmpty()) members.put("gate", post.gate());
        members.put("role", post.role().key())
                .put("stationIn", post.station().inches())
                .put("xIn", post.at().xIn())
                .put("yIn", post.at().yIn())
                .put("gradeElevationIn", post.grade().inches())
                .put("topElevationIn", post.top().inches())
                .put("outOfGroundIn", post.outOfGround().inches())
                .put("lengthIn", design.length().inches())
                .put("section", design.section().id())
                .put("support", supportKey(post.support()))
                .put("footing", design.footingId());
        footing(design, members);
        if (!design.held().facts().isEmpty()) members.put("held", held(design));
        CombinedAction governing = design.check().governing();
        members.put("momentAtGradeLbIn", size(governing.action()))
                .put("governingCase", governing.name())
                .put("actions", design.actions(), PostJson::action)
                .put("utilisation", design.utilisation())
                .put("utilisations", utilisations(design));
        design.rated().ifPresent(rated -> members.put("ratedGustMph", rated(rated)));
        return members.build();
    }

    private static String supportKey(Support support) {
        return support.match(
                newFooting -> "new-footing",
                driven -> "driven",
                plate -> "slab-plate",
                socket -> "core-socket",
                wall -> "wall-anchor",
                existing -> "existing");
    }

    /** The keys of a footing: of a post, and of a gate's hinge post again beside its sag. */
    static Json.Members footing(PostDesign design, Json.Members members) {
        Optional<FootingDesign> footing = design.footing();
        double concreteFt3 = design.concrete().volume().cubicFeet();
        return members.put("holeDiameterIn", design.hole().inches())
                .put("depthIn", design.depth().inches())
                .put(
                        "depthNeededIn",
                        footing.map(is -> is.depthNeeded().inches()).orElse(0.0))
                .put(
                        "depthGovernedBy",
                        footing.map(FootingDesign::governedBy)
                                .orElse(DepthCause.GIVEN)
                                .key())
                .put("depthNeeds", footing.map(FootingDesign::needs).orElse(List.of()), PostJson::need)
                .put("concreteFt3", concreteFt3)
                .put("bags", concreteFt3 / BagSize.EIGHTY_POUND.yield().cubicFeet());
    }

    /** What holds a post that nobody digs for, number by number; each key carries its unit. */
    private static Json.Members held(PostDesign design) {
        Json.Members members = Json.object();
        for (HeldPost.Fact fact : design.held().facts()) members.put(fact.key(), fact.value());
        return members;
    }

    private static Node need(DepthNeed need) {
        return Json.object()
                .put("cause", need.cause().key())
                .put("depthIn", need.depth().inches())
                .build();
    }

    private static Node action(CombinedAction action) {
        BaseAction at = action.action();
        return Json.object()
                .put("combination", action.combination().key())
                .put("leaf", action.state())
                .put("wind", action.wind())
                .put("downLb", at.down().pounds())
                .put("alongLb", at.along().pounds())
                .put("acrossLb", at.across().pounds())
                .put("momentAlongLbIn", at.momentAlong().poundInches())
                .put("momentAcrossLbIn", at.momentAcross().poundInches())
                .put("torsionLbIn", at.torsion().poundInches())
                .build();
    }

    private static double size(BaseAction action) {
        double along = action.momentAlong().poundInches();
        double across = action.momentAcross().poundInches();
        return Math.sqrt(along * along + across * across);
    }

    /** The greatest of each kind of check. */
    private static Json.Members utilisations(PostDesign design) {
        Json.Members members = Json.object();
        for (Checkpoint check : design.checks()) members.put(check.check(), check.utilisation());
        return members;
    }

    static Json.Members rated(RatedGust rated) {
        Json.Members members = Json.object()
                .put("allowable", rated.allowable().mph())
                .put("allowableLink", rated.allowableLink())
                .put("ultimate", rated.ultimate().mph())
                .put("ultimateLink", rated.ultimateLink());
        if (!rated.parts().isEmpty()) members.put("parts", rated.parts(), PostJson::part);
        return members;
    }

    private static Node part(RatedGust.Part part) {
        return Json.object()
                .put("link", part.link())
                .put("allowable", part.allowable().mph())
                .put("ultimate", part.ultimate().mph())
                .build();
    }
}
