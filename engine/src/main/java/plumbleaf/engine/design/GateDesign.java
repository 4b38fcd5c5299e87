package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.strength.RatedGust;

/**
 * A gate, designed.
 *
 * @param asked what was asked for
 * @param build what it is made of, where its kind is worked out
 * @param parts the same with hinge, latch and infill
 * @param plan opening, leaves, swing
 * @param hung how each leaf hangs; empty where that is not worked out
 * @param pair how the leaves of a pair are held where they meet
 * @param slide how a slide leaf is carried, where that is worked out
 * @param hingePost id of the post it hangs on; of a pair, leaf a; of a slide gate, that of the front rollers
 * @param latchPost id of the post it latches to; of a pair, the post leaf b hangs on
 * @param rated the gust at which the first of its links reaches its limits, posts and footings too; empty where that is not worked out
 * @param loadPath links from the leaf to the soil, weakest first
 */
public record GateDesign(
        Gate asked,
        PickedGate build,
        GateParts parts,
        GatePlan plan,
        List<HungLeaf> hung,
        Optional<PairDesign> pair,
        Optional<SlideDesign> slide,
        String hingePost,
        String latchPost,
        Optional<RatedGust> rated,
        List<LinkUse> loadPath,
        List<Finding> findings) {
    public GateDesign {
        hung = List.copyOf(hung);
        loadPath = List.copyOf(loadPath);
        findings = List.copyOf(findings);
    }

    public String id() {
        return asked.id();
    }

    /** What one of its leaves is made of: the right one of a pair may have its own. */
    public GateParts partsOf(Leaf leaf) {
        boolean pair = asked.kind().match(swing -> false, is -> true, other -> false, flagged -> false);
        return pair && leaf.hand().hinge() == Side.RIGHT ? parts.turned() : parts;
    }

    /** The same with more to say. */
    GateDesign with(List<Finding> more) {
        return onPosts(loadPath, more);
    }

    /** The same on its two posts, with what that adds. */
    GateDesign onPosts(List<LinkUse> path, List<Finding> more) {
        return new GateDesign(
                asked,
                build,
                parts,
                plan,
                hung,
                pair,
                slide,
                hingePost,
                latchPost,
                rated,
                path,
                Findings.join(findings, more));
    }

    /** The same, its slide leaf carried as another design of it carries it. */
    GateDesign carriedAs(GateDesign other) {
        return new GateDesign(
                asked,
                build,
                parts,
                plan,
                hung,
                pair,
                plan.slide().isPresent() ? other.slide() : slide,
                hingePost,
                latchPost,
                rated,
                loadPath,
                findings);
    }

    /** The same with the gust that each leaf of a pair stands. */
    GateDesign ratedLeaves(RatedGust a, RatedGust b) {
        return new GateDesign(
                asked,
                build,
                parts,
                plan,
                hung,
                pair.map(is -> is.rated(a, b)),
                slide,
                hingePost,
                latchPost,
                rated,
                loadPath,
                findings);
    }

    /** The same with its only leaf worked out further. */
    GateDesign hangingAs(HungLeaf leaf) {
        return new GateDesign(
                asked, build, parts, plan, List.of(leaf), pair, slide, hingePost, latchPost, rated, loadPath, findings);
    }

    GateDesign rated(RatedGust gust) {
        return new GateDesign(
                asked,
                build,
                parts,
                plan,
                hung,
                pair,
                slide,
                hingePost,
                latchPost,
                Optional.of(gust),
                loadPath,
                findings);
    }

    /** Remedies for a check of plain kind that fails; they are only looked for where it does. */
    GateDesign withRemedies(String id, Supplier<List<Remedy>> remedies) {
        List<Finding> cured = new ArrayList<>();
        for (Finding finding : findings) {
            boolean failed =
                    finding instanceof Checked && finding.id().equals(id) && finding.severity() != Severity.PASS;
            cured.add(failed ? ((Checked) finding).withRemedies(remedies.get()) : finding);
        }
        return new GateDesign(
                asked, build, parts, plan, hung, pair, slide, hingePost, latchPost, rated, loadPath, cured);
    }
}
