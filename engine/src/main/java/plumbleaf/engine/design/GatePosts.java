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
        PostDesign hinge = work.gatePost(
                hingePost, build.hingePost(), hole, depth, actions(gate, hingePost), forDrop, site.wind());
        PostDesign latch = work.gatePost(
                latchPost, build.latchPost(), hole, depth, actions(gate, latchPost), forDrop, site.wind());
        List<Finding> more = new ArrayList<>();
        for (HungLeaf hung : gate.hung()) more.add(PostWall.of(hung).finding(hung.post(), site.basis()));
        if (gate.hung().size() == 1) {
            Speed slam = site.gate().loads().slamSpeed();
            more.add(SlamCheck.of(gate.hung().get(0).gate(), build.latchPost(), slam)
                    .finding(gate.id(), slam));
        }
        return new GatePosts(gate.onPosts(loadPath(gate, hinge, latch), more), hinge, latch);
    }

    /** What the leaves bring to a post: the one that hangs on it, and the one that latches to it. */
    private static List<CombinedAction> actions(GateDesign gate, Post post) {
        List<CombinedAction> actions = new ArrayList<>();
        for (HungLeaf hung : gate.hung()) {
            if (hung.post().equals(post.id())) for (CaseForces each : hung.cases()) actions.add(each.onHingePost());
            if (hung.latchPost().filter(post.id()::equals).isPresent())
                for (CaseForces each : hung.cases()) actions.add(each.onLatchPost());
        }
        return actions;
    }

    /** The same with the gust its links stand. A search over builds does not ask for it. */
    GatePosts rated(GateSite site) {
        if (gate.hung().isEmpty()) return this;
        HungLeaf first = gate.hung().get(0);
        HungLeaf last = gate.hung().get(gate.hung().size() - 1);
        GateGust gust = new GateGust(site, gate.plan(), first);
        GateGust other = new GateGust(site, gate.plan(), last);
        RatedGust onHingePost = gust.post(hinge, CaseForces::hingePost, footing(site, hinge));
        RatedGust onLatchPost = other.post(
                latch,
                last.latchPost().isPresent() ? CaseForces::latchPost : CaseForces::hingePost,
                footing(site, latch));
        RatedGust leaves = gust.leaf(PostWall.of(first)).lesser(other.leaf(PostWall.of(last)));
        if (gate.pair().isPresent()) leaves = leaves.lesser(gust.rod(gate.pair().get()));
        RatedGust whole = leaves.lesser(onHingePost).lesser(onLatchPost);
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

    private static List<LinkUse> loadPath(GateDesign gate, PostDesign hinge, PostDesign latch) {
        List<LinkUse> path = new ArrayList<>();
        for (HungLeaf hung : gate.hung()) {
            GateStrength.FrameUse frame = GateStrength.frame(hung, true);
            path.add(new LinkUse("leaf frame", frame.member(), frame.utilisation()));
            for (HingeUse use : hung.hinges())
                use.utilisation().ifPresent(ratio -> path.add(new LinkUse("hinge", use.id(), ratio)));
            path.add(new LinkUse(
                    "hinge post wall", hung.post(), PostWall.of(hung).utilisation()));
        }
        gate.pair()
                .ifPresent(pair ->
                        path.add(new LinkUse("drop rod", gate.id(), pair.rod().utilisation())));
        gate.pair().ifPresent(pair -> path.add(new LinkUse("sleeve footing", gate.id(), pair.sleeveUtilisation())));
        boolean single = gate.hung().size() == 1;
        for (PostDesign post : List.of(hinge, latch)) {
            String name = post.equals(hinge) || !single ? "hinge post" : "latch post";
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
