package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Leader;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.BoltItem;

/**
 * A leaf cut through where a welder and whoever hangs it ask how it is made: through a rail with its infill, through the latch side and
 * through the hinge side. What is cut is shown with its walls; sizes that the elevation has are not said again.
 */
public final class LeafSections {
    /** What of the leaf is shown beyond its stile, and of the boards above and below a rail. */
    private static final double SHOWN_IN = 7;

    private static final double BOARD_SHOWN_IN = 2.6;
    private static final double NOTE_PITCH_IN = 0.2;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final Scale scale;
    private final double half;
    private final double deep;
    private final double wall;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    private record Note(Point target, List<String> lines) {}

    private LeafSections(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.scale = scale;
        Section frame = gate.parts().frame();
        this.half = frame.width().inches() / 2;
        this.deep = frame.depth().inches();
        this.wall = frame.nominalWall().inches();
    }

    /** An upright cut through a rail, looked at so that outside lies at the left: how the infill is held. */
    public static Drawing infill(GateSubject gate, Scale scale) {
        return new LeafSections(gate, scale).rail();
    }

    /** A level cut through latch stile and what it closes on, seen from above, outside below. */
    public static Drawing latchSide(GateSubject gate, Scale scale) {
        return new LeafSections(gate, scale).latch();
    }

    /** A level cut through hinge stile and hinge post at a hinge, seen from above, outside below. */
    public static Drawing hingeSide(GateSubject gate, Scale scale) {
        return new LeafSections(gate, scale).hinge();
    }

    private Look cut() {
        return Look.visible(Layer.MEMBERS).of(leaf.id());
    }

    /** A tube with its wall, both to scale. */
    private void tube(Box outer) {
        if (gate.parts().frame().isRound()) {
            marks.add(Arc.circle(outer.centre(), outer.width() / 2, cut()));
            marks.add(Arc.circle(outer.centre(), outer.width() / 2 - wall, cut().as(LineKind.THIN)));
            return;
        }
        marks.add(Area.edged(outer.corners(), Material.STEEL_FACE, cut()));
        marks.add(Area.edged(outer.grown(-wall).corners(), Material.CLEAR, cut().as(LineKind.THIN)));
    }

