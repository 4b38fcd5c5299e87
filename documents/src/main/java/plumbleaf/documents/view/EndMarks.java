package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.quantity.DisplayUnits;

/** What a run ends against, on the site plan: a wall, or a fence that is not ours. */
final class EndMarks {
    private final Scale scale;
    private final Labels labels;
    private final DisplayUnits units;

    EndMarks(Scale scale, Labels labels, DisplayUnits units) {
        this.scale = scale;
        this.labels = labels;
        this.units = units;
    }

    /** @param away direction in which the run would go on, in radians */
    List<Mark> of(RunEnd end, Point at, double away) {
        return end.match(
                free -> List.of(), wall -> wall(at, away), joins -> List.of(), theirs -> neighbor(theirs, at, away));
    }

    private List<Mark> wall(Point at, double away) {
        double half = scale.real(0.45);
        double thick = scale.real(0.14);
        Point left = at.towards(away + Math.PI / 2, half);
        Point right = at.towards(away - Math.PI / 2, half);
        List<Point> corners = List.of(left, right, right.towards(away, thick), left.towards(away, thick));
        List<Mark> marks = new ArrayList<>();
        marks.add(Area.edged(corners, Material.CONCRETE, Look.visible(Layer.GROUND)));
        labels.keepFree(Box.around(corners));
        marks.addAll(labels.beside(at.towards(away, thick), "wall", away, Look.note()));
        return marks;
    }

    /** Dashed: it stands there, and nothing of ours hangs on it. */
    private List<Mark> neighbor(RunEnd.Neighbour theirs, Point at, double away) {
        Point far = at.towards(away, scale.real(0.55));
        List<Mark> marks = new ArrayList<>();
        marks.add(Stroke.line(at.towards(away, scale.real(0.08)), far, Look.hidden(Layer.FENCE)));
        labels.keepFreeLine(at, far);
        marks.addAll(labels.beside(far, words(theirs, units), away, Look.note()));
        return marks;
    }

    /** Whose it is and how high, as plan and profile say it. */
    static List<String> words(RunEnd.Neighbour theirs, DisplayUnits units) {
        List<String> words = new ArrayList<>();
        words.add("not ours" + (theirs.fence().isEmpty() ? "" : ": " + theirs.fence()));
        theirs.height().value().ifPresent(high -> words.add(units.length(high) + " high"));
        return words;
    }
}
