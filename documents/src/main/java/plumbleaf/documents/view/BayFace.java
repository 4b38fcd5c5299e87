package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.RailPiece;

/** The face of a bay as it looks from outside: its boards with their tops, its panel, fabric or mesh, its rails and trim. */
final class BayFace {
    /** Half the depth of a wood rail. */
    private static final double RAIL_HALF_IN = 1.75;

    /** Woven wire is drawn with wider meshes than it has, so that lines stay apart on paper. */
    private static final double DRAWN_MESH_IN = 7;

    /** Between strands of barbed wire. */
    private static final double STRAND_IN = 4;

    /** Steps of an arc. */
    private static final int ARC_STEPS = 6;

    private final Bay bay;
    private final Optional<FenceStyle> style;
    private final Place at;
    private final Look board;
    private final List<Mark> marks = new ArrayList<>();

    /** A station and an elevation as a point of the drawing. */
    interface Place {
        Point of(double stationIn, double elevationIn);
    }

    private BayFace(Bay bay, Optional<FenceStyle> style, Place at) {
        this.bay = bay;
        this.style = style;
        this.at = at;
        this.board = Look.thin(Layer.PICKETS).as(LineKind.DIMENSION).of(bay.id());
    }

    static List<Mark> of(Bay bay, Optional<FenceStyle> style, Place at) {
        BayFace face = new BayFace(bay, style, at);
        face.draw();
        return face.marks;
    }

    private void draw() {
        boolean drawn = bay.fill()
                .match(
                        open -> outline(),
                        pickets -> pickets(),
                        this::boards,
                        this::panel,
                        fabric -> fabric(),
                        this::mesh);
        if (!drawn) outline();
        style.ifPresent(is -> trim(is.trim()));
    }

    private double from() {
        return bay.start().inches();
    }

    private double length() {
        return bay.level().inches();
    }

    private double topAt(double along) {
        return bay.topFrom().inches() + (bay.topTo().inches() - bay.topFrom().inches()) * along / length();
    }

    private double bottomAt(double along) {
        return bay.bottomFrom().inches()
                + (bay.bottomTo().inches() - bay.bottomFrom().inches()) * along / length();
    }

    private Point point(double along, double elevation) {
        return at.of(from() + along, elevation);
    }

    private boolean outline() {
        marks.add(Stroke.outline(
                List.of(
                        point(0, bottomAt(0)),
                        point(length(), bottomAt(length())),
                        point(length(), topAt(length())),
                        point(0, topAt(0))),
                board));
        return true;
    }

    private boolean pickets() {
        if (bay.pickets().pickets().isEmpty()) return false;
        BoardTop top = style.map(BayFace::topOf).orElse(BoardTop.FLAT);
        for (FencePicket.Layer layer : FencePicket.Layer.values())
            for (FencePicket picket : bay.pickets().pickets()) if (picket.layer() == layer) picket(picket, top);
        rails(RAIL_HALF_IN, Look.hidden(Layer.FENCE).in(Ink.SECOND).of(bay.id()));
        return true;
    }

    private static BoardTop topOf(FenceStyle style) {
        return style.infill()
                .match(
                        up -> up.top(),
                        both -> both.top(),
                        lying -> BoardTop.FLAT,
                        panel -> BoardTop.FLAT,
                        fabric -> BoardTop.FLAT,
                        mesh -> BoardTop.FLAT);
    }

    /** Flat tops follow the grade; shaped ones stand square on their board. */
    private void picket(FencePicket picket, BoardTop shape) {
        double left = picket.station().inches() - from();
        double width = picket.width().inches();
        double middle = left + width / 2;
        double bottom = picket.bottom().inches();
        double top = bottom + picket.length().inches();
        double bottomGrade = (bottomAt(length()) - bottomAt(0)) / length();
        double topGrade = (topAt(length()) - topAt(0)) / length();
        List<Point> outline = new ArrayList<>();
        outline.add(point(left, bottom - width / 2 * bottomGrade));
        outline.add(point(left + width, bottom + width / 2 * bottomGrade));
        if (shape == BoardTop.FLAT) {
            outline.add(point(left + width, top + width / 2 * topGrade));
            outline.add(point(left, top - width / 2 * topGrade));
        } else {
            for (double[] corner : crown(shape))
                outline.add(point(middle + corner[0] * width, top + corner[1] * width));
        }
        marks.add(Area.edged(outline, Material.CLEAR, board));
    }

