package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.LatchLive;

/**
 * What a closed gate moves at its latch before anything is strained: bar in keeper, pin in barrel, and of a pair the drop rod in its guides and its ground sleeve.
 *
 * @param across the leaf, each way from its middle: the leaf turns about its pins until something bears
 * @param apart along the fence, out of the keeper: each leaf by the play of its hinges
 */
record LatchPlay(Length across, Length apart) {
    /** A leaf that moves further in its latch knocks in every wind. Judgement. */
    private static final Length KNOCKS = Length.inches(0.25);

    static LatchPlay single(LatchModel latch, HungLeaf leaf) {
        return new LatchPlay(latch.play().times(0.5), leaf.gate().hinge().slack());
    }

    /** The rod lets its leaf go, and the latch lets the other one go beside it. */
    static LatchPlay pair(LatchModel latch, RodModel rod, List<HungLeaf> leaves) {
        Length apart = Length.ZERO;
        for (HungLeaf leaf : leaves) apart = apart.plus(leaf.gate().hinge().slack());
        return new LatchPlay(latch.play().times(0.5).plus(rod.playEachWay()), apart);
    }

    static Finding ofLatch(String gate, LatchModel latch, HungLeaf leaf, DisplayUnits display) {
        return knocks(
                gate,
                single(latch, leaf).across(),
                "its " + latch.name() + " lets the closed leaf go",
                "A bar that is wedged, or a keeper shimmed, takes it up.",
                display);
    }

    static Finding ofPair(String gate, LatchModel latch, RodModel rod, List<HungLeaf> leaves, DisplayUnits display) {
        return knocks(
                gate,
                pair(latch, rod, leaves).across(),
                "the " + rod.name() + " has " + display.length(rod.playEachWay())
                        + " each way in its guides and its ground sleeve and the latch "
                        + display.length(latch.play().times(0.5)) + ", which lets the closed leaves go",
                "A sleeve that fits the bar closer takes it up.",
                display);
    }

    private static Finding knocks(String gate, Length across, String what, String cure, DisplayUnits display) {
        boolean much = across.compareTo(KNOCKS) > 0;
        return Checked.of(
                "latch.play",
                Severity.CAUTION,
                gate,
                gate + ": " + what + " " + display.length(across) + " each way before anything holds them or it."
                        + (much ? " It knocks in every wind. " + cure : ""),
                Basis.judgement("1/4 in. each way before a closed leaf knocks"),
                Measure.demand(across.inches(), KNOCKS.inches(), "in"));
    }

    /**
     * Two leaves that go away from each other in the service gust, with the play of the hinges of both: the bar of their latch must still reach its keeper; and
     * one that goes up while the other goes down must stay within its tolerance.
     */
    static Finding reach(String gate, LatchModel latch, List<HungLeaf> leaves, DisplayUnits display) {
        double apart = 0;
        double height = 0;
        for (HungLeaf leaf : leaves) {
            LatchLive gust = leaf.sag().gust();
            apart += Math.max(0, -gust.away().inches())
                    + leaf.gate().hinge().slack().inches();
            height += Math.abs(gust.down().inches());
        }
        Measure reach = Measure.demand(apart, latch.bite().inches(), "in");
        Measure level = Measure.demand(height, latch.tolerance().inches(), "in");
        return Checked.of(
                "pair.reach",
                Severity.CAUTION,
                gate,
                gate + ": in the service gust its leaves go up to " + display.length(apart)
                        + " away from each other, the play of their hinges counted, and " + display.length(height)
                        + " past each other in height; the latch between them reaches "
                        + display.length(latch.bite()) + " into its keeper and takes "
                        + display.length(latch.tolerance()) + " either way.",
                Basis.judgement("the worst of both leaves added; the latch stays engaged in a service gust"),
                level.ratio().orElse(9) > reach.ratio().orElse(9) ? level : reach);
    }
}
