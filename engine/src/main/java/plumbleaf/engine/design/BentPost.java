package plumbleaf.engine.design;

import java.util.List;
import java.util.function.UnaryOperator;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.HingeForce;

/**
 * A post above grade as a cantilever that two pins pull at in one plane, and that the leaf's weight on a pin bends by its lever, line by line for the calculation
 * book: {@code u = P a^2 (3 z - a) / (6 EI)} above the place a of a pull and of a couple {@code C a (2 z - a) / (2 EI)}.
 * Source: AISC Manual Table 3-23, from memory. Check: BookFollowsTest, against the frame in space.
 */
final class BentPost {
    private static final String MIXED = " \u00d7 z1\u00b2 \u00d7 (3 \u00d7 z2 - z1) / 6";

    private final List<WorkedLine> lines;

    /**
     * @param pull letter of the pulls in this plane
     * @param moved letter of how far the post moves at the pins
     * @param turned letter of how far it turns at the pin that carries the weight
     * @param couple letter of the weight on a pin times its lever
     * @param stiff name of what it is stiff by
     */
    record Letters(String pull, String moved, String turned, String couple, String stiff, String words) {}

    BentPost(
            Letters names,
            HingeForce low,
            HingeForce high,
            Force pullLow,
            Force pullHigh,
            double leverIn,
            double modulusPsi,
            double inertiaIn4) {
        double z1 = low.z().inches();
        double z2 = high.z().inches();
        double p1 = pullLow.pounds();
        double p2 = pullHigh.pounds();
        double c1 = low.down().pounds() * leverIn;
        double c2 = high.down().pounds() * leverIn;
        WorkedLine ei = WorkedLine.of(names.stiff(), "E \u00d7 I")
                .put("E", modulusPsi, "psi")
                .put("I", inertiaIn4, "in4")
                .note("of the post, " + names.words())
                .gives(modulusPsi * inertiaIn4, "lb-in\u00b2");
        String q1 = names.pull() + "1";
        String q2 = names.pull() + "2";
        String k1 = names.couple() + "1";
        String k2 = names.couple() + "2";
        UnaryOperator<WorkedLine.Open> taken = line -> line.put(q1, p1, "lb")
                .put(q2, p2, "lb")
                .put(k1, c1, "lb-in")
                .put(k2, c2, "lb-in")
                .put("z1", z1, "in.")
                .put("z2", z2, "in.")
                .put(ei);
        double mixed = z1 * z1 * (3 * z2 - z1) / 6;
        double tail = z1 * (2 * z2 - z1) / 2;
        boolean onLower = Math.abs(c1) >= Math.abs(c2);
        WorkedLine lower = taken.apply(WorkedLine.of(
                        names.moved() + "1",
                        "(" + q1 + " \u00d7 z1\u00b3 / 3 + " + q2 + MIXED + " + (" + k1 + " + " + k2
                                + ") \u00d7 z1\u00b2 / 2) / " + names.stiff()))
                .note("at the lower pin; " + names.couple() + " the weight on a pin times its lever")
                .gives((p1 * z1 * z1 * z1 / 3 + p2 * mixed + (c1 + c2) * z1 * z1 / 2) / ei.value(), "in.");
        WorkedLine upper = taken.apply(WorkedLine.of(
                        names.moved() + "2",
                        "(" + q1 + MIXED + " + " + q2 + " \u00d7 z2\u00b3 / 3 + " + k1
                                + " \u00d7 z1 \u00d7 (2 \u00d7 z2 - z1) / 2 + " + k2
                                + " \u00d7 z2\u00b2 / 2) / "
                                + names.stiff()))
                .note("at the upper one")
                .gives((p1 * mixed + p2 * z2 * z2 * z2 / 3 + c1 * tail + c2 * z2 * z2 / 2) / ei.value(), "in.");
        WorkedLine turn = taken.apply(WorkedLine.of(
                        names.turned(),
                        onLower
                                ? "(" + q1 + " \u00d7 z1\u00b2 / 2 + " + q2
                                        + " \u00d7 z1 \u00d7 (2 \u00d7 z2 - z1) / 2 + (" + k1 + " + " + k2
                                        + ") \u00d7 z1) / " + names.stiff()
                                : "(" + q1 + " \u00d7 z1\u00b2 / 2 + " + q2 + " \u00d7 z2\u00b2 / 2 + " + k1
                                        + " \u00d7 z1 + " + k2 + " \u00d7 z2) / " + names.stiff()))
                .note("turn of the post at the pin that carries the weight")
                .gives(
                        (p1 * z1 * z1 / 2
                                        + (onLower ? p2 * tail + (c1 + c2) * z1 : p2 * z2 * z2 / 2 + c1 * z1 + c2 * z2))
                                / ei.value(),
                        "rad");
        this.lines = List.of(ei, lower, upper, turn);
    }

    List<WorkedLine> lines() {
        return lines;
    }

    WorkedLine lower() {
        return lines.get(1);
    }

    WorkedLine upper() {
        return lines.get(2);
    }

    WorkedLine turn() {
        return lines.get(3);
    }
}
