package plumbleaf.engine.footing;

import java.util.Optional;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.support.PullTest;

/**
 * What a post pulled by a hand scale tells of the ground it stands in: a reading in place of the worst guess.
 *
 * @param soil what presses back, at the depth given or found
 * @param depth of the post in the ground: as told, or found from how it shifts and turns
 * @param shift of the post at grade
 * @param turn of it there, bending taken off
 * @param readingError what a sixteenth of an inch between the two readings would change, as a share of their difference
 * @param leftOver share of the movement that stayed when the pull was let go
 */
public record PullFit(
        SoilStiffness soil, Length depth, Offset shift, Angle turn, double readingError, double leftOver) {
    /** More of the movement than this staying behind is a plug that is loose in its hole. Common practice, no source. */
    public static final double LOOSE = 0.1;

    /** Between two readings taken by eye against a string. Judgement. */
    private static final double SIXTEENTH_IN = 0.0625;

    /** No post stands shallower or deeper. Judgement. */
    private static final double SHALLOWEST_IN = 6;

    private static final double DEEPEST_IN = 120;
    private static final int HALVINGS = 80;

    /** How soil presses back: in sand more with depth, in clay alike all the way down. */
    public enum Kind {
        GROWING,
        CONSTANT
    }

    /** Two readings turned into the movement at grade. */
    private record AtGrade(double shiftIn, double turnRad) {}

    /**
     * Fits n_h or k D. The turn is {@code t = (y2 - y1 - bending) / (z2 - z1)}, the shift at grade what remains of the lower reading; with the depth
     * known, t gives the soil; unknown, shift over turn gives the depth first, {@code y0/t = L (24 M + 18 H L) / (36 M + 24 H L)} in sand and
     * {@code L (6 M + 4 H L) / (12 M + 6 H L)} in clay. Empty where the readings fit no post that turns in soil.
     * Source: rigid pier in elastic soil, as Broms 1964 (from memory), turned round. Check: PullFitCheck (round trip to 1e-9).
     *
     * @param stiffnessLbIn2 E I of the post
     * @param depth of the post in the ground, zero where nobody knows
     */
    public static Optional<PullFit> of(PullTest test, double stiffnessLbIn2, Length depth, Kind kind) {
        double low = test.low().inches();
        double high = test.high().inches();
        if (!(high > low) || test.force().isZero()) return Optional.empty();
        AtGrade moved = atGrade(test, stiffnessLbIn2);
        if (!(moved.turnRad > 0 && moved.shiftIn > 0)) return Optional.empty();
        double h = test.force().pounds();
        double m = h * test.at().inches();
        double deep = depth.inches();
        if (depth.isZero()) {
            deep = depthOf(moved.shiftIn / moved.turnRad, h, m, kind);
            if (!(deep > SHALLOWEST_IN && deep < DEEPEST_IN)) return Optional.empty();
        }
        double soil = soil(moved.turnRad, deep, h, m, kind);
        SoilStiffness fitted = kind == Kind.GROWING
                ? new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(soil))
                : new SoilStiffness.Constant(Stress.psi(soil));
        double difference = test.movedHigh().inches() - test.movedLow().inches();
        return Optional.of(new PullFit(
                fitted,
                Length.inches(deep),
                Offset.inches(moved.shiftIn),
                Angle.radians(moved.turnRad),
                SIXTEENTH_IN / difference,
                test.leftOver().inches() / test.movedHigh().inches()));
    }

    private static AtGrade atGrade(PullTest test, double stiffnessLbIn2) {
        double low = test.low().inches();
        double high = test.high().inches();
        double bentLow = bent(test, low, stiffnessLbIn2);
        double bentHigh = bent(test, high, stiffnessLbIn2);
        double turn = (test.movedHigh().inches() - bentHigh - test.movedLow().inches() + bentLow) / (high - low);
        return new AtGrade(test.movedLow().inches() - bentLow - turn * low, turn);
    }

    /** A cantilever pushed at a height: {@code P z2 (3 a - z) / 6 E I} below the pull, {@code P a2 (3 z - a) / 6 E I} above. */
    public static double bent(PullTest test, double atIn, double stiffnessLbIn2) {
        double a = test.at().inches();
        double p = test.force().pounds();
        double shape = atIn <= a ? atIn * atIn * (3 * a - atIn) : a * a * (3 * atIn - a);
        return p * shape / (6 * stiffnessLbIn2);
    }

    private static double soil(double turnRad, double deepIn, double h, double m, Kind kind) {
        double l = deepIn;
        return kind == Kind.GROWING
                ? (36 * m + 24 * h * l) / (turnRad * l * l * l * l)
                : (12 * m + 6 * h * l) / (turnRad * l * l * l);
    }

    /** Shift over turn grows with the depth, so halving finds it. */
    private static double depthOf(double shiftOverTurnIn, double h, double m, Kind kind) {
        double low = 0;
        double high = 2 * DEEPEST_IN;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double l = (low + high) / 2;
            double here = kind == Kind.GROWING
                    ? l * (24 * m + 18 * h * l) / (36 * m + 24 * h * l)
                    : l * (6 * m + 4 * h * l) / (12 * m + 6 * h * l);
            if (here < shiftOverTurnIn) low = l;
            else high = l;
        }
        return (low + high) / 2;
    }

    /** How much less a moment alone turns it than a pull of the same moment: {@code 1 / (1 + (2/3) L / a)} in sand, {@code 1 / (1 + L / 2a)} in clay. */
    public double momentOverPull(Length at) {
        double share = depth.inches() / at.inches();
        return soil.match(growing -> 1 / (1 + 2 * share / 3), constant -> 1 / (1 + share / 2));
    }

    public boolean isLoose() {
        return leftOver > LOOSE;
    }

    /**
     * A reading with its doubt: the soil in its soft season a third weaker, and both ways by what the reading may be off. Judgement; half and twice is for
     * guesses.
     */
    public SoilBand band() {
        double doubt = 1 + Math.min(1, readingError);
        return new SoilBand(soil.times(1 / (doubt * 4 / 3)), soil, soil.times(doubt));
    }

    /** Its spring at grade in soft, likely or stiff ground; the width counts for nothing beside what was read. */
    public PierSpring spring(SoilStiffness as) {
        return as.spring(new HoleSize(Length.inches(1), depth));
    }
}
