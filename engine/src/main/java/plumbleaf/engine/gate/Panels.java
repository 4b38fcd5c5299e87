package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Mesh or sheet: one piece in each opening between two rails, with its trim. It stiffens nothing in the frame model. */
final class Panels {
    /** A 1 x 1 x 1/8 angle by its two legs less the corner, and a 1 x 1/8 bar: square inches of steel. */
    private static final double ANGLE_IN2 = 2 * 1 * 0.125 - 0.125 * 0.125;

    private static final double BAR_IN2 = 1 * 0.125;

    /** Stitches of an inch and a half at a foot, and the corners of the trim. Common practice, no source. */
    private static final double STITCH_IN = 1.5;

    private static final double STITCH_EVERY_IN = 12;

    /** A flat bar is bolted at this spacing. Common practice, no source. */
    private static final double BOLT_EVERY_IN = 12;

    private static final Force BOLT = Force.pounds(0.06);

    private Panels() {}

    /** Between a woven piece and its frame, to be tied; common practice, no source. */
    private static final double TIE_EVERY_IN = 12;

    static Infill of(String leaf, FrameLines lines, List<Member> members, Cladding.Mesh mesh) {
        double lbPerIn2 = mesh.poundsPerIn2(Steel.DENSITY.perCubicInch());
        boolean tied = mesh.woven() && mesh.edge() == MeshEdge.DIRECT;
        return all(leaf, lines, members, lbPerIn2, mesh.wire(), mesh.edge(), tied);
    }

    static Infill of(String leaf, FrameLines lines, List<Member> members, Cladding.Sheet sheet) {
        double lbPerIn2 = sheet.thickness().inches() * Steel.DENSITY.perCubicInch();
        return all(leaf, lines, members, lbPerIn2, sheet.thickness(), sheet.edge(), false);
    }

    static double trimIn2(MeshEdge edge) {
        return switch (edge) {
            case ANGLE -> ANGLE_IN2;
            case FLAT_BAR -> BAR_IN2;
            case DIRECT -> 0;
        };
    }

    private static Infill all(
            String leaf,
            FrameLines lines,
            List<Member> members,
            double lbPerIn2,
            Length thickness,
            MeshEdge edge,
            boolean tied) {
        List<Member> rails =
                members.stream().filter(member -> member.role().isRail()).toList();
        double trimLbPerIn = trimIn2(edge) * Steel.DENSITY.perCubicInch();
        List<Panel> panels = new ArrayList<>();
        List<RailLoad> loads = new ArrayList<>();
        List<Fitting> fittings = new ArrayList<>();
        List<Weld> welds = new ArrayList<>();
        for (int i = 0; i + 1 < rails.size(); i++) {
            Panel panel = panel(leaf + ".s" + (i + 1), lines, i, lbPerIn2, trimLbPerIn);
            panels.add(panel);
            for (Member rail : List.of(rails.get(i), rails.get(i + 1)))
                loads.add(new RailLoad(
                        rail.id(),
                        panel.corners().get(0).r(),
                        panel.corners().get(1).r(),
                        Offset.ZERO,
                        panel.weight().times(0.5),
                        panel.weight().times(0.5)));
            if (edge == MeshEdge.FLAT_BAR) {
                int bolts = (int) Math.ceil(panel.edge().inches() / BOLT_EVERY_IN - 1e-9);
                Place middle = Place.at(
                        (lines.hingeFaceIn() + lines.latchFaceIn()) / 2,
                        0,
                        (panel.bottomIn(0.5) + panel.topIn(0.5)) / 2);
                for (int bolt = 0; bolt < bolts; bolt++) fittings.add(new Fitting("panel bolt", middle, BOLT));
            } else if (tied) {
                int ties = (int) Math.ceil(panel.edge().inches() / TIE_EVERY_IN - 1e-9);
                Place middle = Place.at((lines.hingeFaceIn() + lines.latchFaceIn()) / 2, 0, panel.bottomIn(0.5));
                for (int tie = 0; tie < ties; tie++) fittings.add(new Fitting("panel tie", middle, Force.ZERO));
            } else welds.addAll(stitches(panel, edge));
        }
        return Infill.inPlane(true, List.of(), Offset.ZERO, thickness, panels, loads, fittings, welds);
    }

    private static Panel panel(String id, FrameLines lines, int opening, double lbPerIn2, double trimLbPerIn) {
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        List<Place> corners = List.of(
                Place.inPlane(from, lines.overRailIn(opening, from)),
                Place.inPlane(to, lines.overRailIn(opening, to)),
                Place.inPlane(to, lines.underRailIn(opening + 1, to)),
                Place.inPlane(from, lines.underRailIn(opening + 1, from)));
        double left = corners.get(3).z().inches() - corners.get(0).z().inches();
        double right = corners.get(2).z().inches() - corners.get(1).z().inches();
        double area = (left + right) / 2 * (to - from);
        double low = Math.min(corners.get(0).z().inches(), corners.get(1).z().inches());
        double high = Math.max(corners.get(2).z().inches(), corners.get(3).z().inches());
        double edge = left + right + apart(corners.get(0), corners.get(1)) + apart(corners.get(3), corners.get(2));
        return new Panel(
                id,
                corners,
                Length.inches(to - from),
                Length.inches(high - low),
                Area.squareInches(area),
                Length.inches(edge),
                Force.pounds(area * lbPerIn2 + edge * trimLbPerIn));
    }

    /** Panel to trim in stitches, trim to frame in as many, and the four mitered corners of the trim. */
    private static List<Weld> stitches(Panel panel, MeshEdge edge) {
        int stitches = (int) Math.ceil(panel.edge().inches() / STITCH_EVERY_IN - 1e-9);
        List<Weld> welds = new ArrayList<>();
        welds.add(new Weld(
                panel.id(),
                WeldKind.FILLET,
                Length.inches(stitches * STITCH_IN),
                edge == MeshEdge.DIRECT ? "edge to the frame, stitches" : "edge to its angle, stitches",
                stitches,
                false));
        if (edge == MeshEdge.ANGLE) {
            welds.add(new Weld(
                    panel.id(),
                    WeldKind.FILLET,
                    Length.inches(stitches * STITCH_IN),
                    "angle to the frame, stitches",
                    stitches,
                    false));
            welds.add(new Weld(panel.id(), WeldKind.GROOVE, Length.inches(4 * 2.0), "corners of the angle", 4, true));
        }
        return welds;
    }

    private static double apart(Place a, Place b) {
        double dr = b.r().inches() - a.r().inches();
        double dz = b.z().inches() - a.z().inches();
        return Math.sqrt(dr * dr + dz * dz);
    }
}