    /** The top of a board of width 1, from its right shoulder to its left, x from its middle and y from its highest point. */
    private static List<double[]> crown(BoardTop shape) {
        double depth = shape.depthOverWidth();
        List<double[]> corners = new ArrayList<>();
        corners.add(new double[] {0.5, -depth});
        switch (shape) {
            case FLAT -> {}
            case DOG_EAR -> {
                corners.add(new double[] {0.5 - depth, 0});
                corners.add(new double[] {depth - 0.5, 0});
            }
            case POINTED -> corners.add(new double[] {0, 0});
            case ROUND -> {
                for (int step = 1; step < 2 * ARC_STEPS; step++) {
                    double turn = Math.PI * step / (2 * ARC_STEPS);
                    corners.add(new double[] {StrictMath.cos(turn) / 2, StrictMath.sin(turn) / 2 - 0.5});
                }
            }
            case GOTHIC -> {
                for (int step = 1; step <= ARC_STEPS; step++) {
                    double turn = Math.PI / 3 * step / ARC_STEPS;
                    corners.add(new double[] {StrictMath.cos(turn) - 0.5, StrictMath.sin(turn) - depth});
                }
                for (int step = ARC_STEPS - 1; step >= 1; step--) {
                    double turn = Math.PI / 3 * step / ARC_STEPS;
                    corners.add(new double[] {0.5 - StrictMath.cos(turn), StrictMath.sin(turn) - depth});
                }
            }
        }
        corners.add(new double[] {-0.5, -depth});
        return corners;
    }

    private boolean boards(BayFill.Lying lying) {
        double wide = style.flatMap(is -> is.infill()
                        .match(
                                up -> Optional.<Board>empty(),
                                both -> Optional.<Board>empty(),
                                made -> Optional.of(made.board()),
                                panel -> Optional.<Board>empty(),
                                fabric -> Optional.<Board>empty(),
                                mesh -> Optional.<Board>empty()))
                .map(made -> made.width().inches())
                .orElse(lying.rip().inches());
        for (int i = 0; i < lying.boards().size(); i++) {
            double half = (i == lying.boards().size() - 1 ? lying.rip().inches() : wide) / 2;
            band(lying.boards().get(i), half, 0, Material.CLEAR, board);
        }
        return true;
    }

    /** A piece along the bay, drawn as deep as it is. */
    private void band(RailPiece piece, double half, double short0, Material material, Look look) {
        double rise = (piece.to().inches() - piece.from().inches()) / length();
        double a = short0;
        double b = length() - short0;
        marks.add(Area.edged(
                List.of(
                        point(a, piece.from().inches() + rise * a - half),
                        point(b, piece.from().inches() + rise * b - half),
                        point(b, piece.from().inches() + rise * b + half),
                        point(a, piece.from().inches() + rise * a + half)),
                material,
                look));
    }

    private void rails(double half, Look look) {
        for (RailPiece rail : bay.rails())
            for (double side : List.of(-half, half))
                marks.add(Stroke.line(
                        point(0, rail.from().inches() + side),
                        point(length(), rail.to().inches() + side),
                        look));
    }

    /** @param alongIn how long each is cut, along the grade: they are drawn so long, in the middle of the bay */
    private void steelRails(double half, ToDoubleFunction<RailPiece> alongIn) {
        for (RailPiece rail : bay.rails())
            band(
                    rail,
                    half,
                    Math.max(0, (length() - alongIn.applyAsDouble(rail) * levelOverAlong(rail)) / 2),
                    Material.STEEL_FACE,
                    Look.thin(Layer.FENCE).as(LineKind.DIMENSION).of(bay.id()));
    }

    private double levelOverAlong(RailPiece rail) {
        return length() / Math.hypot(length(), rail.to().inches() - rail.from().inches());
    }

    private boolean panel(BayFill.Panel panel) {
        double width = panel.picket().inches();
        double first =
                (length() - (panel.pickets() - 1) * (width + panel.clear().inches()) - width) / 2;
        for (int i = 0; i < panel.pickets(); i++) {
            double left = first + i * (width + panel.clear().inches());
            marks.add(Area.edged(
                    List.of(
                            point(left, bottomAt(left)),
                            point(left + width, bottomAt(left + width)),
                            point(left + width, topAt(left + width)),
                            point(left, topAt(left))),
                    Material.STEEL_FACE,
                    board));
        }
        steelRails(0.75, rail -> panel.length().inches());
        return true;
    }

