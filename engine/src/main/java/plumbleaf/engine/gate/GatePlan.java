package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * A gate worked out: its leaves, how they swing, and what is to be said about them.
 *
 * @param gate id
 * @param hands what was said of the hand, or all that agree with what was said
 * @param sentence the sentence for the hand, or what is missing of it
 * @param opening as used: what is plumb between standing posts, once they were measured
 * @param hingePostCentre distance of the hinge post's centre from the opening's face at the hinges
 * @param latchPostCentre the same of the latch post
 * @param grade of the ground between the post faces, hinge to latch, + up
 * @param pinElevation elevation of finished grade at the pin axis: z = 0
 * @param fits each leaf's room between the posts as they stand; empty until they were measured
 * @param hangs one leaf of a swing gate, two of a pair with leaf a first, none where the kind is not worked out
 * @param meeting where the leaves of a pair meet
 * @param slide of a cantilever slide gate, its leaf and its way
 * @param swings of the stated hand, or of each in question, worst first; for a pair the worst of each leaf
 * @param regrades ground that is shaved for it, where the job says so
 * @param everyHand all that were worked out: the four hinge and swing sides of a single leaf
 */
public record GatePlan(
        String gate,
        List<Hand> hands,
        String sentence,
        Opening opening,
        Length hingePostCentre,
        Length latchPostCentre,
        Slope grade,
        Offset pinElevation,
        List<AsSetFit> fits,
        List<LeafHang> hangs,
        Optional<MeetingPlace> meeting,
        Optional<SlidePlan> slide,
        List<Swing> swings,
        List<Swing> everyHand,
        List<Regrade> regrades,
        List<Finding> findings) {
    public GatePlan {
        regrades = List.copyOf(regrades);
        hands = List.copyOf(hands);
        fits = List.copyOf(fits);
        hangs = List.copyOf(hangs);
        swings = List.copyOf(swings);
        everyHand = List.copyOf(everyHand);
        findings = List.copyOf(findings);
    }

    /** Its leaves as they are built: those that hang, a before b, or the one that slides. */
    public List<Leaf> leaves() {
        return Stream.concat(hangs.stream().map(LeafHang::leaf), slide.stream().map(SlidePlan::leaf))
                .toList();
    }

    /** The same with a leaf that slides. */
    GatePlan sliding(SlidePlan plan) {
        return new GatePlan(
                gate,
                hands,
                sentence,
                opening,
                hingePostCentre,
                latchPostCentre,
                grade,
                plan.zero(),
                fits,
                hangs,
                meeting,
                Optional.of(plan),
                swings,
                everyHand,
                regrades,
                findings);
    }

    /** The same with ground that is shaved for it. */
    GatePlan regraded(List<Regrade> cuts) {
        return new GatePlan(
                gate,
                hands,
                sentence,
                opening,
                hingePostCentre,
                latchPostCentre,
                grade,
                pinElevation,
                fits,
                hangs,
                meeting,
                slide,
                swings,
                everyHand,
                cuts,
                findings);
    }

    /** A leaf in its place, by its id. */
    public Optional<LeafHang> hang(String leaf) {
        return hangs.stream().filter(hang -> hang.id().equals(leaf)).findFirst();
    }

    /** The swing to show: the stated hand's, or the worst of those in question. */
    public Optional<Swing> swing() {
        return swings.stream().findFirst();
    }
}
