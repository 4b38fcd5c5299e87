package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.Section;

/**
 * A rail of pipe or tube between two posts: weight bends it down, wind across, both as on a simple span. One that runs on over its posts sags less, as the end
 * span of a long beam does. Stretched fabric presses it from end to end as well, which makes it bow more. Source: AISC 360-22 F7, F8, H1.1 (ASD). Check:
 * SteelRailCheckTest, SecondOrderCheck.
 *
 * @param what it is in plain words: {@code rail}, {@code picket}
 * @param runsOn whether it runs on over its posts in one piece
 * @param downLbPerIn weight on it
 * @param windLbPerIn strength-level wind on it
 * @param pressed along it
 */
public record SteelRailCheck(
        String what,
        Section section,
        Length span,
        boolean runsOn,
        double downLbPerIn,
        double windLbPerIn,
        Force pressed) {
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();

    /** What a rail may sag in a bay before one sees it. Judgement. */
    private static final Length SEEN = Length.inches(0.25);

    /** Below this share of its strength the axial term counts half. Source: AISC 360-22 H1.1. */
    private static final double LITTLE_AXIAL = 0.2;

    /** Stands for what is beyond all measure. */
    private static final double BUCKLED = 1e6;

    private double momentLbIn(double loadLbPerIn, double inertiaIn4) {
        double bowed = SecondOrder.spanMoment(pressed, Steel.ELASTIC_MODULUS.psi() * inertiaIn4, span);
        return bowed * loadLbPerIn * span.inches() * span.inches() / 8;
    }

    /**
     * {@code Mx/Mcx + My/Mcy} under weight and 0.6 wind; the vector sum of the two for a round one. Where it is pressed the moments grow with its bow, and
     * {@code P/(2 Pc)} is added, or {@code P/Pc} to 8/9 of them from {@code P/Pc = 0.2} up.
     */
    public double windRatio() {
        double bending = bendingRatio();
        double axial = pressed.pounds()
                * TubeStrength.SAFETY
                / TubeStrength.compression(section, span).pounds();
        return Math.min(BUCKLED, axial >= LITTLE_AXIAL ? axial + 8.0 / 9 * bending : axial / 2 + bending);
    }

    private double bendingRatio() {
        TubeStrength strength = TubeStrength.of(section);
        double down = momentLbIn(downLbPerIn, section.ixIn4());
        double across = ASD * momentLbIn(windLbPerIn, section.iyIn4());
        if (section.isRound())
            return Math.sqrt(down * down + across * across)
                    / strength.allowableX().poundInches();
        return down / strength.allowableX().poundInches()
                + across / strength.allowableY().poundInches();
    }

    /**
     * {@code 5 w L4 / (384 E I)}, where it runs on {@code 0.0069 w L4 / (E I)} (end span of four, AISC Manual Table 3-23, from memory); steel does not creep.
     * Check: SteelRailCheckTest.
     */
    public Offset sag() {
        double l = span.inches();
        double factor = runsOn ? 0.0069 : 5.0 / 384;
        double stiffness = Steel.ELASTIC_MODULUS.psi() * section.ixIn4();
        double bowed = SecondOrder.spanBow(pressed, stiffness, span);
        return Offset.inches(Math.min(BUCKLED, bowed * factor * downLbPerIn * l * l * l * l / stiffness));
    }

    /** Strength in wind, and sag where it lies. */
    public List<Finding> findings(String part, DesignBasis basis) {
        Severity underWind = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        Finding wind = Checked.of(
                what + ".wind",
                underWind,
                part,
                capital() + " of " + part + ", " + section.name() + ": weight"
                        + (pressed.isZero() ? " and wind" : ", wind and the pull of stretched fabric")
                        + " together take "
                        + DecimalText.fixed(windRatio(), 2) + " of its bending strength.",
                Basis.clause("AISC 360-22 F7, F8, H1.1 (ASD, omega 1.67)"),
                Measure.demand(windRatio(), 1, ""));
        if (downLbPerIn == 0) return List.of(wind);
        return List.of(
                wind,
                Checked.of(
                        what + ".sag",
                        Severity.CAUTION,
                        part,
                        capital() + " of " + part + ": it sags " + DecimalText.fixed(sag().inches(), 2)
                                + " in. between its posts; more than 1/4 in. is seen.",
                        Basis.judgement("1/4 in. per bay"),
                        Measure.demand(sag().inches(), SEEN.inches(), "in")));
    }

    private String capital() {
        return what.equals("rail") ? "Rail" : "Picket";
    }
}
