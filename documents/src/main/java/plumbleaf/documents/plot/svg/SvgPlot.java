package plumbleaf.documents.plot.svg;

import java.util.Base64;
import java.util.List;
import java.util.Locale;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Dots;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Raster;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.quantity.DecimalText;

/**
 * A drawing as SVG. The root says how to come back to real inches: {@code data-frame} holds its left, bottom, right and top,
 * {@code data-scale} real inches to one on paper.
 */
public final class SvgPlot {
    static final double UNITS_PER_INCH = 96;

    private final Drawing drawing;
    private final Scale scale;
    private final double perReal;
    private final StringBuilder out = new StringBuilder(8192);

    private SvgPlot(Drawing drawing) {
        this.drawing = drawing;
        this.scale = drawing.scale();
        this.perReal = UNITS_PER_INCH / scale.realPerPaper();
    }

    /** For a page that already holds {@link SvgStyle#forPages()}: as wide as its place, no size of its own. */
    public static String inPage(Drawing drawing) {
        return new SvgPlot(drawing).written(false);
    }

    /** A file of its own, at true size on paper. */
    public static String file(Drawing drawing) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + new SvgPlot(drawing).written(true);
    }

    private String written(boolean alone) {
        Box frame = drawing.frame();
        String width = DecimalText.upTo(frame.width() * perReal, 3);
        String height = DecimalText.upTo(frame.height() * perReal, 3);
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot\" role=\"img\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append('"');
        if (alone) {
            out.append(" width=\"")
                    .append(DecimalText.upTo(drawing.paperWidthIn(), 4))
                    .append("in\"");
            out.append(" height=\"")
                    .append(DecimalText.upTo(drawing.paperHeightIn(), 4))
                    .append("in\"");
        }
        out.append(" data-scale=\"").append(DecimalText.upTo(scale.realPerPaper(), 6));
        out.append("\" data-frame=\"")
                .append(DecimalText.upTo(frame.minX(), 4))
                .append(' ')
                .append(DecimalText.upTo(frame.minY(), 4))
                .append(' ')
                .append(DecimalText.upTo(frame.maxX(), 4))
                .append(' ')
                .append(DecimalText.upTo(frame.maxY(), 4))
                .append("\">\n<title>");
        escape(drawing.name());
        out.append("</title>\n");
        if (alone) {
            out.append("<style>").append(SvgStyle.forFile()).append("</style>\n");
            out.append("<rect class=\"f-paper\" width=\"").append(width).append("\" height=\"");
            out.append(height).append("\"/>\n");
        }
        body(drawing.primitives());
        return out.append("</svg>\n").toString();
    }

    /** Neighbours that draw the same thing share a group that carries its id; a face and its own edge, as every picket has them, are one path. */
    private void body(List<Primitive> parts) {
        String open = "";
        for (int i = 0; i < parts.size(); i++) {
            Primitive part = parts.get(i);
            String of = part.look().of();
            if (!of.equals(open)) {
                if (!open.isEmpty()) out.append("</g>\n");
                if (!of.isEmpty()) {
                    out.append("<g data-of=\"");
                    escape(of);
                    out.append("\">\n");
                }
                open = of;
            }
            if (i + 1 < parts.size() && isEdged(part, parts.get(i + 1))) out.append(edged(part, parts.get(++i)));
            else out.append(part.match(this::stroke, this::arc, this::fill, this::dots, this::text, this::raster));
        }
        if (!open.isEmpty()) out.append("</g>\n");
    }

    private static boolean isEdged(Primitive face, Primitive edge) {
        return face instanceof Fill fill
                && edge instanceof Stroke stroke
                && stroke.closed()
                && stroke.points().equals(fill.outline())
                && stroke.look().layer() == fill.look().layer()
                && stroke.look().of().equals(fill.look().of());
    }

    private String edged(Primitive face, Primitive edge) {
        Fill fill = (Fill) face;
        return "<path class=\"f-" + fill.look().ink().key() + " " + line(edge.look()) + "\" d=\""
                + path(fill.outline(), true) + "\"/>\n";
    }

    private String stroke(Stroke stroke) {
        return "<path class=\"" + line(stroke.look()) + "\" d=\"" + path(stroke.points(), stroke.closed()) + "\"/>\n";
    }

    private String arc(Arc arc) {
        if (arc.isCircle())
            return "<circle class=\"" + line(arc.look()) + "\" cx=\"" + x(arc.centre()) + "\" cy=\"" + y(arc.centre())
                    + "\" r=\"" + number(arc.radius() * perReal) + "\"/>\n";
        String radius = number(arc.radius() * perReal);
        Point from = arc.at(0);
        Point to = arc.at(1);
        int large = arc.sweepRad() > Math.PI ? 1 : 0;
        return "<path class=\"" + line(arc.look()) + "\" d=\"M" + x(from) + " " + y(from) + "A" + radius + " " + radius
                + " 0 " + large + " 0 " + x(to) + " " + y(to) + "\"/>\n";
    }

    private String fill(Fill fill) {
        return "<path class=\"f-" + fill.look().ink().key() + " l-" + layer(fill.look()) + "\" d=\""
                + path(fill.outline(), true) + "\"/>\n";
    }

    private String dots(Dots dots) {
        StringBuilder path = new StringBuilder(dots.places().size() * 16);
        for (Point place : dots.places())
            path.append('M').append(x(place)).append(' ').append(y(place)).append("h0");
        return "<path class=\"dot s-" + dots.look().ink().key() + " l-" + layer(dots.look()) + "\" stroke-width=\""
                + number(dots.paperDiameterIn() * UNITS_PER_INCH) + "\" d=\"" + path + "\"/>\n";
    }

    private String raster(Raster raster) {
        return "<image x=\"" + x(new Point(raster.box().minX(), 0)) + "\" y=\""
                + y(new Point(0, raster.box().maxY())) + "\" width=\""
                + number(raster.box().width() * perReal)
                + "\" height=\"" + number(raster.box().height() * perReal) + "\" href=\"data:image/png;base64,"
                + Base64.getEncoder().encodeToString(raster.emblem().png()) + "\"/>\n";
    }

    private String text(Text text) {
        StringBuilder svg = new StringBuilder();
        if (text.clear())
            svg.append("<path class=\"f-")
                    .append(Ink.PAPER.key())
                    .append("\" d=\"")
                    .append(path(text.corners(scale), true))
                    .append("\"/>");
        Point start = text.start(scale);
        svg.append("<text class=\"")
                .append(text.weight() == Text.Weight.SEMIBOLD ? "b " : "")
                .append("f-")
                .append(text.look().ink().key())
                .append(" l-")
                .append(layer(text.look()))
                .append("\" font-size=\"")
                .append(number(text.heightIn() / Lettering.CAPITAL * UNITS_PER_INCH))
                .append("\"");
        if (text.rotationRad() == 0) {
            svg.append(" x=\"")
                    .append(x(start))
                    .append("\" y=\"")
                    .append(y(start))
                    .append("\"");
        } else {
            svg.append(" transform=\"translate(").append(x(start)).append(' ').append(y(start));
            svg.append(") rotate(")
                    .append(DecimalText.upTo(-text.rotationRad() * (180 / Math.PI), 3))
                    .append(")\"");
        }
        if (text.text().length() > 1)
            svg.append(" textLength=\"")
                    .append(number(text.widthIn() * UNITS_PER_INCH))
                    .append("\" lengthAdjust=\"spacingAndGlyphs\"");
        svg.append('>').append(escaped(text.text())).append("</text>\n");
        return svg.toString();
    }

    private static String line(Look look) {
        return "k-" + look.line().key() + " s-" + look.ink().key() + " l-" + layer(look);
    }

    private static String layer(Look look) {
        return look.layer().name().toLowerCase(Locale.ROOT);
    }

    private String path(List<Point> points, boolean closed) {
        StringBuilder path = new StringBuilder(points.size() * 14);
        for (int i = 0; i < points.size(); i++)
            path.append(i == 0 ? "M" : "L").append(x(points.get(i))).append(' ').append(y(points.get(i)));
        return closed ? path.append('Z').toString() : path.toString();
    }

    private String x(Point point) {
        return number((point.x() - drawing.frame().minX()) * perReal);
    }

    private String y(Point point) {
        return number((drawing.frame().maxY() - point.y()) * perReal);
    }

    private static String number(double units) {
        return DecimalText.upTo(units, 3);
    }

    private void escape(String text) {
        out.append(escaped(text));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
