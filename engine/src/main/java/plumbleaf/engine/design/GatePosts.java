package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.strength.RatedGust;

/**
 * A gate with its two posts designed.
 *
 * @param gate with its load path
 */
record GatePosts(GateDesign gate, PostDesign hinge, PostDesign latch) {
    /** @param depth of both footings, where the job fixes it */
    static GatePosts of(GateSite site, GateDesign gate, Stated<Length> depth, Length forDrop, PostWork work) {
        PickedGate build = gate.build();
        Post hingePost = site.post(gate.hingePost());
        Post latchPost = site.post(gate.latchPost());
        Length hole = build.hole().diameter();
        if (gate.hung().isEmpty()) {
            return new GatePosts(
                    gate,
                    work.gatePostWithoutGate(hingePost, build.hingePost(), hole, depth, site.wind()),
                    work.gatePostWithoutGate(latchPost, build.latchPost(), hole, depth, site.wind()));
        }
        HungLeaf hung = gate.hung().get(0);
        List<CombinedAction> onHinge =
                hung.cases().stream().map(CaseForces::onHingePost).toList();
        List<CombinedAction> onLatch =
                hung.cases().stream().map(CaseForces::onLatchPost).toList();
        PostDesign hinge = work.gatePost(hingePost, build.hingePost(), hole, depth, onHinge, forDrop, site.wind());
        PostDesign latch = work.gatePost(latchPost, build.latchPost(), hole, depth, onLatch, forDrop, site.wind());
        PostWall wall = PostWall.of(hung);
        Speed slam = site.gate().loads().slamSpeed();
        List<Finding> more = List.of(
                wall.finding(hinge.id(), site.basis()),
                SlamCheck.of(hung.gate(), build.latchPost(), slam).finding(gate.id(), slam));
        return new GatePosts(gate.onPosts(loadPath(hung, wall, hinge, latch), more), hinge, latch);
    }

    /** The same with the gust its links stand. A search over builds does not ask for it. */
    GatePosts rated(GateSite site) {
        if (gate.hung().isEmpty()) return this;
        HungLeaf hung = gate.hung().get(0);
        GateGust gust = new GateGust(site, hung);
        RatedGust onHingePost = gust.post(hinge, CaseForces::hingePost, footing(site, hinge));
        RatedGust onLatchPost = gust.post(latch, CaseForces::latchPost, footing(site, latch));
        RatedGust whole = gust.leaf(PostWall.of(hung)).lesser(onHingePost).lesser(onLatchPost);
        return new GatePosts(gate.rated(whole), hinge.rated(onHingePost), latch.rated(onLatchPost));
    }

    private static FootingGust footing(GateSite site, PostDesign post) {
        return new FootingGust(post.footing(), site.job().site().soil(), site.standards());
    }

    /** The deeper of what its two footings need: both are dug alike. */
    Length depth() {
        Length hingeDepth = hinge.footing().hole().depth();
        Length latchDepth = latch.footing().hole().depth();
        return hingeDepth.compareTo(latchDepth) > 0 ? hingeDepth : latchDepth;
    }

    private static List<LinkUse> loadPath(HungLeaf hung, PostWall wall, PostDesign hinge, PostDesign latch) {
        List<LinkUse> path = new ArrayList<>();
        GateStrength.FrameUse frame = GateStrength.frame(hung, true);
        path.add(new LinkUse("leaf frame", frame.member(), frame.utilisation()));
        for (HingeUse use : hung.hinges())
            use.utilisation().ifPresent(ratio -> path.add(new LinkUse("hinge", use.id(), ratio)));
        path.add(new LinkUse("hinge post wall", hinge.id(), wall.utilisation()));
        for (PostDesign post : List.of(hinge, latch)) {
            String name = post.equals(hinge) ? "hinge post" : "latch post";
            for (Checkpoint check : post.checks()) {
                boolean steel = check.check().equals("steel");
                path.add(new LinkUse(
                        steel ? name : name + " footing",
                        steel ? post.id() : post.footing().part(),
                        check.utilisation()));
            }
        }
        path.sort(Comparator.comparingDouble(LinkUse::utilisation).reversed().thenComparing(LinkUse::part));
        return path;
    }
}
