package plumbleaf.documents.plot.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Dots;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Raster;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;

/** Writes the marks of one drawing into one page. */
final class PdfPen {
    private static final double POINTS_PER_INCH = 72;

    private final PDPageContentStream page;
    private final PdfFonts fonts;
    private final Scale scale;
    private final Box frame;
    private final double perReal;
    private String strokeState = "";
    private String fillState = "";

    PdfPen(PDPageContentStream page, PdfFonts fonts, Drawing drawing) {
        this.page = page;
        this.fonts = fonts;
        this.scale = drawing.scale();
        this.frame = drawing.frame();
        this.perReal = POINTS_PER_INCH / scale.realPerPaper();
    }

    void draw(List<Primitive> parts) throws IOException {
        page.setLineJoinStyle(1);
        try {
            for (Primitive part : parts)
                part.match(this::stroke, this::arc, this::fill, this::dots, this::text, this::raster);
        } catch (UncheckedIOException wrapped) {
            throw new IOException(wrapped);
        }
    }

    /** What may fail on writing. */
    private interface Writing {
        void run() throws IOException;
    }

    private static boolean writing(Writing step) {
        try {
            step.run();
            return true;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private boolean stroke(Stroke stroke) {
        return writing(() -> {
            pen(stroke.look().ink(), stroke.look().line());
            path(stroke.points());
            if (stroke.closed()) page.closeAndStroke();
            else page.stroke();
        });
    }

    private boolean arc(Arc arc) {
        return writing(() -> {
            pen(arc.look().ink(), arc.look().line());
            curve(arc);
            if (arc.isCircle()) page.closeAndStroke();
            else page.stroke();
        });
    }

    /** In pieces of at most a quarter turn, each a cubic curve with its handles at 4/3 tan(turn / 4). */
    private void curve(Arc arc) throws IOException {
        int pieces = (int) Math.max(1, Math.ceil(arc.sweepRad() / (Math.PI / 2) - 1e-9));
        double turn = arc.sweepRad() / pieces;
        double handle = arc.radius() * 4 / 3 * StrictMath.tan(turn / 4);
        Point from = arc.at(0);
        page.moveTo(x(from), y(from));
        for (int i = 0; i < pieces; i++) {
            double startRad = arc.startRad() + i * turn;
            double endRad = startRad + turn;
            Point start = arc.centre().towards(startRad, arc.radius());
            Point end = arc.centre().towards(endRad, arc.radius());
            Point first = start.towards(startRad + Math.PI / 2, handle);
            Point second = end.towards(endRad - Math.PI / 2, handle);
            page.curveTo(x(first), y(first), x(second), y(second), x(end), y(end));
        }
    }

    private boolean fill(Fill fill) {
        return writing(() -> {
            brush(fill.look().ink());
            path(fill.outline());
            page.closePath();
            page.fill();
        });
    }

    private boolean dots(Dots dots) {
        return writing(() -> {
            strokeState = "";
            colour(dots.look().ink(), true);
            page.setLineCapStyle(1);
            page.setLineDashPattern(new float[0], 0);
            page.setLineWidth((float) (dots.paperDiameterIn() * POINTS_PER_INCH));
            for (Point at : dots.places()) {
                page.moveTo(x(at), y(at));
                page.lineTo(x(at), y(at));
            }
            page.stroke();
            page.setLineCapStyle(0);
        });
    }

    private boolean text(Text text) {
        return writing(() -> {
            if (text.text().isBlank()) return;
            if (text.clear()) {
                brush(Ink.PAPER);
                path(text.corners(scale));
                page.closePath();
                page.fill();
            }
            brush(text.look().ink());
            page.beginText();
            Point start = text.start(scale);
            page.setTextMatrix(Matrix.getRotateInstance(text.rotationRad(), x(start), y(start)));
            float size = (float) (text.heightIn() / Lettering.CAPITAL * POINTS_PER_INCH);
            for (Lettering.Stretch stretch : Lettering.stretches(text.text(), text.weight())) {
                page.setFont(fonts.font(stretch.face()), size);
                page.showText(stretch.text());
            }
            page.endText();
        });
    }

    private boolean raster(Raster raster) {
        return writing(() -> {
            Box box = raster.box();
            page.drawImage(
                    fonts.picture(raster.emblem()),
                    x(new Point(box.minX(), 0)),
                    y(new Point(0, box.minY())),
                    (float) (box.width() * perReal),
                    (float) (box.height() * perReal));
        });
    }

    private void path(List<Point> points) throws IOException {
        page.moveTo(x(points.get(0)), y(points.get(0)));
        for (Point point : points.subList(1, points.size())) page.lineTo(x(point), y(point));
    }

    private void pen(Ink ink, LineKind kind) throws IOException {
        String wanted = ink.name() + kind.name();
        if (wanted.equals(strokeState)) return;
        strokeState = wanted;
        colour(ink, true);
        page.setLineWidth((float) (kind.widthIn() * POINTS_PER_INCH));
        float[] dashes = new float[kind.dashesIn().size()];
        for (int i = 0; i < dashes.length; i++)
            dashes[i] = (float) (kind.dashesIn().get(i) * POINTS_PER_INCH);
        page.setLineDashPattern(dashes, 0);
    }

    private void brush(Ink ink) throws IOException {
        if (ink.name().equals(fillState)) return;
        fillState = ink.name();
        colour(ink, false);
    }

    private void colour(Ink ink, boolean stroking) throws IOException {
        float red = ink.red() / 255f;
        float green = ink.green() / 255f;
        float blue = ink.blue() / 255f;
        if (stroking) page.setStrokingColor(red, green, blue);
        else page.setNonStrokingColor(red, green, blue);
    }

    private float x(Point point) {
        return (float) ((point.x() - frame.minX()) * perReal);
    }

    private float y(Point point) {
        return (float) ((point.y() - frame.minY()) * perReal);
    }
}
