package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.SwingArc;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Clearance;
import plumbleaf.engine.gate.ClearanceMap;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * The swing from above, outside below, shaded by how much room is under the leaf: crossed out where it strikes, hatched where less
 * than an inch is left, clear elsewhere.
 */
public final class SwingPlan {
    /** How finely the arc is kept free of lettering. */
    private static final double CHORD_DEG = 3;

    private static final double TIGHT_IN = 1;

    private SwingPlan() {}

    public static Drawing of(String gate, Swing swing, double leafEndR, DisplayUnits units, Scale scale) {
        return Drawing.of("Gate " + gate + ", swing from above", scale, leafOnly(gate, swing, leafEndR, units, scale));
    }

    /** The marks alone, the pin at nothing: to be set beside those of another leaf. */
    static List<Mark> leafOnly(String gate, Swing swing, double leafEndR, DisplayUnits units, Scale scale) {
        return beside(List.of(), gate, swing, leafEndR, units, scale);
    }

    /** The same, its lettering clear of what is there already, in its own coordinates. */
    static List<Mark> beside(
            List<Box> taken, String gate, Swing swing, double leafEndR, DisplayUnits units, Scale scale) {
        List<Mark> marks = new ArrayList<>();
        Outside outside = Outside.of(swing.hand().hinge());
        double way = swing.hand().swing() == SwingWay.IN ? 1 : -1;
        Point pin = new Point(0, 0);
        ClearanceMap map = swing.map();
        Look strike = new Look(Layer.SWING, LineKind.THIN, Ink.MUST_FIX, gate);
        for (int a = 0; a + 1 < map.angles().size(); a++) {
            for (int r = 0; r + 1 < map.radii().size(); r++) {
                double least = Math.min(
                        Math.min(
                                map.clear().get(a).get(r).inches(),
                                map.clear().get(a + 1).get(r).inches()),
                        Math.min(
                                map.clear().get(a).get(r + 1).inches(),
                                map.clear().get(a + 1).get(r + 1).inches()));
                List<Point> cell = List.of(
                        at(
                                outside,
                                way,
                                map.radii().get(r).inches(),
                                map.angles().get(a).radians()),
                        at(
                                outside,
                                way,
                                map.radii().get(r + 1).inches(),
                                map.angles().get(a).radians()),
                        at(
                                outside,
                                way,
                                map.radii().get(r + 1).inches(),
                                map.angles().get(a + 1).radians()),
                        at(
                                outside,
                                way,
                                map.radii().get(r).inches(),
                                map.angles().get(a + 1).radians()));
                if (least >= TIGHT_IN) continue;
                if (least < 0) {
                    marks.add(Stroke.line(cell.get(0), cell.get(2), strike));
                    marks.add(Stroke.line(cell.get(1), cell.get(3), strike));
                } else {
                    marks.add(Area.plain(cell, Material.SHADE, strike.in(Ink.CAUTION)));
                    marks.add(Stroke.line(
                            cell.get(0), cell.get(2), strike.in(Ink.CAUTION).as(LineKind.DIMENSION)));
                }
            }
        }
        frame(marks, gate, swing, leafEndR, outside, way, pin);
        labels(marks, taken, gate, swing, leafEndR, outside, way, units, scale);
        return marks;
    }

    /** How the leaf as it stands open is marked: it belongs to the gate, and is a thing of its own that can be taken hold of. */
    public static String opened(String gate) {
        return gate + " " + gate + ".open";
    }

    private static Point at(Outside outside, double way, double rIn, double openRad) {
        return new Point(outside.rightward() * rIn * StrictMath.cos(openRad), way * rIn * StrictMath.sin(openRad));
    }

