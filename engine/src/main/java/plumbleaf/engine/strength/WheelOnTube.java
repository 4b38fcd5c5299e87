package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;

/** A wheel that bears on the wall of a tube. */
public final class WheelOnTube {
    private static final double SAFETY_ROUND = 1.67;
    private static final double SAFETY_SQUARE = 1.5;

    private WheelOnTube() {}

    /**
     * Allowable load of a wheel square to a tube. Flat wheel over both side walls of a square tube: their local yielding, {@code 2 Fy t (5 k + lb)}, with k of 1.5 t and no
     * length of contact. Wheel on a round tube: its wall as under a plate of no width, {@code 5.5 Fy t^2}. Both with the least the source's formula gives, so on the safe
     * side; away from the tube's ends; wear and dents are not in it.
     * Source: AISC 360-10 K1-9 and K1-1, from memory. Check: WheelOnTubeTest, by hand.
     */
    public static Force allowable(Section tube) {
        double t = tube.designWall().inches();
        double fy = tube.yieldStress().psi();
        double nominal = tube.isRound() ? 5.5 * fy * t * t : 2 * fy * t * 5 * 1.5 * t;
        return Force.pounds(nominal / (tube.isRound() ? SAFETY_ROUND : SAFETY_SQUARE));
    }

    /** What a wheel takes of it, line by line for the calculation book. */
    public static List<WorkedLine> lines(Section tube, Force wheel) {
        Force may = allowable(tube);
        WorkedLine allowable = WorkedLine.of(
                        "Ra",
                        tube.isRound()
                                ? "5.5 \u00d7 Fy \u00d7 t\u00b2 / 1.67"
                                : "2 \u00d7 Fy \u00d7 t \u00d7 5 \u00d7 1.5 \u00d7 t / 1.5")
                .put("Fy", tube.yieldStress().psi(), "psi")
                .put("t", tube.designWall())
                .note(tube.isRound() ? "K1-1" : "K1-9, k = 1.5 t")
                .gives(may);
        return List.of(
                allowable,
                WorkedLine.of("ratio", "R / Ra").put("R", wheel).put(allowable).gives(wheel.pounds() / may.pounds()));
    }
}
