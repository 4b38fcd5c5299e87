package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.quantity.WorkedLine;

/** Forces on an inch of weld, line by line for the calculation book. The same numbers as {@link WeldBox} and {@link WeldLines}. */
public final class WeldWorking {
    private WeldWorking() {}

    /** {@link WeldBox#perInch}; the last line is {@code f}. */
    public static List<WorkedLine> of(
            WeldBox box, double axial, double shear, double inPlane, double outOfPlane, double torsion) {
        double d = box.depth().inches();
        double b = box.width().inches();
        WeldBox.Felt felt = box.felt(axial, shear, inPlane, outOfPlane, torsion);
        WorkedLine a = sized(WorkedLine.of("A", "2 \u00d7 (b + d)"), b, d).gives(box.areaIn(), "in.");
        WorkedLine si =
                sized(WorkedLine.of("Si", "b \u00d7 d + d\u00b2 / 3"), b, d).gives(box.inPlaneIn2(), "in\u00b2");
        WorkedLine so =
                sized(WorkedLine.of("So", "b \u00d7 d + b\u00b2 / 3"), b, d).gives(box.acrossIn2(), "in\u00b2");
        WorkedLine j = sized(WorkedLine.of("J", "(b + d)\u00b3 / 6"), b, d).gives(box.polarIn3(), "in\u00b3");
        WorkedLine c =
                sized(WorkedLine.of("c", "sqrt(b\u00b2 + d\u00b2) / 2"), b, d).gives(box.cornerIn(), "in.");
        WorkedLine fn = WorkedLine.of("fn", "N / A + Mi / Si + Mo / So")
                .put("N", Math.abs(axial), "lb")
                .put(a)
                .put("Mi", Math.abs(inPlane), "lb-in")
                .put(si)
                .put("Mo", Math.abs(outOfPlane), "lb-in")
                .put(so)
                .note("off the joint")
                .gives(felt.off(), "lb/in.");
        WorkedLine fv = WorkedLine.of("fv", "V / A + T \u00d7 c / J")
                .put("V", Math.abs(shear), "lb")
                .put(a)
                .put("T", Math.abs(torsion), "lb-in")
                .put(c)
                .put(j)
                .note("sideways")
                .gives(felt.sideways(), "lb/in.");
        return List.of(
                a,
                si,
                so,
                j,
                c,
                fn,
                fv,
                WorkedLine.of("f", "sqrt(fn\u00b2 + fv\u00b2)").put(fn).put(fv).gives(felt.whole(), "lb/in."));
    }

    private static WorkedLine.Open sized(WorkedLine.Open line, double b, double d) {
        return line.put("b", b, "in.").put("d", d, "in.");
    }

    /** {@link WeldLines#perInch} at the end of a line where it is greatest; the last line is {@code f}. */
    public static List<WorkedLine> of(
            WeldLines weld, double off, double across, double along, double twist, double tilt, double roll) {
        double l = weld.length().inches();
        double b = weld.apart().inches();
        WeldLines.Felt felt = weld.worst(off, across, along, twist, tilt, roll);
        WorkedLine a = WorkedLine.of("A", "2 \u00d7 L").put("L", l, "in.").gives(weld.areaIn(), "in.");
        WorkedLine i = WorkedLine.of("I", "L\u00b3 / 6").put("L", l, "in.").gives(weld.inLineIn3(), "in\u00b3");
        WorkedLine c = WorkedLine.of("C", "L \u00d7 b\u00b2 / 2")
                .put("L", l, "in.")
                .put("b", b, "in.")
                .gives(weld.crosswiseIn3(), "in\u00b3");
        WorkedLine j = WorkedLine.of("J", "I + C").put(i).put(c).gives(weld.polarIn3(), "in\u00b3");
        WorkedLine fn = WorkedLine.of("fn", "N / A + Ma \u00d7 L / 2 / I + Mz \u00d7 b / 2 / C")
                .put("N", off, "lb")
                .put(a)
                .put("Ma", felt.end() * tilt, "lb-in")
                .put("L", l, "in.")
                .put(i)
                .put("Mz", felt.line() * roll, "lb-in")
                .put("b", b, "in.")
                .put(c)
                .note("off, signs of the end that feels most")
                .gives(felt.off(), "lb/in.");
        WorkedLine fy = WorkedLine.of("fy", "Py / A - T \u00d7 L / 2 / J")
                .put("Py", across, "lb")
                .put(a)
                .put("T", felt.end() * twist, "lb-in")
                .put("L", l, "in.")
                .put(j)
                .note("across the lines")
                .gives(felt.across(), "lb/in.");
        WorkedLine fz = WorkedLine.of("fz", "Pz / A + T \u00d7 b / 2 / J")
                .put("Pz", along, "lb")
                .put(a)
                .put("T", felt.line() * twist, "lb-in")
                .put("b", b, "in.")
                .put(j)
                .note("along them")
                .gives(felt.along(), "lb/in.");
        return List.of(
                a,
                i,
                c,
                j,
                fn,
                fy,
                fz,
                WorkedLine.of("f", "sqrt(fn\u00b2 + fy\u00b2 + fz\u00b2)")
                        .put(fn)
                        .put(fy)
                        .put(fz)
                        .gives(felt.whole(), "lb/in."));
    }
}