    private static void frame(
            List<Mark> marks, String gate, Swing swing, double leafEndR, Outside outside, double way, Point pin) {
        double closed = outside.alongRad();
        double turn = outside.rightward() * way;
        marks.add(new SwingArc(
                pin,
                leafEndR,
                closed,
                closed + turn * swing.opens().radians(),
                Look.visible(Layer.SWING).as(LineKind.THIN).of(opened(gate))));
        marks.add(Stroke.line(
                pin,
                at(outside, way, leafEndR, 0),
                Look.visible(Layer.GATE).as(LineKind.HEAVY).of(gate)));
        marks.add(Arc.circle(pin, 1.2, Look.visible(Layer.HARDWARE).of(gate)));
        double reach = leafEndR * 0.35;
        Look line = Look.centre(Layer.FENCE);
        marks.add(Stroke.line(at(outside, way, -reach, 0), pin, line));
        marks.add(Stroke.line(at(outside, way, leafEndR, 0), at(outside, way, leafEndR + reach, 0), line));
        if (swing.maxAngle().compareTo(swing.opens()) < 0)
            marks.add(Stroke.line(
                    pin,
                    at(outside, way, leafEndR * 1.05, swing.maxAngle().radians()),
                    new Look(Layer.SWING, LineKind.VISIBLE, Ink.MUST_FIX, gate)));
    }

    private static void labels(
            List<Mark> marks,
            List<Box> taken,
            String gate,
            Swing swing,
            double leafEndR,
            Outside outside,
            double way,
            DisplayUnits units,
            Scale scale) {
        Labels labels = new Labels(scale)
                .keepFreeLine(at(outside, way, -leafEndR * 0.35, 0), at(outside, way, leafEndR * 1.35, 0));
        for (Box box : taken) labels.keepFree(box);
        Point least = at(
                outside,
                way,
                swing.least().atRadius().inches(),
                swing.least().atAngle().radians());
        double opens = swing.opens().radians();
        int chords = (int) Math.max(1, Math.ceil(opens / Math.toRadians(CHORD_DEG)));
        for (int i = 0; i < chords; i++)
            labels.keepFreeLine(
                    at(outside, way, leafEndR, opens * i / chords),
                    at(outside, way, leafEndR, opens * (i + 1) / chords));
        labels.keepFreeLine(at(outside, way, 0, opens), at(outside, way, leafEndR, opens));
        marks.add(Fill.of(diamond(least, scale.real(0.05)), Layer.SWING, Ink.INK));
        marks.addAll(labels.beside(
                least,
                List.of("least room before any drop " + text(swing.least(), units), at(swing.least())),
                way * 0.9,
                Look.note().of(gate)));
        for (double degrees : List.of(0.0, 45.0, 90.0, 135.0, 180.0)) {
            double rad = degrees * Math.PI / 180;
            if (rad > swing.opens().radians() + 1e-9) continue;
            marks.addAll(labels.beside(
                    at(outside, way, leafEndR, rad),
                    DecimalText.upTo(degrees, 0) + "\u00b0",
                    Point.at(0, 0).direction(at(outside, way, leafEndR, rad)),
                    Look.note()));
        }
        if (swing.maxAngle().compareTo(swing.opens()) < 0)
            marks.addAll(labels.beside(
                    at(outside, way, leafEndR * 1.05, swing.maxAngle().radians()),
                    "stops at " + DecimalText.fixed(swing.maxAngle().inDegrees(), 1) + "\u00b0",
                    Point.at(0, 0)
                            .direction(
                                    at(outside, way, leafEndR, swing.maxAngle().radians())),
                    Look.note().in(Ink.MUST_FIX)));
        String hinge = swing.hand().hinge() == Side.LEFT ? "hinges left" : "hinges right";
        marks.addAll(labels.beside(Point.at(0, 0), hinge, -way * Math.PI / 2, Look.note()));
        marks.add(Text.small(
                        new Point(outside.rightward() * leafEndR / 2, Math.min(0, way * leafEndR) - scale.real(0.45)),
                        "outside")
                .centred()
                .bold());
    }

    private static String text(Clearance clearance, DisplayUnits units) {
        double clear = clearance.clear().inches();
        return clear < 0 ? units.length(-clear) + " short" : units.length(clear);
    }

    private static String at(Clearance clearance) {
        return "at " + DecimalText.fixed(clearance.atAngle().inDegrees(), 1) + "\u00b0 open";
    }

    private static List<Point> diamond(Point at, double half) {
        return List.of(at.plus(half, 0), at.plus(0, half), at.plus(-half, 0), at.plus(0, -half));
    }
}