    /** Wires at 45 degrees both ways between the bottom and the top, then the rails over them. */
    private boolean fabric() {
        Look wire = Look.thin(Layer.PICKETS).as(LineKind.DIMENSION).in(Ink.HAIR).of(bay.id());
        double height = topAt(0) - bottomAt(0);
        for (double start = -height; start < length(); start += DRAWN_MESH_IN) {
            double a = Math.max(0, start);
            double b = Math.min(length(), start + height);
            if (b <= a) continue;
            marks.add(Stroke.line(point(a, bottomAt(a) + a - start), point(b, bottomAt(b) + b - start), wire));
            marks.add(Stroke.line(point(a, topAt(a) - (a - start)), point(b, topAt(b) - (b - start)), wire));
        }
        marks.add(Stroke.line(point(0, bottomAt(0)), point(length(), bottomAt(length())), board));
        rails(0.7, Look.thin(Layer.FENCE).of(bay.id()));
        style.ifPresent(is -> is.infill()
                .match(up -> 0, both -> 0, lying -> 0, panel -> 0, made -> barbed(made.barbed()), mesh -> 0));
        return true;
    }

    /** How far what is drawn of a style reaches over its top: barbed wire alone does. */
    static double over(FenceStyle style) {
        return style.infill()
                .match(
                        up -> 0.0,
                        both -> 0.0,
                        lying -> 0.0,
                        panel -> 0.0,
                        fabric -> STRAND_IN * fabric.barbed(),
                        mesh -> 0.0);
    }

    /** Strands over the top. */
    private int barbed(int strands) {
        Look wire = Look.thin(Layer.FENCE).as(LineKind.DIMENSION).of(bay.id());
        for (int strand = 1; strand <= strands; strand++)
            marks.add(Stroke.line(
                    point(0, topAt(0) + STRAND_IN * strand),
                    point(length(), topAt(length()) + STRAND_IN * strand),
                    wire));
        return strands;
    }

    private boolean mesh(BayFill.Mesh mesh) {
        Look wire = Look.thin(Layer.PICKETS).as(LineKind.DIMENSION).in(Ink.HAIR).of(bay.id());
        double step = Math.max(4, mesh.opening().inches());
        for (double along = step; along < length(); along += step)
            marks.add(Stroke.line(point(along, bottomAt(along)), point(along, topAt(along)), wire));
        double height = topAt(0) - bottomAt(0);
        for (double up = step; up < height; up += step)
            marks.add(Stroke.line(point(0, bottomAt(0) + up), point(length(), bottomAt(length()) + up), wire));
        steelRails(0.95, rail -> rail.cut().inches());
        return true;
    }

    /** Cap at the very top, lattice under it, a fascia on the boards under both, a kick board at the bottom. */
    private void trim(FenceTrim trim) {
        double above = trim.above().inches();
        trim.lattice().ifPresent(band -> lattice(-above, band.height().inches()));
        trim.fascia()
                .ifPresent(made ->
                        along(-above - made.width().inches(), made.width().inches(), Material.WOOD));
        trim.cap()
                .ifPresent(made ->
                        along(-made.thickness().inches(), made.thickness().inches(), Material.WOOD));
        trim.kick().ifPresent(made -> {
            double deep = made.width().inches();
            marks.add(Area.edged(
                    List.of(
                            point(0, bottomAt(0)),
                            point(length(), bottomAt(length())),
                            point(length(), bottomAt(length()) + deep),
                            point(0, bottomAt(0) + deep)),
                    Material.WOOD,
                    board));
        });
    }

    /** A board along the top, from so far above it and so high. */
    private void along(double above, double high, Material material) {
        marks.add(Area.edged(
                List.of(
                        point(0, topAt(0) + above),
                        point(length(), topAt(length()) + above),
                        point(length(), topAt(length()) + above + high),
                        point(0, topAt(0) + above + high)),
                material,
                board));
    }

    private void lattice(double above, double high) {
        along(above, high, Material.CLEAR);
        for (double start = -high; start < length(); start += 4) {
            double a = Math.max(0, start);
            double b = Math.min(length(), start + high);
            if (b <= a) continue;
            marks.add(
                    Stroke.line(point(a, topAt(a) + above + a - start), point(b, topAt(b) + above + b - start), board));
            marks.add(Stroke.line(
                    point(a, topAt(a) + above + high - (a - start)),
                    point(b, topAt(b) + above + high - (b - start)),
                    board));
        }
    }
}
