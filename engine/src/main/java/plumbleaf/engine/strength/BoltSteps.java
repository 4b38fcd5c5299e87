package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.WorkedLine;

/** What one bolt of a row carries, and what its steel bears, line by line. */
public final class BoltSteps {
    /** Where {@link #steel} has the ratio of shear. */
    static final int SHEAR = 1;

    private static final int PULL = 3;

    private BoltSteps() {}

    /** {@link BoltRow#share}: {@code V} and {@code T}, the last two of three lines. */
    static List<WorkedLine> share(
            BoltRow row, double across, double along, double off, double twist, double tilt, double roll) {
        double outermost = row.apart().inches() * (row.count() - 1) / 2;
        double squares = 0;
        for (int i = 0; i < row.count(); i++) {
            double y = row.apart().inches() * i - outermost;
            squares += y * y;
        }
        double per = squares > 0 ? outermost / squares : 1 / row.ends().inches();
        BoltRow.Share share = row.share(across, along, off, twist, tilt, roll);
        WorkedLine m = squares > 0
                ? WorkedLine.of("m", "y / Q")
                        .put("y", outermost, "in.")
                        .put("Q", squares, "in\u00b2")
                        .note("y of the outermost bolt, Q the sum of all y\u00b2")
                        .gives(per)
                : WorkedLine.of("m", "1 / e")
                        .put("e", row.ends())
                        .note("a lone bolt: e to the plate's end")
                        .gives(per);
        return List.of(
                m,
                WorkedLine.of("V", "sqrt((Py / n + Mt \u00d7 m)\u00b2 + (Pz / n)\u00b2)")
                        .put("Py", Math.abs(across), "lb")
                        .put("n", row.count())
                        .put("Mt", Math.abs(twist), "lb-in")
                        .put(m)
                        .put("Pz", Math.abs(along), "lb")
                        .note("shear of a bolt")
                        .gives(share.shear()),
                WorkedLine.of("T", "N / n + Ma \u00d7 m + Mz / (n \u00d7 c)")
                        .put("N", Math.max(0, off), "lb")
                        .put("n", row.count())
                        .put("Ma", Math.abs(tilt), "lb-in")
                        .put(m)
                        .put("Mz", Math.abs(roll), "lb-in")
                        .put("c", row.lever())
                        .note("pull of a bolt; c from the row to the edge it turns about")
                        .gives(share.tension()));
    }

    /**
     * {@link Bolt#use}: the area, the ratio {@code v} of shear, the stress left for pull, and the ratio {@code t} of pull, which is missing where shear leaves none.
     *
     * @param v shear of the bolt
     * @param t its pull
     */
    public static List<WorkedLine> steel(Bolt bolt, WorkedLine v, WorkedLine t) {
        List<WorkedLine> lines = new ArrayList<>();
        double areaIn2 =
                Math.PI / 4 * bolt.diameter().inches() * bolt.diameter().inches();
        double fnv = bolt.nominalShear().pounds() / areaIn2;
        double fnt = bolt.nominalTension().pounds() / areaIn2;
        WorkedLine area = WorkedLine.of("Ab", "\u03c0 \u00d7 d\u00b2 / 4")
                .put("d", bolt.diameter())
                .gives(areaIn2, "in\u00b2");
        double left = bolt.nominalTensionBeside(Force.pounds(v.value()), 1 / Bolt.SAFETY)
                .pounds();
        WorkedLine shear = WorkedLine.of("v", "V / (Fnv \u00d7 Ab / 2)")
                .put(v)
                .put("Fnv", fnv, "psi")
                .put(area)
                .note("J3-1, omega 2")
                .gives(v.value() * Bolt.SAFETY / bolt.nominalShear().pounds());
        WorkedLine beside = WorkedLine.of(
                        "Fnt'", "max(0; min(Fnt; 1.3 \u00d7 Fnt - 2 \u00d7 Fnt \u00d7 V / (Fnv \u00d7 Ab)))")
                .put("Fnt", fnt, "psi")
                .put(v)
                .put("Fnv", fnv, "psi")
                .put(area)
                .note("J3-3")
                .gives(left / areaIn2, "psi");
        lines.add(area);
        lines.add(shear);
        lines.add(beside);
        if (left > 0)
            lines.add(WorkedLine.of("t", "T / (Fnt' \u00d7 Ab / 2)")
                    .put(t)
                    .put(beside)
                    .put(area)
                    .gives(t.value() * Bolt.SAFETY / left));
        return lines;
    }

    /** The ratio of pull among those lines, where there is one. */
    static Optional<WorkedLine> pull(List<WorkedLine> steel) {
        return steel.size() > PULL ? Optional.of(steel.get(PULL)) : Optional.empty();
    }

    /** {@code ratio = max(v; t; ...)}, with what else is held against the bolt. */
    public static WorkedLine.Open most(List<WorkedLine> steel, String others) {
        Optional<WorkedLine> pull = pull(steel);
        WorkedLine.Open most = WorkedLine.of("ratio", "max(v; " + (pull.isPresent() ? "t" : "0") + others + ")")
                .put(steel.get(SHEAR));
        pull.ifPresentOrElse(most::put, () -> most.note("shear leaves the bolt no pull"));
        return most;
    }
}
