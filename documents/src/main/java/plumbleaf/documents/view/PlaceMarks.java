package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Building;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.NearHouse;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.SightTriangle;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/** What the place asks, as lines on the site plan: lot lines with their set-back, sight triangles, buildings with their strip. Only what lies near the fence is drawn. */
final class PlaceMarks {
    private final Job job;
    private final Box near;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Supplier<List<Mark>>> notes = new ArrayList<>();

    private PlaceMarks(Job job, Box near, Labels labels) {
        this.job = job;
        this.near = near;
        this.labels = labels;
    }

    /** @param near what the plan covers, with what may be drawn round it */
    static List<Mark> of(Job job, Box near, Labels labels) {
        PlaceMarks place = new PlaceMarks(job, near, labels);
        for (PropertyLine line : job.rules().propertyLines()) place.lotLine(line);
        for (SightTriangle sight : job.rules().sights()) place.sight(sight);
        for (NearHouse house : job.rules().nearHouse())
            for (Building building : house.buildings()) place.building(building, house.strip());
        // Words find their place once every line is drawn.
        for (Supplier<List<Mark>> note : place.notes) place.marks.addAll(note.get());
        return place.marks;
    }

    private void lotLine(PropertyLine line) {
        Look look = Look.thin(Layer.SURVEY).as(LineKind.PHANTOM);
        String words = line.what()
                + line.certifiedBy().value().map(who -> ", by " + who).orElse(", not certified");
        boolean told = false;
        for (int i = 0; i + 1 < line.points().size(); i++) {
            List<Point> part =
                    clipped(at(line.points().get(i)), at(line.points().get(i + 1)));
            if (part.isEmpty()) continue;
            marks.add(Stroke.line(part.get(0), part.get(1), look));
            labels.keepFreeLine(part.get(0), part.get(1));
            if (told) continue;
            told = true;
            notes.add(() -> labels.beside(
                    part.get(0).shareOf(0.8, part.get(1)),
                    List.of(words, "set-back " + job.display().length(line.setback())),
                    part.get(0).direction(part.get(1)) - Math.PI / 2,
                    Look.note()));
        }
    }

    private void sight(SightTriangle sight) {
        Point apex = new Point(sight.east().inches(), sight.north().inches());
        Point first = leg(apex, sight.first(), sight.firstLeg());
        Point second = leg(apex, sight.second(), sight.secondLeg());
        Look look = Look.hidden(Layer.SURVEY);
        boolean any = stroke(apex, first, look);
        any |= stroke(first, second, look);
        any |= stroke(second, apex, look);
        if (!any) return;
        List<Point> part = clipped(first, second);
        Point where = part.isEmpty() ? apex : part.get(0).middle(part.get(1));
        notes.add(() -> labels.beside(
                where,
                List.of("sight triangle, " + sight.what(), job.display().length(sight.height()) + " high at most"),
                apex.direction(where),
                Look.note()));
    }

    private static Point leg(Point apex, Angle bearing, Length length) {
        return apex.towards(Math.PI / 2 - bearing.radians(), length.inches());
    }

    private void building(Building building, Length strip) {
        Look look = Look.visible(Layer.GROUND);
        List<PlanPoint> corners = building.corners();
        boolean any = false;
        for (int i = 0; i < corners.size() - (corners.size() == 2 ? 1 : 0); i++)
            any |= stroke(at(corners.get(i)), at(corners.get((i + 1) % corners.size())), look);
        if (!any) return;
        List<Point> part = clipped(at(corners.get(0)), at(corners.get(1)));
        if (part.isEmpty()) return;
        notes.add(() -> labels.beside(
                part.get(0).middle(part.get(1)),
                List.of(
                        building.what(),
                        "nothing that burns within " + job.display().length(strip)),
                Math.PI / 2,
                Look.note()));
    }

    private boolean stroke(Point from, Point to, Look look) {
        List<Point> part = clipped(from, to);
        if (part.isEmpty()) return false;
        marks.add(Stroke.line(part.get(0), part.get(1), look));
        labels.keepFreeLine(part.get(0), part.get(1));
        return true;
    }

    private static Point at(PlanPoint place) {
        return new Point(place.xIn(), place.yIn());
    }

    /** The part of a line within the plan, by cutting at each side in turn; empty where none is. */
    private List<Point> clipped(Point from, Point to) {
        double first = 0;
        double last = 1;
        double[] inside = {
            from.x() - near.minX(), near.maxX() - from.x(), from.y() - near.minY(), near.maxY() - from.y()
        };
        double[] gains = {to.x() - from.x(), from.x() - to.x(), to.y() - from.y(), from.y() - to.y()};
        for (int i = 0; i < 4; i++) {
            if (gains[i] == 0 && inside[i] < 0) return List.of();
            if (gains[i] > 0) first = Math.max(first, -inside[i] / gains[i]);
            if (gains[i] < 0) last = Math.min(last, -inside[i] / gains[i]);
        }
        return first < last ? List.of(from.shareOf(first, to), from.shareOf(last, to)) : List.of();
    }
}
