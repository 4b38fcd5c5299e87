package plumbleaf.engine.strength;

import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Pressure;

/** Pickets that suction pulls off their rails. */
public final class PicketCheck {
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();

    private PicketCheck() {}

    /**
     * Pull on one fastener: 0.6 of the wind on the board it shares, over the fasteners of the crossing, against its withdrawal.
     * Source: NDS 2018 12.2. Check: PostCheckTest.
     *
     * @param wind strength-level suction on the face
     * @param perCrossing area of board that one crossing of picket and rail holds
     * @param fasteners at a crossing
     * @param allowed withdrawal of one, with duration and wet service
     */
    public static Finding of(
            String part, Pressure wind, Area perCrossing, int fasteners, Force allowed, DesignBasis basis) {
        double pull = ASD * wind.psf() * perCrossing.inSquareFeet() / fasteners;
        return Checked.of(
                "picket.pull",
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                part,
                "Pickets of " + part + ": suction pulls each fastener with " + DecimalText.fixed(pull, 1)
                        + " lb; it may take " + DecimalText.fixed(allowed.pounds(), 1) + " lb.",
                Basis.clause("NDS 2018 12.2, wind duration 1.6"),
                Measure.demand(pull, allowed.pounds(), "lb"));
    }
}
