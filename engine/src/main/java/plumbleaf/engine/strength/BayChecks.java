package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.line.RailShare;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.section.Timber;

/**
 * Rails and picket fasteners of a bay of a wood fence, full of water.
 *
 * @param span between posts, along the slope
 * @param infill height of the pickets that the rails were placed for
 * @param hangs how the pickets hang under the lowest rail
 * @param rails how many were asked for
 * @param edge distance of the lowest rail's centre from the infill's bottom, and of the highest from its top
 * @param rail one of them as it stands
 * @param pickets species of the pickets
 */
public record BayChecks(
        String part,
        Length span,
        Length infill,
        HangingBoards hangs,
        int rails,
        Length edge,
        Timber rail,
        Boarding style,
        WoodSpecies pickets) {
    /** CM of nails that wood grows and shrinks round. Source: NDS 2018 Table 11.3.3, from memory. */
    private static final double WET_NAIL = 0.25;

    public BayChecks {
        if (rails < 1) throw new IllegalArgumentException("A bay needs a rail");
    }

    /** A bay of a style, its rails on edge. */
    public static BayChecks of(
            String part,
            Length span,
            Length infill,
            HangingBoards hangs,
            int count,
            Length edge,
            Boarding style,
            WoodSpecies rails,
            WoodSpecies pickets) {
        Timber rail = new Timber(style.railWidth(), style.railThickness(), rails);
        return new BayChecks(part, span, infill, hangs, count, edge, rail, style, pickets);
    }

    /** The height of fence whose wind the busiest rail carries, by {@link RailShare}: the lowest, under which pickets may hang further down, or an inner one. */
    public Length busiestShare() {
        double gapIn = Math.max(0, infill.inches() - 2 * edge.inches()) / Math.max(1, rails - 1);
        int all = rails + hangs.rails();
        if (all == 1 || gapIn <= 0) return infill.plus(hangs.below());
        double underIn = Math.max(
                0, edge.inches() + hangs.below().inches() - hangs.drop().inches());
        double spaceIn = hangs.rails() > 0 ? hangs.drop().inches() / hangs.rails() : gapIn;
        double lowest = RailShare.ofEnd(underIn, spaceIn, all == 2 ? edge.inches() : 0);
        return Length.inches(Math.max(lowest, all > 2 ? gapIn : 0));
    }

    /** The busiest rail, under its share of weight and wind. */
    public RailCheck railCheck(Pressure wind) {
        Length inch = Length.inches(1);
        double own = rail.weightOf(inch, Moisture.WET).pounds();
        double boards = style.boardThickness().inches()
                * infill.plus(hangs.below()).inches()
                * boardsOverFace()
                * pickets.densityAt(Moisture.WET).perCubicInch();
        double windLbPerIn = wind.inPsi() * busiestShare().inches();
        return new RailCheck(rail, span, own + boards / (rails + hangs.rails()), windLbPerIn);
    }

    /** Boards over face, all layers; gaps up to 1/4 in. are not taken off. */
    private double boardsOverFace() {
        double over = style.boardsOverFace();
        return style.spacing().gap().inches() > 0.25 ? over : Math.max(1, over);
    }

    /**
     * The board that hangs furthest below its lowest rail, as a lever under the wind on its width; only where boards hang further down than asked, elsewhere the rails
     * hold them near their ends.
     *
     * @param boardShare width of face whose wind a board takes
     */
    public Optional<Checked> leverCheck(Pressure wind, Length boardShare, DesignBasis basis) {
        if (hangs.isAsked()) return Optional.empty();
        Timber board = new Timber(style.boardWidth(), style.boardThickness(), pickets);
        return Optional.of(BoardLever.finding(part, board, hangs.lever(), wind.inPsi() * boardShare.inches(), basis));
    }

    /**
     * Every check of the bay.
     *
     * @param wind strength level, mean over the bay
     * @param nail diameter of a smooth picket nail
     * @param penetration into the rail
     */
    public List<Finding> findings(Pressure wind, Length nail, Length penetration, DesignBasis basis) {
        List<Finding> findings = new ArrayList<>(railCheck(wind).findings(part, basis));
        Force allowed = Withdrawal.allowed(
                Withdrawal.nailPerInch(rail.species().ovenDryGravity(), nail), penetration, RailCheck.WIND, WET_NAIL);
        Area crossing =
                Area.squareInches(style.boardWidth().inches() * busiestShare().inches());
        findings.add(PicketCheck.of(part, wind, crossing, style.fastenersPerCrossing(), allowed, basis));
        return List.copyOf(findings);
    }
}
