package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.NorthArrow;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.ScaleBar;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;

/** What is to be painted white before the locators come: the strip along each run that will be dug in, its length, every hole. */
public final class WhiteLines {
    /** Half of the strip to be marked: what a tolerance zone and a hole need on each side. Common practice, no source. */
    public static final double HALF_STRIP_IN = 36;

    private final Job job;
    private final List<RunLayout> runs;
    private final Scale scale;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();

    private WhiteLines(Job job, List<RunLayout> runs, Scale scale) {
        this.job = job;
        this.runs = runs;
        this.scale = scale;
        this.labels = new Labels(scale);
    }

    public static Drawing of(Job job, List<RunLayout> runs, Scale scale) {
        return new WhiteLines(job, runs, scale).drawn();
    }

    private static Point at(PlanPoint place) {
        return new Point(place.xIn(), place.yIn());
    }

    private Drawing drawn() {
        for (RunLayout run : runs) strip(run);
        for (RunLayout run : runs) lengths(run);
        for (RunLayout run : runs) for (Post post : run.posts()) hole(post);
        for (PrivateLine line : job.existing().lines()) buried(line);
        for (RunLayout run : runs) ends(run);
        furniture();
        return Drawing.of("White lines for the locate request", scale, marks);
    }

    /** The strip as two dashed lines beside each leg and one across each end. */
    private void strip(RunLayout run) {
        List<PlanPoint> vertices = run.line().line().vertices();
        Look look = Look.hidden(Layer.GROUND).as(LineKind.HIDDEN);
        for (int i = 0; i + 1 < vertices.size(); i++) {
            Point from = at(vertices.get(i));
            Point to = at(vertices.get(i + 1));
            double square = from.direction(to) + Math.PI / 2;
            marks.add(Stroke.line(from, to, Look.centre(Layer.FENCE)));
            labels.keepFreeLine(from, to);
            for (double side : new double[] {HALF_STRIP_IN, -HALF_STRIP_IN}) {
                Point start = from.towards(square, side);
                Point end = to.towards(square, side);
                marks.add(Stroke.line(start, end, look));
                labels.keepFreeLine(start, end);
            }
            if (i == 0) across(from, square, look);
            if (i + 2 == vertices.size()) across(to, square, look);
        }
    }

    private void across(Point at, double square, Look look) {
        marks.add(Stroke.line(at.towards(square, HALF_STRIP_IN), at.towards(square, -HALF_STRIP_IN), look));
    }

    /** Beside the middle of each leg, outside the strip; a curve says its chords nowhere, the sketch shows them. */
    private void lengths(RunLayout run) {
        PlanLine line = run.line().line();
        List<PlanPoint> vertices = line.vertices();
        double out = run.line().insideIsLeft() ? -1 : 1;
        for (int i = 0; i + 1 < vertices.size(); i++) {
            if (job.run(run.run()).legs().get(i).chord().value().isPresent()) continue;
            Point from = at(vertices.get(i));
            Point to = at(vertices.get(i + 1));
            double way = from.direction(to) + out * Math.PI / 2;
            marks.addAll(labels.beside(
                    from.middle(to).towards(way, HALF_STRIP_IN),
                    job.display().length(line.lengths().get(i)),
                    way,
                    Look.note().of(run.run() + "." + (i + 1))));
        }
    }

    private void hole(Post post) {
        if (post.role() == PostRole.WALL) return;
        double radius = Math.max(post.hole().inches() / 2, scale.real(0.035));
        marks.add(Arc.circle(at(post.at()), radius, Look.visible(Layer.FOOTINGS).of(post.id())));
    }

    private void buried(PrivateLine line) {
        RunLayout run = runs.stream()
                .filter(each -> each.run().equals(line.run()))
                .findFirst()
                .orElseThrow();
        PlanLine plan = run.line().line();
        Point at = at(plan.pointAt(line.station()));
        double across = StrictMath.atan2(
                        plan.directionAt(line.station()).north(),
                        plan.directionAt(line.station()).east())
                + Math.PI / 2;
        double reach = HALF_STRIP_IN + scale.real(0.25);
        marks.add(Stroke.line(
                at.towards(across, reach),
                at.towards(across, -reach),
                new Look(Layer.UTILITIES, LineKind.PHANTOM, Ink.INK, run.run())));
        labels.keepFreeLine(at.towards(across, reach), at.towards(across, -reach));
        marks.addAll(labels.beside(at.towards(across, reach), "owner's own: " + line.kind(), across, Look.note()));
    }

    private void ends(RunLayout run) {
        PlanLine line = run.line().line();
        Point start = at(line.vertex(0));
        double away = at(line.vertex(1)).direction(start);
        marks.addAll(labels.beside(
                start, List.of("run " + run.run(), "starts"), away, Look.note().of(run.run())));
    }

    private void furniture() {
        Drawing so = Drawing.of("", scale, marks);
        marks.add(new NorthArrow(
                new Point(so.frame().maxX() + scale.real(0.35), so.frame().maxY() - scale.real(0.65)),
                Math.PI / 2,
                0.7,
                Look.note()));
        marks.add(ScaleBar.nearly(
                new Point(so.frame().minX() + scale.real(0.15), so.frame().minY() - scale.real(0.3)),
                1.8,
                scale,
                job.display()));
    }
}
