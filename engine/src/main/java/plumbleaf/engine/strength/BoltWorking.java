package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;

/**
 * Bolts of a hinge's plate line by line for the calculation book: what one of them carries, itself, and the wall it goes through.
 *
 * @param washer over which the wall is pulled
 * @param pad the wall under the washer as under a plate
 * @param under what that allows: the lesser of the two
 */
public record BoltWorking(BoltRow row, Bolt bolt, Section tube, Length washer, HingePlate pad, Force under) {
    /** {@link BoltRow#share}: {@code V} and {@code T}, the last two lines. */
    private List<WorkedLine> share(double across, double along, double off, double twist, double tilt, double roll) {
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

    /** All that a bolted plate is checked for, forces and moments as {@link BoltRow#share} takes them; the last line is {@code ratio}. */
    public List<WorkedLine> lines(double across, double along, double off, double twist, double tilt, double roll) {
        List<WorkedLine> lines = new ArrayList<>(share(across, along, off, twist, tilt, roll));
        WorkedLine v = lines.get(1);
        WorkedLine t = lines.get(2);
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
        Optional<WorkedLine> pull = left > 0
                ? Optional.of(WorkedLine.of("t", "T / (Fnt' \u00d7 Ab / 2)")
                        .put(t)
                        .put(beside)
                        .put(area)
                        .gives(t.value() * Bolt.SAFETY / left))
                : Optional.empty();
        pull.ifPresent(lines::add);
        double bears = HingePlate.boltBearing(tube.yieldStress(), bolt.diameter(), tube.designWall())
                        .pounds()
                / Bolt.SAFETY;
        WorkedLine bearing = WorkedLine.of("Rb", "1.8 \u00d7 Fy \u00d7 d \u00d7 tw / 2")
                .put("Fy", tube.yieldStress().psi(), "psi")
                .put("d", bolt.diameter())
                .put("tw", tube.designWall())
                .note("J7(a), the wall bears")
                .gives(bears, "lb");
        lines.add(bearing);
        WorkedLine over = WorkedLine.of("Rw", "1.5 \u00d7 tw \u00d7 dw \u00d7 Fu / 3")
                .put("tw", tube.designWall())
                .put("dw", WasherPull.counted(washer), "in.")
                .put("Fu", tube.ultimateStress().psi(), "psi")
                .note("S100 J4.4.2, over the washer")
                .gives(WasherPull.allowable(tube, washer));
        lines.add(over);
        List<WorkedLine> plate = PlateWorking.pull(pad, tube, 1);
        lines.addAll(plate);
        WorkedLine ra = plate.get(plate.size() - 1);
        double ratio = Math.max(
                bolt.use(Force.pounds(v.value()), Force.pounds(t.value())),
                Math.max(v.value() / bears, t.value() / under.pounds()));
        WorkedLine.Open most = WorkedLine.of(
                        "ratio", "max(v; " + (pull.isPresent() ? "t; " : "") + "V / Rb; T / min(Rw; Ra))")
                .put(shear);
        pull.ifPresentOrElse(most::put, () -> most.note("shear leaves the bolt no pull"));
        lines.add(most.put(v).put(bearing).put(t).put(over).put(ra).gives(ratio));
        return List.copyOf(lines);
    }
}
