package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.BoltItem;

/** An upright cut through a rail, looked at so that outside lies at the left: how the infill is held. */
public final class RailSection {
    /** What of the boards is shown above and below a rail. */
    private static final double SHOWN_IN = 2.6;

    private static final double NOTE_PITCH_IN = 0.2;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Scale scale;
    private final double half;
    private final double deep;
    private final double wall;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    private record Note(Point target, List<String> lines) {}

    private RailSection(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.scale = scale;
        Section frame = gate.parts().frame();
        this.half = frame.width().inches() / 2;
        this.deep = frame.depth().inches();
        this.wall = frame.nominalWall().inches();
    }

    public static Drawing of(GateSubject gate, Scale scale) {
        return new RailSection(gate, scale).drawn();
    }

    private Drawing drawn() {
        marks.addAll(TubeCut.of(
                gate.parts().frame(),
                new Box(-half, -deep / 2, half, deep / 2),
                Look.visible(Layer.MEMBERS).of(leaf.id())));
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
        double foot = -Math.max(deep / 2, SHOWN_IN) - scale.real(0.3);
        marks.add(Text.small(new Point(-reach - scale.real(0.55), 0), "outside")
                .centred()
                .bold());
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, foot, scale);
        rows.add(new Point(-half, -deep / 2), new Point(half, -deep / 2), gate.length(2 * half), leaf.id());
        layers(rows);
        marks.addAll(rows.marks());
        notes(Math.max(half, reach) + scale.real(0.35), SHOWN_IN);
        return Drawing.of(LeafSections.name(gate, "section through a rail"), scale, marks);
    }

    private void layers(DimensionRows rows) {
        gate.parts()
                .cladding()
                .match(
                        open -> rows,
                        wood -> {
                            Boarding style = wood.style();
                            double out = LeafSections.side(wood);
                            double nailer = half + style.railThickness().inches();
                            double board = nailer + style.boardThickness().inches();
                            double foot = -SHOWN_IN;
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

    private double boarded(Cladding.Wood wood) {
        Boarding style = wood.style();
        double out = LeafSections.side(wood);
        double nailer = half + style.railThickness().inches();
        double board = nailer + style.boardThickness().inches();
        double high = style.railWidth().inches() / 2;
        Look look = Look.visible(Layer.PICKETS).of(leaf.id());
        boolean lying = style.lying();
        double up = lying ? SHOWN_IN : high;
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
                new Point(out * (nailer + board) / 2, SHOWN_IN * 0.8),
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
        for (double foot = -SHOWN_IN; foot < SHOWN_IN; foot += pitch)
            marks.add(Area.edged(
                    Box.of(new Point(fromX, foot), new Point(toX, Math.min(SHOWN_IN, foot + wide)))
                            .corners(),
                    Material.END_GRAIN,
                    look));
    }

    private void board(double fromX, double toX, Look look) {
        Box box = Box.of(new Point(fromX, -SHOWN_IN), new Point(toX, SHOWN_IN));
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
        Box up = new Box(-thick, from, thick, SHOWN_IN);
        marks.add(Area.edged(up.corners(), Material.STEEL_FACE, look));
        if (!pickets.punched())
            marks.add(Area.edged(new Box(-thick, -SHOWN_IN, thick, -deep / 2).corners(), Material.STEEL_FACE, look));
        notes.add(new Note(
                new Point(thick, SHOWN_IN * 0.6),
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
            marks.add(Stroke.line(new Point(at, from), new Point(at, way * SHOWN_IN), look));
            if (edge.equals("flat-bar"))
                marks.add(Area.edged(
                        Box.of(new Point(-half, face), new Point(-half - 0.125, face - way))
                                .corners(),
                        Material.STEEL,
                        look));
        }
        notes.add(new Note(
                new Point(at, SHOWN_IN * 0.7),
                List.of(
                        what,
                        switch (edge) {
                            case "angle" -> "stitch-welded to a 1 x 1 x 1/8 angle all round";
                            case "flat-bar" -> "clamped under a 1 x 1/8 flat bar, bolted";
                            default -> "welded to the frame's inner face";
                        })));
        return half;
    }

    /** Leaders to the right, from the top down in the order of what they point at. */
    private void notes(double x, double top) {
        List<Note> sorted = new ArrayList<>(notes);
        sorted.sort(Comparator.comparingDouble((Note note) -> -note.target.y()));
        double y = top;
        for (Note note : sorted) {
            marks.add(new Leader(
                    note.target, new Point(x, y), note.lines, Look.note().of(leaf.id())));
            y -= scale.real(NOTE_PITCH_IN * note.lines.size() + 0.14);
        }
    }
}
