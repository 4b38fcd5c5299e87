package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;

/**
 * Depth of a pole by the building code's formulas, and what a given depth resists. Loads are those of allowable-stress design (0.6 W).
 *
 * <p>The code gives the load P at a height h; here P and its moment about grade, {@code M = P h}, so that a moment alone (the dead weight of a gate)
 * is the limit of P going to nothing. Pressure stops growing at 12 ft of depth; the cap is on d, before the division by three.
 */
public final class PoleDepth {
    /** IBC 1807.3.2.1: depth beyond which lateral pressure no longer grows. */
    static final double CAP_FT = 12;
    /** Deeper than any pole is set; the search ends there. */
    private static final double DEEPEST_FT = 200;
    /** Halvings of 200 ft that leave less than 1e-12 ft. */
    private static final int HALVINGS = 60;

    private PoleDepth() {}

    /**
     * Depth without restraint at grade: {@code d = 0.5 A [1 + sqrt(1 + 4.36 h / A)], A = 2.34 P / (S1 b), S1 = S min(d, 12) / 3}, solved for the d on
     * both sides. With M it reads {@code d = 0.5 [A + sqrt(A2 + 10.2 M / (S1 b))]}, good down to P = 0: {@code d3 = 7.652 M / (S b)}.
     * Source: IBC 2021 1807.3.2.1, Equation 18-1. Check: PoleDepthCheck (E1, E4 to E7).
     *
     * @param push resultant of all lateral loads, zero or more
     * @param momentAtGrade its moment about grade with any moment added, zero or more
     * @param lateralPerFoot S, lateral bearing per foot of depth, doubled where that is allowed
     * @param width b: diameter of a round footing, diagonal of a square one
     */
    public static Length nonconstrained(Force push, Moment momentAtGrade, Pressure lateralPerFoot, Length width) {
        return nonconstrained(push, momentAtGrade, lateralPerFoot, width, CAP_FT);
    }

    static Length nonconstrained(
            Force push, Moment momentAtGrade, Pressure lateralPerFoot, Length width, double capFt) {
        if (push.pounds() == 0 && momentAtGrade.isZero()) return Length.ZERO;
        double low = 0;
        double high = DEEPEST_FT;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (fromTrial(push, momentAtGrade, lateralPerFoot, width, middle, capFt) > middle) low = middle;
            else high = middle;
        }
        return Length.feet(high);
    }

    /** One step of the code's iteration: the depth that a trial depth asks for. Check: PoleDepthCheck (E4, E6). */
    public static Length fromTrial(
            Force push, Moment momentAtGrade, Pressure lateralPerFoot, Length width, Length trial) {
        return Length.feet(fromTrial(push, momentAtGrade, lateralPerFoot, width, trial.inFeet(), CAP_FT));
    }

    private static double fromTrial(
            Force push, Moment moment, Pressure lateralPerFoot, Length width, double trialFt, double capFt) {
        double s1Psf = lateralPerFoot.psf() * Math.min(trialFt, capFt) / 3;
        double aFt = 2.34 * push.pounds() / (s1Psf * width.inFeet());
        double square = 4.36 * 2.34 * moment.inPoundFeet() / (s1Psf * width.inFeet());
        return 0.5 * (aFt + Math.sqrt(aFt * aFt + square));
    }

    /**
     * Depth where a slab holds the post at grade: {@code d2 = 4.25 M / (S3 b), S3 = S min(d, 12)}.
     * A walk that merely lies against the post is no restraint. Source: IBC 2021 1807.3.2.2, Equations 18-2 and 18-3. Check: PoleDepthCheck (E2, E3).
     */
    public static Length constrained(Moment momentAtGrade, Pressure lateralPerFoot, Length width) {
        double cube = 4.25 * momentAtGrade.inPoundFeet() / (lateralPerFoot.psf() * width.inFeet());
        double dFt = StrictMath.cbrt(cube);
        return Length.feet(dFt <= CAP_FT ? dFt : Math.sqrt(cube / CAP_FT));
    }

    /**
     * The greatest push at height h that a depth resists: {@code P = A S1 b / 2.34, A = d2 / (d + 1.09 h)}, the depth formula turned round.
     * Source: IBC 2021 1807.3.2.1. Check: PoleDepthCheck (round trip on E1).
     */
    public static Force allowedPush(Length depth, Length height, Pressure lateralPerFoot, Length width) {
        double dFt = depth.inFeet();
        double s1Psf = lateralPerFoot.psf() * Math.min(dFt, CAP_FT) / 3;
        double aFt = dFt * dFt / (dFt + 1.09 * height.inFeet());
        return Force.pounds(aFt * s1Psf * width.inFeet() / 2.34);
    }

    /** The greatest moment alone that a depth resists: the same limit for no push. */
    public static Moment allowedMoment(Length depth, Pressure lateralPerFoot, Length width) {
        double dFt = depth.inFeet();
        double s1Psf = lateralPerFoot.psf() * Math.min(dFt, CAP_FT) / 3;
        return Moment.poundFeet(4 * dFt * dFt * s1Psf * width.inFeet() / (4.36 * 2.34));
    }
}
