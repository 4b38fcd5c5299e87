package plumbleaf.engine.footing;

import java.util.Optional;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/** The push at which a pole is expected to turn out of the ground: no allowance, no reduction. For the rated gust, never for a design load. */
public final class PoleStrength {
    /** Halvings that leave less than 1e-9 of the first bracket. */
    private static final int HALVINGS = 60;
    /** Steps of a golden section that leave less than 1e-8 of the depth. */
    private static final int NARROWER = 40;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Widths of clay at the top that hold nothing. Source: Broms as in UFC 3-220-20 (2025) chapter 6. */
    private static final double DEAD_ZONE = 1.5;

    /** Passive earth has no meaning beside a pole much wider than deep; below this depth over width the estimate is not given. Judgement. */
    private static final double LEAST_SLENDERNESS = 1;

    private PoleStrength() {}

    /**
     * Expected ultimate push at a height, by how the soil feels; empty for fill and rock, of which nothing is known here.
     * Falling ground scales it (judgement); a loose top is left out.
     *
     * @param height of the push above grade
     */
    public static Optional<Force> expected(HoleSize hole, Length height, Soil soil, SoilTables tables) {
        double depthIn = hole.depth().inches() - soil.deadTop().inches();
        if (soil.kind() == SoilKind.FILL || soil.kind() == SoilKind.ROCK) return Optional.empty();
        if (!(depthIn > LEAST_SLENDERNESS * hole.diameter().inches())) return Optional.empty();
        HoleSize below = new HoleSize(hole.diameter(), Length.inches(depthIn));
        Length arm = height.plus(soil.deadTop());
        double fall = FallingGround.factor(soil.slope(), SoilBand.FRICTION_FOR_FALL_DEG);
        return feel(soil, tables).map(one -> one.push(below, arm).times(fall));
    }

    private interface Feel {
        Force push(HoleSize hole, Length height);
    }

    private static Optional<Feel> feel(Soil soil, SoilTables tables) {
        if (soil.numbers().undrained().isSaid()) {
            Pressure strength = soil.numbers().undrained().or(Pressure.ZERO);
            return Optional.of((hole, height) -> undrained(hole, height, strength));
        }
        for (SandFeel sand : tables.sands()) {
            if (sand.state() == soil.state())
                return Optional.of(
                        (hole, height) -> drained(hole, height, sand.friction().inDegrees(), sand.weight()));
        }
        for (ClayFeel clay : tables.clays()) {
            if (clay.state() == soil.state())
                return Optional.of((hole, height) -> undrained(hole, height, clay.undrained()));
        }
        return Optional.empty();
    }

    /**
     * In sand: {@code P = g b Kp L3 / (2 (L + h)), Kp = tan2(45 + f/2)}.
     * Source: Broms as in UFC 3-220-20 (2025) chapter 6, {@code L3 = 2 (P L + M) / (g b Kp)} turned round. Check: PoleStrengthCheck.
     */
    static Force drained(HoleSize hole, Length height, double frictionDeg, Density weight) {
        double tangent = StrictMath.tan(StrictMath.toRadians(45 + frictionDeg / 2));
        double l = hole.depth().inFeet();
        double pounds =
                weight.pcf() * hole.diameter().inFeet() * tangent * tangent * l * l * l / (2 * (l + height.inFeet()));
        return Force.pounds(pounds);
    }

    /**
     * In clay, the P for which the needed depth is the hole's. The method's dead zone of 1.5 widths would make a wider hole weaker, so the best of this width
     * and the narrower ones inside it is taken: a wider hole is never weaker (judgement). Check: PoleStrengthCheck (E9).
     */
    static Force undrained(HoleSize hole, Length height, Pressure strength) {
        double depthFt = hole.depth().inFeet();
        double bestFt = bestWidthFt(depthFt, height.inFeet(), strength.psf());
        double widthFt = Math.min(hole.diameter().inFeet(), bestFt);
        return Force.pounds(undrainedPush(depthFt, widthFt, height.inFeet(), strength.psf()));
    }

    /** The width from which the dead zone costs more than the width brings: the push rises up to it and falls beyond, so a golden section finds it. */
    private static double bestWidthFt(double depthFt, double heightFt, double suPsf) {
        double low = 0;
        double high = depthFt / DEAD_ZONE;
        for (int i = 0; i < NARROWER; i++) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            if (undrainedPush(depthFt, a, heightFt, suPsf) >= undrainedPush(depthFt, b, heightFt, suPsf)) high = b;
            else low = a;
        }
        return (low + high) / 2;
    }

    private static double undrainedPush(double depthFt, double widthFt, double heightFt, double suPsf) {
        double low = 0;
        double high = 9 * suPsf * widthFt * depthFt;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (undrainedDepthFt(middle, middle * heightFt, widthFt, suPsf) < depthFt) low = middle;
            else high = middle;
        }
        return low;
    }

    /**
     * Depth of a short pole in clay: {@code L = 1.5 b + f + g, f = P / (9 su b), g = sqrt[(M + P (1.5 b + 0.5 f)) / (2.25 b su)]}.
     * Source: Broms as in UFC 3-220-20 (2025) chapter 6. Check: PoleStrengthCheck (E9).
     *
     * @param push P, at its ultimate
     * @param momentLbFt its moment about grade, with any other
     */
    public static Length undrainedDepth(Force push, double momentLbFt, Length width, Pressure strength) {
        return Length.feet(undrainedDepthFt(push.pounds(), momentLbFt, width.inFeet(), strength.psf()));
    }

    private static double undrainedDepthFt(double pushLb, double momentLbFt, double widthFt, double suPsf) {
        double f = pushLb / (9 * suPsf * widthFt);
        double most = momentLbFt + pushLb * (1.5 * widthFt + 0.5 * f);
        return 1.5 * widthFt + f + Math.sqrt(most / (2.25 * widthFt * suPsf));
    }
}
