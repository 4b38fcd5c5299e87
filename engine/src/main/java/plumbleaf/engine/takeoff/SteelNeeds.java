package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.RodCut;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;

/** What a leaf needs of steel besides its frame: rods, brackets, pickets, mesh and sheet. */
final class SteelNeeds {
    private SteelNeeds() {}

    /** Two halves with the turnbuckle between. */
    static List<BarNeed> rod(Leaf leaf, Member rod) {
        List<BarNeed> halves = new ArrayList<>();
        for (String half : List.of("a", "b")) {
            Piece piece = new Piece(
                    rod.id() + half,
                    leaf.id(),
                    RodCut.half(rod).nanometres(),
                    Angle.ZERO,
                    Angle.ZERO,
                    Piece.Ends.PARALLEL);
            halves.add(new BarNeed(rod.section().id(), rod.section().name(), PartGroup.GATE, BarNeed.Saw.STEEL, piece));
        }
        return halves;
    }

    /** Brackets, turnbuckles, eyes, panel bolts and ties: one item for each kind. */
    static Needs fittings(Leaf leaf) {
        List<Need> loose = new ArrayList<>();
        for (String what : List.of("corner bracket", "turnbuckle", "rod eye", "panel bolt", "panel tie")) {
            int count = (int) leaf.fittings().stream()
                    .filter(fitting -> fitting.what().equals(what))
                    .count();
            if (count > 0) loose.add(Need.pieces(what.replace(' ', '-'), what, PartGroup.HARDWARE, count, leaf.id()));
        }
        return new Needs(loose, List.of());
    }

    static Needs pickets(Leaf leaf, Cladding.Pickets pickets) {
        List<BarNeed> bars = new ArrayList<>();
        int count = 0;
        for (Picket picket : leaf.pickets()) {
            count++;
            Piece piece = new Piece(
                    leaf.id() + ".k" + count,
                    leaf.id(),
                    picket.longPoint().nanometres(),
                    picket.bottomFromSquare(),
                    picket.topFromSquare(),
                    Piece.Ends.PARALLEL);
            bars.add(new BarNeed(
                    pickets.section().id(), pickets.section().name(), PartGroup.GATE, BarNeed.Saw.STEEL, piece));
        }
        return new Needs(List.of(), bars);
    }

    private static String meshItem(Cladding.Mesh mesh) {
        return (mesh.woven() ? "mesh-woven-" : "mesh-welded-")
                + pitches(mesh) + "x"
                + DecimalText.shortest(mesh.wire().inches());
    }

    private static String pitches(Cladding.Mesh mesh) {
        String along = DecimalText.shortest(mesh.pitch().inches());
        return mesh.upright().equals(mesh.pitch())
                ? along
                : along + "x" + DecimalText.shortest(mesh.upright().inches());
    }

    private static String meshName(Cladding.Mesh mesh) {
        return (mesh.woven() ? "woven mesh, " : "welded mesh, ")
                + LengthText.inchesOnly(mesh.pitch().inches()) + ", wire "
                + DecimalText.shortest(mesh.wire().inches());
    }

    private static String sheetItem(Cladding.Sheet sheet) {
        return "sheet-" + DecimalText.shortest(sheet.thickness().inches());
    }

    private static String sheetName(Cladding.Sheet sheet) {
        return "steel sheet, " + DecimalText.shortest(sheet.thickness().inches()) + " in.";
    }

    static Needs mesh(Leaf leaf, Cladding.Mesh mesh) {
        return panels(leaf, meshItem(mesh), meshName(mesh), mesh.edge());
    }

    static Needs sheet(Leaf leaf, Cladding.Sheet sheet) {
        return panels(leaf, sheetItem(sheet), sheetName(sheet), sheet.edge());
    }

    /** Each piece by the rectangle it is cut from, its trim by the foot. */
    private static Needs panels(Leaf leaf, String item, String name, MeshEdge edge) {
        List<Need> loose = new ArrayList<>();
        for (Panel panel : leaf.panels()) {
            double ft2 = panel.width().inches() * panel.height().inches() / 144;
            loose.add(new Need(item, name, PartGroup.GATE, NetUnit.SQUARE_FEET, ft2, panel.id()));
            if (edge != MeshEdge.DIRECT)
                loose.add(new Need(
                        edge == MeshEdge.ANGLE ? "trim-angle" : "trim-bar",
                        edge == MeshEdge.ANGLE ? "1 x 1 x 1/8 angle" : "1 x 1/8 flat bar",
                        PartGroup.GATE,
                        NetUnit.FEET,
                        panel.edge().inFeet(),
                        panel.id()));
        }
        return new Needs(loose, List.of());
    }
}
