package plumbleaf.engine.strength;

import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

/**
 * What stretched fabric does to the terminal it ends on. With a top rail the terminal is a post fixed at grade and propped by the rail at the top; without one
 * it stands alone.
 *
 * @param pull of the fabric, over its height
 * @param height of the fabric
 * @param gap under it
 */
public record FabricTension(Force pull, Length height, Length gap) {
    /**
     * Stretched so that 30 lb at the middle of a 10 ft bay pulls it 2-1/2 in. aside: {@code T = P L/(4 s)}, 360 lb. A test of high-security fences, so an upper
     * value for a yard's. Source: UFGS 02821A (30 lb, 2-1/2 in.). Check: FabricTensionCheck (CX34).
     */
    public static Force byPullTest(Force push, Length bay, Length aside) {
        return Force.pounds(push.pounds() * bay.inches() / (4 * aside.inches()));
    }

    /** The usual stretch of a yard's fence: that of the pull test. */
    public static FabricTension usual(Length height, Length gap) {
        return new FabricTension(byPullTest(Force.pounds(30), Length.feet(10), Length.inches(2.5)), height, gap);
    }

    /**
     * Moment at grade along the run. Alone: {@code T (gap + h/2)}; propped at the top by the rail, less what the rail takes times its height. Closed form of the
     * propped cantilever, {@code T h/8} for a fence down to the ground. Check: FabricTensionCheck.
     */
    public Moment atGrade(boolean topRail) {
        double t = pull.pounds();
        double b = height.inches();
        double h = b + gap.inches();
        double alone = t * (gap.inches() + b / 2);
        if (!topRail) return Moment.poundInches(alone);
        return Moment.poundInches(alone - propLb() * h);
    }

    /** What the rail takes at the top: {@code 3/(2 H3) integral of w z2 (H - z/3) dz} over the fabric, z from grade. */
    private double propLb() {
        double b = height.inches();
        double g = gap.inches();
        double h = b + g;
        double w = pull.pounds() / b;
        double cubes = (h * h * h - g * g * g) / 3;
        double fourths = (h * h * h * h - g * g * g * g) / 12;
        return 3 / (2 * h * h * h) * w * (h * cubes - fourths);
    }

    /** Push at grade along the run. */
    public Force atBase(boolean topRail) {
        return Force.pounds(pull.pounds() - (topRail ? propLb() : 0));
    }

    /** Compression in the top rail. */
    public Force inTopRail() {
        return Force.pounds(propLb());
    }

    /** The top rail as a strut over one bay. Source: AISC 360-22 E3 (ASD, omega 1.67). */
    public Finding strut(String part, Section rail, Length bay) {
        double may = TubeStrength.compression(rail, bay).pounds() / TubeStrength.SAFETY;
        return Checked.of(
                "fabric.strut",
                Severity.MUST_FIX,
                part,
                "Top rail of " + part + ": stretched fabric presses it with " + DecimalText.whole(propLb())
                        + " lb; over one bay it may take " + DecimalText.whole(may) + " lb.",
                Basis.clause("AISC 360-22 E3 (ASD); pull by UFGS 02821A, a test of high-security fences"),
                Measure.demand(propLb(), may, "lb"));
    }
}
