package plumbleaf.documents.plot.dxf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Dots;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Raster;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.quantity.DecimalText;

/**
 * A drawing as a DXF file. Lengths are real inches; lettering is as high as it must be to come out right at the drawing's scale. Tints
 * lie on a layer of their own that is switched off.
 */
public final class DxfPlot {
    private static final String TINT_LAYER = "TINT";

    private final Drawing drawing;
    private final Scale scale;
    private final StringBuilder out = new StringBuilder(32_768);

    private DxfPlot(Drawing drawing) {
        this.drawing = drawing;
        this.scale = drawing.scale();
    }

    public static byte[] file(Drawing drawing) {
        return new DxfPlot(drawing).written().getBytes(StandardCharsets.US_ASCII);
    }

    private String written() {
        List<Primitive> parts = drawing.primitives();
        header(Drawing.extents(parts, scale));
        tables();
        put(0, "SECTION");
        put(2, "ENTITIES");
        for (Primitive part : parts)
            part.match(this::stroke, this::arc, this::fill, this::dots, this::text, this::raster);
        put(0, "ENDSEC");
        put(0, "EOF");
        return out.toString();
    }

    /** The oldest common form of the file has no pictures; a mark of the house is no part of a drawing. */
    private boolean raster(Raster raster) {
        return !raster.box().isNothing();
    }

    private void header(Box extents) {
        put(0, "SECTION");
        put(2, "HEADER");
        put(9, "$ACADVER");
        put(1, "AC1009");
        put(9, "$EXTMIN");
        place(10, new Point(extents.minX(), extents.minY()));
        put(9, "$EXTMAX");
        place(10, new Point(extents.maxX(), extents.maxY()));
        put(9, "$LTSCALE");
        put(40, number(scale.realPerPaper()));
        put(9, "$LUNITS");
        put(70, "4");
        put(9, "$PDMODE");
        put(70, "0");
        put(0, "ENDSEC");
    }

    private void tables() {
        put(0, "SECTION");
        put(2, "TABLES");
        table("LTYPE", LineKind.values().length + 1);
        lineType("CONTINUOUS", List.of());
        for (LineKind kind : LineKind.values()) lineType(kind.name(), kind.dashesIn());
        put(0, "ENDTAB");
        table("LAYER", Layer.values().length + 1);
        for (Layer layer : Layer.values()) layer(layer.name(), 7);
        layer(TINT_LAYER, -9);
        put(0, "ENDTAB");
        table("STYLE", 1);
        put(0, "STYLE");
        put(2, "STANDARD");
        put(70, "0");
        put(40, "0");
        put(41, "1");
        put(50, "0");
        put(71, "0");
        put(42, "1");
        put(3, "txt");
        put(4, "");
        put(0, "ENDTAB");
        put(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        put(0, "TABLE");
        put(2, name);
        put(70, Integer.toString(entries));
    }

    private void lineType(String name, List<Double> dashesIn) {
        put(0, "LTYPE");
        put(2, name);
        put(70, "0");
        put(3, name.toLowerCase(Locale.ROOT));
        put(72, "65");
        put(73, Integer.toString(dashesIn.size()));
        put(40, number(dashesIn.stream().mapToDouble(Double::doubleValue).sum()));
        for (int i = 0; i < dashesIn.size(); i++) put(49, number(i % 2 == 0 ? dashesIn.get(i) : -dashesIn.get(i)));
    }

    private void layer(String name, int colour) {
        put(0, "LAYER");
        put(2, name);
        put(70, "0");
        put(62, Integer.toString(colour));
        put(6, "CONTINUOUS");
    }

    private boolean stroke(Stroke stroke) {
        List<Point> points = stroke.points();
        if (points.size() == 2 && !stroke.closed()) {
            entity("LINE", stroke.look());
            place(10, points.get(0));
            place(11, points.get(1));
            return true;
        }
        entity("POLYLINE", stroke.look());
        put(66, "1");
        place(10, new Point(0, 0));
        put(70, stroke.closed() ? "1" : "0");
        for (Point point : points) {
            put(0, "VERTEX");
            put(8, stroke.look().layer().name());
            place(10, point);
        }
        put(0, "SEQEND");
        put(8, stroke.look().layer().name());
        return true;
    }

    private boolean arc(Arc arc) {
        entity(arc.isCircle() ? "CIRCLE" : "ARC", arc.look());
        place(10, arc.centre());
        put(40, number(arc.radius()));
        if (!arc.isCircle()) {
            put(50, number(degrees(arc.startRad())));
            put(51, number(degrees(arc.startRad() + arc.sweepRad())));
        }
        return true;
    }

    private boolean fill(Fill fill) {
        boolean tint = isTint(fill.look().ink());
        for (List<Point> triangle : Triangles.of(fill.outline())) {
            put(0, "SOLID");
            put(8, tint ? TINT_LAYER : fill.look().layer().name());
            put(62, Integer.toString(fill.look().ink().number()));
            place(10, triangle.get(0));
            place(11, triangle.get(1));
            place(12, triangle.get(2));
            place(13, triangle.get(2));
        }
        return true;
    }

    private static boolean isTint(Ink ink) {
        return ink == Ink.PAPER || ink.name().startsWith("TINT");
    }

    private boolean dots(Dots dots) {
        for (Point at : dots.places()) {
            put(0, "POINT");
            put(8, dots.look().layer().name());
            put(62, Integer.toString(dots.look().ink().number()));
            place(10, at);
        }
        return true;
    }

    private boolean text(Text text) {
        put(0, "TEXT");
        put(8, text.look().layer().name());
        put(62, Integer.toString(text.look().ink().number()));
        place(10, text.start(scale));
        put(40, number(scale.real(text.heightIn())));
        put(1, DxfText.ascii(text.text()));
        if (text.rotationRad() != 0) put(50, number(degrees(text.rotationRad())));
        if (text.across() != Text.Across.START || text.up() != Text.Up.BASELINE) {
            put(
                    72,
                    switch (text.across()) {
                        case START -> "0";
                        case MIDDLE -> "1";
                        case END -> "2";
                    });
            place(11, text.at());
            put(73, text.up() == Text.Up.BASELINE ? "0" : text.up() == Text.Up.MIDDLE ? "2" : "3");
        }
        return true;
    }

    private void entity(String kind, Look look) {
        put(0, kind);
        put(8, look.layer().name());
        put(6, look.line().dashesIn().isEmpty() ? "CONTINUOUS" : look.line().name());
        put(62, Integer.toString(look.ink().number()));
    }

    private void place(int code, Point point) {
        put(code, number(point.x()));
        put(code + 10, number(point.y()));
        put(code + 20, "0.0");
    }

    private void put(int code, String value) {
        out.append(code).append('\n').append(value).append('\n');
    }

    private static double degrees(double rad) {
        return rad * (180 / Math.PI);
    }

    private static String number(double value) {
        String text = DecimalText.upTo(value, 6);
        return text.indexOf('.') < 0 ? text + ".0" : text;
    }
}
