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
        double area = 2 * (b + d);
        double in = b * d + d * d / 3;
        double out = b * d + b * b / 3;
        double polar = (b + d) * (b + d) * (b + d) / 6;
        double corner = Math.sqrt(b * b + d * d) / 2;
        double off = Math.abs(axial) / area + Math.abs(inPlane) / in + Math.abs(outOfPlane) / out;
        double sideways = Math.abs(shear) / area + Math.abs(torsion) * corner / polar;
        WorkedLine a = sized(WorkedLine.of("A", "2 \u00d7 (b + d)"), b, d).gives(area, "in.");
        WorkedLine si =
                sized(WorkedLine.of("Si", "b \u00d7 d + d\u00b2 / 3"), b, d).gives(in, "in\u00b2");
        WorkedLine so =
                sized(WorkedLine.of("So", "b \u00d7 d + b\u00b2 / 3"), b, d).gives(out, "in\u00b2");
        WorkedLine j = sized(WorkedLine.of("J", "(b + d)\u00b3 / 6"), b, d).gives(polar, "in\u00b3");
        WorkedLine c =
                sized(WorkedLine.of("c", "sqrt(b\u00b2 + d\u00b2) / 2"), b, d).gives(corner, "in.");
        WorkedLine fn = WorkedLine.of("fn", "N / A + Mi / Si + Mo / So")
                .put("N", Math.abs(axial), "lb")
                .put(a)
                .put("Mi", Math.abs(inPlane), "lb-in")
                .put(si)
                .put("Mo", Math.abs(outOfPlane), "lb-in")
                .put(so)
                .note("off the joint")
                .gives(off, "lb/in.");
        WorkedLine fv = WorkedLine.of("fv", "V / A + T \u00d7 c / J")
                .put("V", Math.abs(shear), "lb")
                .put(a)
                .put("T", Math.abs(torsion), "lb-in")
                .put(c)
                .put(j)
                .note("sideways")
                .gives(sideways, "lb/in.");
        return List.of(
                a,
                si,
                so,
                j,
                c,
                fn,
                fv,
                WorkedLine.of("f", "sqrt(fn\u00b2 + fv\u00b2)")
                        .put(fn)
                        .put(fv)
                        .gives(Math.sqrt(off * off + sideways * sideways), "lb/in."));
    }

    private static WorkedLine.Open sized(WorkedLine.Open line, double b, double d) {
        return line.put("b", b, "in.").put("d", d, "in.");
    }

    /** {@link WeldLines#perInch} at the end of a line where it is greatest; the last line is {@code f}. */
    public static List<WorkedLine> of(
            WeldLines weld, double off, double across, double along, double twist, double tilt, double roll) {
        double l = weld.length().inches();
        double b = weld.apart().inches();
        double inLine = l * l * l / 6;
        double crosswise = l * b * b / 2;
        double polar = inLine + crosswise;
        double most = -1;
        int end = 1;
        int line = 1;
        for (int e = -1; e <= 1; e += 2)
            for (int n = -1; n <= 1; n += 2) {
                double here = StrictMath.hypot(
                        off / (2 * l) + e * tilt * l / 2 / inLine + n * roll * b / 2 / crosswise,
                        StrictMath.hypot(
                                across / (2 * l) - e * twist * l / 2 / polar,
                                along / (2 * l) + n * twist * b / 2 / polar));
                if (here > most) {
                    most = here;
                    end = e;
                    line = n;
                }
            }
        WorkedLine a = WorkedLine.of("A", "2 \u00d7 L").put("L", l, "in.").gives(2 * l, "in.");
        WorkedLine i = WorkedLine.of("I", "L\u00b3 / 6").put("L", l, "in.").gives(inLine, "in\u00b3");
        WorkedLine c = WorkedLine.of("C", "L \u00d7 b\u00b2 / 2")
                .put("L", l, "in.")
                .put("b", b, "in.")
                .gives(crosswise, "in\u00b3");
        WorkedLine j = WorkedLine.of("J", "I + C").put(i).put(c).gives(polar, "in\u00b3");
        WorkedLine fn = WorkedLine.of("fn", "N / A + Ma \u00d7 L / 2 / I + Mz \u00d7 b / 2 / C")
                .put("N", off, "lb")
                .put(a)
                .put("Ma", end * tilt, "lb-in")
                .put("L", l, "in.")
                .put(i)
                .put("Mz", line * roll, "lb-in")
                .put("b", b, "in.")
                .put(c)
                .note("off, signs of the end that feels most")
                .gives(off / (2 * l) + end * tilt * l / 2 / inLine + line * roll * b / 2 / crosswise, "lb/in.");
        WorkedLine fy = WorkedLine.of("fy", "Py / A - T \u00d7 L / 2 / J")
                .put("Py", across, "lb")
                .put(a)
                .put("T", end * twist, "lb-in")
                .put("L", l, "in.")
                .put(j)
                .note("across the lines")
                .gives(across / (2 * l) - end * twist * l / 2 / polar, "lb/in.");
        WorkedLine fz = WorkedLine.of("fz", "Pz / A + T \u00d7 b / 2 / J")
                .put("Pz", along, "lb")
                .put(a)
                .put("T", line * twist, "lb-in")
                .put("b", b, "in.")
                .put(j)
                .note("along them")
                .gives(along / (2 * l) + line * twist * b / 2 / polar, "lb/in.");
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
                        .gives(most, "lb/in."));
    }
}