    private Drawing rail() {
        tube(new Box(-half, -deep / 2, half, deep / 2));
        double reach = gate.parts()
                .cladding()
                .match(
                        open -> half,
                        this::boarded,
                        pickets -> steel(pickets),
                        mesh -> panel(
                                "mesh, wire " + gate.length(mesh.wire().inches()) + ", "
                                        + gate.length(mesh.pitch().inches()) + " from wire to wire",
                                mesh.edge().key()),
                        sheet -> panel(
                                "sheet " + gate.length(sheet.thickness().inches()) + " thick",
                                sheet.edge().key()));
        notes.add(new Note(
                new Point(half - wall / 2, -deep / 4),
                List.of(gate.parts().frame().name(), "alike at every rail")));
        double foot = -Math.max(deep / 2, BOARD_SHOWN_IN) - scale.real(0.3);
        marks.add(Text.small(new Point(-reach - scale.real(0.55), 0), "outside")
                .centred()
                .bold());
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, foot, scale);
        rows.add(new Point(-half, -deep / 2), new Point(half, -deep / 2), gate.length(2 * half), leaf.id());
        layers(rows);
        marks.addAll(rows.marks());
        notes(Math.max(half, reach) + scale.real(0.35), BOARD_SHOWN_IN);
        return Drawing.of(name("section through a rail"), scale, marks);
    }

    private String name(String what) {
        return (gate.isPair() ? "Leaf " : "Gate ") + gate.mark() + ", " + what;
    }

    private void layers(DimensionRows rows) {
        gate.parts()
                .cladding()
                .match(
                        open -> rows,
                        wood -> {
                            Boarding style = wood.style();
                            double out = side(wood);
                            double nailer = half + style.railThickness().inches();
                            double board = nailer + style.boardThickness().inches();
                            double foot = -BOARD_SHOWN_IN;
                            rows.add(
                                    new Point(out * half, foot),
                                    new Point(out * nailer, foot),
                                    gate.length(nailer - half),
                                    leaf.id());
                            rows.add(
                                    new Point(out * nailer, foot),
                                    new Point(out * board, foot),
                                    gate.length(board - nailer),
                                    leaf.id());
                            rows.add(
                                    new Point(-out * half, foot),
                                    new Point(out * board, foot),
                                    gate.length(half + board),
                                    leaf.id());
                            return rows;
                        },
                        pickets -> rows,
                        mesh -> rows,
                        sheet -> rows);
    }

    /** On an upright section outside lies at the left. */
    private static double side(Cladding.Wood wood) {
        return wood.face() == FinishedFace.IN ? 1 : -1;
    }

    private double boarded(Cladding.Wood wood) {
        Boarding style = wood.style();
        double out = side(wood);
        double nailer = half + style.railThickness().inches();
        double board = nailer + style.boardThickness().inches();
        double high = style.railWidth().inches() / 2;
        Look look = Look.visible(Layer.PICKETS).of(leaf.id());
        boolean lying = style.lying();
        double up = lying ? BOARD_SHOWN_IN : high;
        marks.add(Area.edged(
                Box.of(new Point(out * half, -up), new Point(out * nailer, up)).corners(),
                lying ? Material.WOOD : Material.END_GRAIN,
                look));
        if (lying) lying(style, out * nailer, out * board, look);
        else board(out * nailer, out * board, look);
        if (style.bothSides())
            board(out * half, out * (half - style.boardThickness().inches()), look.as(LineKind.HIDDEN));
        bolt(out);
        double screwY = high / 2;
        marks.add(Stroke.line(
                new Point(out * board, screwY),
                new Point(out * (half + (nailer - half) * 0.2), screwY),
                Look.centre(Layer.HARDWARE).of(leaf.id())));
        notes.add(new Note(
                new Point(out * (nailer + board) / 2, BOARD_SHOWN_IN * 0.8),
                List.of("board " + gate.length(style.boardThickness().inches()) + " x "
                        + gate.length(style.boardWidth().inches()))));
        notes.add(new Note(
                new Point(out * (half + (nailer - half) * 0.2), screwY),
                List.of(style.fastenersPerCrossing() + " screws at each crossing")));
        notes.add(new Note(
                new Point(out * (half + nailer) / 2, high * 0.05 + deep * 0.2),
                List.of("nailer " + gate.length(style.railThickness().inches()) + " x "
                        + gate.length(style.railWidth().inches()) + (lying ? ", upright" : ", along the rail"))));
        return board;
    }

    /** Boards that lie along the leaf, from their ends, as far as shown. */
    private void lying(Boarding style, double fromX, double toX, Look look) {
        double wide = style.boardWidth().inches();
        double pitch = Math.max(wide * 0.5, wide + style.spacing().gap().inches());
        for (double foot = -BOARD_SHOWN_IN; foot < BOARD_SHOWN_IN; foot += pitch)
            marks.add(Area.edged(
                    Box.of(new Point(fromX, foot), new Point(toX, Math.min(BOARD_SHOWN_IN, foot + wide)))
                            .corners(),
                    Material.END_GRAIN,
                    look));
    }

    private void board(double fromX, double toX, Look look) {
        Box box = Box.of(new Point(fromX, -BOARD_SHOWN_IN), new Point(toX, BOARD_SHOWN_IN));
        marks.add(Area.plain(box.corners(), Material.WOOD, look));
        for (double x : List.of(box.minX(), box.maxX()))
            marks.add(Stroke.line(new Point(x, box.minY()), new Point(x, box.maxY()), look));
        for (double y : List.of(box.minY(), box.maxY()))
            marks.add(Stroke.through(
                    List.of(
                            new Point(box.minX(), y),
                            new Point(box.centre().x() - box.width() * 0.1, y + box.width() * 0.15),
                            new Point(box.centre().x() + box.width() * 0.1, y - box.width() * 0.15),
                            new Point(box.maxX(), y)),
                    look.as(LineKind.THIN)));
    }

    /** The bolt of a nailer: through both walls, its wide washer and nut on the wood. */
    private void bolt(double out) {
        for (BoltItem item : BoltItem.of(leaf, gate.parts())) {
            if (!item.nutOnWood() || !item.where().startsWith("nailers")) continue;
            double grip = item.stack().grip().inches();
            double thick = item.stack().size().diameter().inches();
            Look look = Look.visible(Layer.HARDWARE).of(leaf.id());
            double head = -out * half;
            marks.add(Area.edged(
                    Box.of(new Point(head, -thick / 2), new Point(head + out * grip, thick / 2))
                            .corners(),
                    Material.STEEL,
                    look.as(LineKind.THIN)));
            marks.add(Area.edged(
                    Box.of(new Point(head, -thick * 0.9), new Point(head - out * thick * 0.65, thick * 0.9))
                            .corners(),
                    Material.STEEL,
                    look));
            notes.add(new Note(
                    new Point(head, 0),
                    List.of(
                            item.name() + ", hole " + gate.length(item.drill().inches()) + " both walls,",
                            "grip " + gate.length(grip) + ", wide washer on the wood")));
        }
    }

    private double steel(Cladding.Pickets pickets) {
        double thick = pickets.section().width().inches() / 2;
        Look look = Look.visible(Layer.PICKETS).of(leaf.id());
        double from = pickets.punched() ? -deep / 2 - 1 : deep / 2;
        Box up = new Box(-thick, from, thick, BOARD_SHOWN_IN);
        marks.add(Area.edged(up.corners(), Material.STEEL_FACE, look));
        if (!pickets.punched())
            marks.add(Area.edged(
                    new Box(-thick, -BOARD_SHOWN_IN, thick, -deep / 2).corners(), Material.STEEL_FACE, look));
        notes.add(new Note(
                new Point(thick, BOARD_SHOWN_IN * 0.6),
                List.of(
                        "picket " + pickets.section().name(),
                        pickets.punched() ? "through a punched rail" : "cut in between, welded")));
        return half;
    }

    private double panel(String what, String edge) {
        Look look = Look.visible(Layer.PICKETS).of(leaf.id());
        boolean angle = edge.equals("angle");
        double at = angle ? -half + 1 : edge.equals("direct") ? 0 : -half;
        for (int way : List.of(1, -1)) {
            double face = way * deep / 2;
            if (angle) {
                marks.add(Area.edged(
                        Box.of(new Point(-half + 1, face), new Point(-half + 1.125, face + way))
                                .corners(),
                        Material.STEEL,
                        look));
                marks.add(Area.edged(
                        Box.of(new Point(-half + 1, face), new Point(-half + 2, face + way * 0.125))
                                .corners(),
                        Material.STEEL,
                        look));
            }
            double from = edge.equals("flat-bar") ? face - way * 1 : face;
            marks.add(Stroke.line(new Point(at, from), new Point(at, way * BOARD_SHOWN_IN), look));
            if (edge.equals("flat-bar"))
                marks.add(Area.edged(
                        Box.of(new Point(-half, face), new Point(-half - 0.125, face - way))
                                .corners(),
                        Material.STEEL,
                        look));
        }
        notes.add(new Note(
                new Point(at, BOARD_SHOWN_IN * 0.7),
                List.of(
                        what,
                        switch (edge) {
                            case "angle" -> "stitch-welded to a 1 x 1 x 1/8 angle all round";
                            case "flat-bar" -> "clamped under a 1 x 1/8 flat bar, bolted";
                            default -> "welded to the frame's inner face";
                        })));
        return half;
    }

    private Drawing latch() {
        double edge = leaf.outline().latchEdge().inches();
        stile(edge - deep, edge, edge - SHOWN_IN, edge);
        double closes = gate.latchFaceR();
        if (gate.isPair()) {
            tube(Box.of(outside.at(closes, -half), outside.at(closes + deep, half)));
            marks.add(Text.small(outside.at(closes + deep + scale.real(0.3), 0), gate.closesOn())
                    .centred()
                    .bold());
        } else {
            marks.addAll(PostCut.of(outside, gate.parts().latchPost(), closes, 1, gate.latchPost(), scale));
        }
        double bar = -swings() * (half + 0.4);
        marks.add(Stroke.line(
                outside.at(edge - deep - 1, bar),
                outside.at(closes + 1, bar),
                Look.centre(Layer.HARDWARE).of(leaf.id())));
        double low = low();
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low, scale);
        rows.add(outside.at(edge - deep, -half), outside.at(edge, -half), gate.length(deep), leaf.id());
        rows.add(outside.at(edge, -half), outside.at(closes, -half), gate.between(edge, closes), leaf.id());
        marks.addAll(rows.marks());
        sides(edge - SHOWN_IN / 2, rows.outerEdge());
        List<String> words = new ArrayList<>();
        words.add(gate.parts().latch().name() + ": works with a gap of");
        words.add(gate.length(gate.parts().latch().least().inches()) + " to "
                + gate.length(gate.parts().latch().greatest().inches()) + ", reaches "
                + gate.length(gate.parts().latch().bite().inches()));
        words(List.of(words), edge - SHOWN_IN / 2, rows.outerEdge());
        return Drawing.of(name("section at the latch"), scale, marks);
    }

    private double swings() {
        return leaf.hand().swing() == SwingWay.IN ? 1 : -1;
    }

    private Drawing hinge() {
        double edge = leaf.outline().hingeEdge().inches();
        double face = gate.hingeFaceR();
        stile(edge, edge + deep, edge, edge + SHOWN_IN);
        marks.addAll(PostCut.of(outside, gate.parts().hingePost(), face, -1, gate.hingePost(), scale));
        double off = swings() * gate.parts().hinge().swingOffset().inches();
        double plate = gate.parts().hinge().fixing().plateThickness().inches();
        Look look = Look.visible(Layer.HARDWARE).of(leaf.pins().get(0).id());
        Point pin = outside.at(0, off);
        marks.add(Arc.circle(pin, 0.31, look));
        marks.add(Stroke.line(pin, outside.at(face, off), look.as(LineKind.THIN)));
        marks.add(Area.edged(
                Box.of(outside.at(edge, swings() * half), outside.at(edge + deep, swings() * (half + plate)))
                        .corners(),
                Material.STEEL,
                look));
        double low = low();
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low, scale);
        rows.add(outside.at(face, -half), outside.at(0, -half), gate.between(face, 0), leaf.id());
        rows.add(outside.at(face, -half), outside.at(edge, -half), gate.between(face, edge), leaf.id());
        rows.add(outside.at(edge, -half), outside.at(edge + deep, -half), gate.length(deep), leaf.id());
        marks.addAll(rows.marks());
        Look axis = Look.centre(Layer.HARDWARE).of(leaf.id());
        marks.add(Stroke.line(outside.at(-0.8, 0), outside.at(edge + SHOWN_IN, 0), axis));
        if (Math.abs(off) > 0.05) {
            marks.add(Stroke.line(outside.at(-0.8, off), outside.at(edge + SHOWN_IN, off), axis));
        }
        sides(edge + SHOWN_IN / 2, rows.outerEdge());
        List<List<String>> words = new ArrayList<>();
        words.add(List.of(
                gate.parts().hinge().name(),
                "pin " + gate.length(Math.abs(off)) + " off the leaf's middle, on the side it swings to"));
        for (BoltItem item : BoltItem.of(leaf, gate.parts())) {
            if (!item.where().startsWith("hinges")) continue;
            words.add(List.of(
                    item.where() + ": " + item.count() / leaf.pins().size() + " a hinge, " + item.name() + ",",
                    "grip " + gate.length(item.stack().grip().inches())
                            + item.sleeve()
                                    .map(is -> ", crush sleeve " + gate.length(is.inches()))
                                    .orElse("")));
        }
        gate.parts()
                .hinge()
                .fixing()
                .toPost()
                .match(
                        welded -> words.add(List.of(
                                "post plates: fillets of "
                                        + gate.length(welded.leg().inches()) + " down both sides,",
                                gate.length(gate.parts()
                                                .hinge()
                                                .fixing()
                                                .plateHeight()
                                                .inches()) + " high, " + gate.length(plate) + " thick")),
                        bolted -> true,
                        lagged -> words.add(List.of(
                                "post: " + lagged.count() + " lag screws a hinge, "
                                        + gate.length(lagged.diameter().inches()) + " x "
                                        + gate.length(lagged.length().inches()) + ",",
                                "lead hole " + gate.length(lagged.lead().inches()))));
        words(words, edge + SHOWN_IN / 2, rows.outerEdge());
        return Drawing.of(name("section at a hinge"), scale, marks);
    }

    /** A stile with what of the infill lies beside it, as far as shown. */
    private void stile(double from, double to, double shownFrom, double shownTo) {
        tube(Box.of(outside.at(from, -half), outside.at(to, half)));
        gate.parts()
                .cladding()
                .match(
                        open -> marks,
                        wood -> {
                            double out = side(wood);
                            double nailer = wood.style().railThickness().inches();
                            double board = wood.style().boardThickness().inches();
                            Look look = Look.thin(Layer.PICKETS).of(leaf.id());
                            if (wood.style().lying()) {
                                marks.add(Area.edged(
                                        Box.of(
                                                        outside.at(shownFrom, out * (half + nailer)),
                                                        outside.at(shownTo, out * (half + nailer + board)))
                                                .corners(),
                                        Material.WOOD,
                                        look));
                                return marks;
                            }
                            marks.add(Area.edged(
                                    Box.of(
                                                    outside.at(shownFrom, out * half),
                                                    outside.at(shownTo, out * (half + nailer)))
                                            .corners(),
                                    Material.WOOD,
                                    look));
                            for (Picket picket : leaf.pickets()) {
                                double r = Math.max(shownFrom, picket.r().inches());
                                double end = Math.min(
                                        shownTo,
                                        picket.r().inches() + picket.width().inches());
                                if (end - r > 0.1)
                                    marks.add(Area.edged(
                                            Box.of(
                                                            outside.at(r, out * (half + nailer)),
                                                            outside.at(end, out * (half + nailer + board)))
                                                    .corners(),
                                            Material.END_GRAIN,
                                            look));
                            }
                            return marks;
                        },
                        pickets -> marks,
                        mesh -> marks,
                        sheet -> marks);
    }

    /** Where the dimensions below begin: under posts, boards and what swings out. */
    private double low() {
        double post = Math.max(
                gate.parts().hingePost().depth().inches(),
                gate.parts().latchPost().depth().inches());
        double clad = gate.parts()
                .cladding()
                .match(
                        open -> 0.0,
                        wood -> wood.style().railThickness().inches()
                                + wood.style().boardThickness().inches(),
                        pickets -> 0.0,
                        mesh -> 0.0,
                        sheet -> 0.0);
        return -Math.max(post / 2, half + clad) - scale.real(0.4);
    }

    private void sides(double r, double outerEdge) {
        double x = outside.at(r, 0).x();
        double high = -low() - scale.real(0.1);
        marks.add(Text.small(new Point(x, high), "inside").centred().bold());
        marks.add(Text.small(new Point(x, outerEdge - scale.real(0.1)), "outside")
                .centred()
                .bold());
    }

    /** Words under a section, one piece under the other. */
    private void words(List<List<String>> pieces, double r, double outerEdge) {
        double x = outside.at(r, 0).x();
        double y = outerEdge - scale.real(0.4);
        for (List<String> piece : pieces) {
            for (String line : piece) {
                marks.add(Text.small(new Point(x, y), line).centred());
                y -= scale.real(0.16);
            }
            y -= scale.real(0.06);
        }
    }

    /** Leaders to the right, from the top down in the order of what they point at. */
    private void notes(double x, double top) {
        List<Note> sorted = new ArrayList<>(notes);
        sorted.sort(java.util.Comparator.comparingDouble((Note note) -> -note.target.y()));
        double y = top;
        for (Note note : sorted) {
            marks.add(new Leader(
                    note.target, new Point(x, y), note.lines, Look.note().of(leaf.id())));
            y -= scale.real(NOTE_PITCH_IN * note.lines.size() + 0.14);
        }
    }
}
