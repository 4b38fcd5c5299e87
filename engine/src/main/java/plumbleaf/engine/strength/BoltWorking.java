package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
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
    /** All that a bolted plate is checked for, forces and moments as {@link BoltRow#share} takes them; the last line is {@code ratio}. */
    public List<WorkedLine> lines(double across, double along, double off, double twist, double tilt, double roll) {
        List<WorkedLine> lines = new ArrayList<>(BoltSteps.share(row, across, along, off, twist, tilt, roll));
        WorkedLine v = lines.get(1);
        WorkedLine t = lines.get(2);
        List<WorkedLine> steel = BoltSteps.steel(bolt, v, t);
        lines.addAll(steel);
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
        WorkedLine.Open most = BoltSteps.most(steel, "; V / Rb; T / min(Rw; Ra)");
        lines.add(most.put(v).put(bearing).put(t).put(over).put(ra).gives(ratio));
        return List.copyOf(lines);
    }
}
