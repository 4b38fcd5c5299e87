package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.sag.BentLine;
import plumbleaf.engine.sag.GateSag;

/** How leaf and post give under the leaf's own weight, made large by a factor that is printed with it. From outside. */
public final class DeflectedLeaf {
    private static final double WANTED_PAPER_IN = 0.3;

    private DeflectedLeaf() {}

    public static Drawing of(String gate, GateSag sag, Side hinge, Scale scale) {
        Outside outside = Outside.of(hinge);
        double most = 1e-9;
        for (BentLine line : sag.shape())
            for (BentLine.Point point : line.points())
                most = Math.max(
                        most,
                        StrictMath.hypot(point.away().inches(), point.down().inches()));
        double factor = factor(scale.real(WANTED_PAPER_IN) / most);
        List<Mark> marks = new ArrayList<>();
        for (BentLine line : sag.shape()) {
            List<Point> still = new ArrayList<>();
            List<Point> bent = new ArrayList<>();
            for (BentLine.Point point : line.points()) {
                double r = point.at().r().inches();
                double z = point.at().z().inches();
                still.add(outside.at(r, z));
                bent.add(outside.at(
                        r + factor * point.away().inches(),
                        z - factor * point.down().inches()));
            }
            String of = line.part();
            marks.add(Stroke.through(still, new Look(Layer.MEMBERS, LineKind.HIDDEN, Ink.SECOND, of)));
            marks.add(Stroke.through(bent, new Look(Layer.MEMBERS, LineKind.VISIBLE, Ink.CHALK, of)));
        }
        double low = Drawing.of("", scale, marks).frame().minY() - scale.real(0.12);
        double middle = Drawing.of("", scale, marks).frame().centre().x();
        marks.add(Text.small(new Point(middle, low), "movement drawn " + DecimalText.whole(factor) + " times as large")
                .centred());
        marks.add(Text.small(new Point(middle, low - scale.real(0.16)), "dashed: before it carries its own weight")
                .centred());
        return Drawing.of("Gate " + gate + ", as it gives, " + DecimalText.whole(factor) + " times", scale, marks);
    }

    /** A round factor, not above the wanted one: 1, 2, 5, 10 ... */
    private static double factor(double wanted) {
        double decade = 1;
        while (decade * 10 <= wanted && decade < 1e5) decade *= 10;
        if (decade * 5 <= wanted) return decade * 5;
        return decade * 2 <= wanted ? decade * 2 : decade;
    }
}
