package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateForces;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.section.PostStock;

/**
 * What a leaf does to itself and to its posts, asked before anything else is. A leaf on two hinges and one hold is held by as many forces as statics finds: what it
 * feels depends neither on how its post gives nor on its footing, so one answer serves for every post and every hole. Of a pair this holds for the leaf
 * that stands open, since closed each leaf leans on the other. A part of the truth: what fails here fails, what passes is asked again with all cases.
 */
final class LeafFirst {
    private final GateSite site;
    private final PostWork posts;
    private final Map<LeafPick, List<Hung>> found = new LinkedHashMap<>();

    /** A leaf with its cases, what acts on it, and the posts it hangs on and latches to. */
    record Hung(HungGate gate, HungLoads loads, List<CaseForces> cases, Post post, Optional<Post> latchPost) {}

    LeafFirst(GateSite site, PostWork posts) {
        this.site = site;
        this.posts = posts;
    }

    /** Whether statics finds the forces of the closed leaf too. */
    boolean isDeterminate() {
        return isSingle() && site.gate().hinges().count() == 2;
    }

    private boolean isSingle() {
        return site.gate().kind().match(swing -> true, pair -> false, slide -> false, flagged -> false);
    }

    /** Nothing where hinges hang on a wall, or the gate does not hang, or where more than two hinges share the leaf in a way that its post decides. */
    List<Hung> of(TriedBuild tried, GatePlan plan) {
        if (site.gate().hinges().count() != 2) return List.of();
        return found.computeIfAbsent(tried.leaf(), missing -> worked(tried.build(), plan));
    }

    private List<Hung> worked(PickedGate build, GatePlan plan) {
        List<HungGate> gates = GateWork.hungGates(site, build, plan);
        List<Hung> all = new ArrayList<>();
        for (int i = 0; i < gates.size(); i++) {
            HungGate gate = gates.get(i);
            if (gate.isOnWall()) return List.of();
            HungLoads loads = GateWork.loads(site, build, plan, i);
            Post post = GateWork.hingePost(site, plan, plan.hangs().get(i));
            Post other = post.equals(site.first()) ? site.second() : site.first();
            List<CaseForces> cases = isSingle() ? GateForces.closedAndOpen(gate, loads) : GateForces.open(gate, loads);
            all.add(new Hung(gate, loads, cases, post, isSingle() ? Optional.of(other) : Optional.empty()));
        }
        return all;
    }

    /** The closed leaves of a pair in this build: how they share what they carry depends on all of it. Nothing at a gate of one leaf. */
    List<Hung> closedPair(TriedBuild tried, GatePlan plan) {
        List<Hung> open = of(tried, plan);
        if (isSingle() || open.size() < 2) return List.of();
        List<HungGate> gates = GateWork.hungGates(site, tried.build(), plan);
        List<HungLoads> loads = open.stream().map(Hung::loads).toList();
        List<List<CaseForces>> cases = GateWork.closedPair(site, plan, gates, loads);
        List<Hung> closed = new ArrayList<>();
        for (int i = 0; i < 2; i++)
            closed.add(new Hung(
                    gates.get(i), loads.get(i), cases.get(i), open.get(i).post(), Optional.empty()));
        return closed;
    }

    /** The frame and its welds. */
    List<Finding> frame(Hung hung, Joint joint) {
        List<Finding> findings = new ArrayList<>(
                GateStrength.findings(hung.gate().leaf().id(), hung.gate(), hung.cases(), site.basis()));
        findings.add(GateJoints.frameFinding(hung.gate(), hung.cases(), joint, site.basis()));
        return findings;
    }

    /** What its hinges are pulled with. */
    List<Finding> hinges(Hung hung) {
        HungGate gate = hung.gate();
        String part = isSingle() ? site.gate().id() : gate.leaf().id();
        return HingeChecks.findings(part, HingeChecks.uses(gate.leaf(), hung.cases(), gate.hinge()), gate.hinge());
    }

    /** The hinge post, and the latch post where the leaf has one, in this build. */
    List<PostDesign> posts(Hung hung, PickedGate build) {
        boolean single = hung.latchPost().isPresent();
        HungGate on = hung.gate().on(build.postOf(hung.gate().leaf().hand().hinge(), single));
        List<CombinedAction> atHinges = new ArrayList<>();
        List<CombinedAction> atLatch = new ArrayList<>();
        for (CaseForces each : hung.cases()) {
            atHinges.add(new CombinedAction(
                    each.combination(),
                    each.state().key(),
                    each.wind().key(),
                    GateForces.onPost(on, hung.loads(), each)));
            atLatch.add(each.onLatchPost());
        }
        List<PostDesign> designs = new ArrayList<>();
        HoleSize hole =
                GateFoot.holeOf(site, build.hole(), hung.gate().leaf().hand().hinge(), single);
        HoleSize second = GateFoot.secondHole(site, build.hole());
        designs.add(design(hung.post(), hole, on.hingePost(), atHinges, true));
        hung.latchPost().ifPresent(post -> designs.add(design(post, second, build.latchPost(), atLatch, false)));
        return designs;
    }

    private PostDesign design(
            Post post, HoleSize hole, PostStock section, List<CombinedAction> actions, boolean hangs) {
        return posts.gatePost(
                post,
                section,
                hole.diameter(),
                Stated.of(hole.depth()),
                actions,
                hangs,
                Length.ZERO,
                site.wind(),
                Optional.empty());
    }
}
