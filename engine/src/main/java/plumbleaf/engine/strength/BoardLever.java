package plumbleaf.engine.strength;

import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.section.Timber;

/** A fence board that hangs below its lowest rail, bent by the wind as a lever. */
public final class BoardLever {
    /** Of the finding. */
    public static final String ID = "picket.lever";

    private BoardLever() {}

    /**
     * {@code M = w c^2 / 2} on the board's flat, against Fb with size, flat use, wet service and wind's duration: as much as a span of {@code 2 c} takes in its
     * middle. A board thinner than 2 in. has no values of its own in the supplement and is taken at those of dimension lumber, judgement. It stops being true where a
     * board is split by its nails. Source: NDS 2018 3.3, Supplement Table 4A; statics. Check: BoardLeverCheck.
     *
     * @param board its width as the depth
     * @param lever c, from the rail's centre to the board's end
     * @param windLbPerIn w, strength level
     */
    public static double ratio(Timber board, Length lever, double windLbPerIn) {
        return new RailCheck(board, lever.times(2), 0, windLbPerIn).windRatio();
    }

    static Checked finding(String part, Timber board, Length lever, double windLbPerIn, DesignBasis basis) {
        double ratio = ratio(board, lever, windLbPerIn);
        return Checked.of(
                ID,
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                part,
                "Boards of " + part + " hang " + LengthText.feetAndInches(lever.inches())
                        + " below their lowest rail: the wind takes " + DecimalText.fixed(ratio, 2)
                        + " of their bending strength there.",
                Basis.clause("NDS 2018 3.3, wet service, wind duration 1.6"),
                Measure.demand(ratio, 1, ""));
    }
}
