package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;

/**
 * How depths are chosen.
 *
 * @param frostMargin added to the frost depth
 * @param least the job's minimum
 * @param step depths go up to the next of these
 */
public record FootingRules(Length frostMargin, Length least, Length step) {
    /** 24 in. at least, in steps of 6 in.; common practice, no source. */
    public static final FootingRules USUAL = new FootingRules(Length.ZERO, Length.inches(24), Length.inches(6));

    /** A depth a hair over a step, from rounding in the last digit, is not another step. Share of a step. */
    private static final double HAIR = 1e-9;

    public FootingRules {
        if (step.isZero()) throw new IllegalArgumentException("Depths need a step");
    }

    /** Up to the next step. */
    public Length rounded(Length needed) {
        return step.times(Math.ceil(needed.inches() / step.inches() - HAIR));
    }
}
