package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.LinearDimension;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.ArcChord;
import plumbleaf.engine.line.RunLayout;

/** The lengths of a run on the site plan: each leg set off to the outside, each curve with its radius and its chords. */
final class LegMarks {
    private static final double LEG_OFF_IN = 1.1;

    private final Site site;
    private final Scale scale;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();

    private LegMarks(Site site, Scale scale, Labels labels) {
        this.site = site;
        this.scale = scale;
        this.labels = labels;
    }

    static List<Mark> of(Site site, RunLayout run, Scale scale, Labels labels) {
        LegMarks legs = new LegMarks(site, scale, labels);
        legs.legs(run);
        return legs.marks;
    }

    /** Each leg with its length set off to the outside. */
    private void legs(RunLayout run) {
        List<PlanPoint> vertices = run.line().line().vertices();
        for (int i = 0; i + 1 < vertices.size(); i++) {
            Point from = at(vertices.get(i));
            Point to = at(vertices.get(i + 1));
            if (isChord(run, i)) continue;
            Optional<LinearDimension> dimension = dimension(run, i, from, to);
            if (dimension.isEmpty()) {
                length(run, i, from, to);
                continue;
            }
            marks.add(dimension.get());
            labels.keepFreeText(List.of(dimension.get()));
            double way = from.direction(to) + (run.line().insideIsLeft() ? -1 : 1) * Math.PI / 2;
            labels.keepFreeLine(from.towards(way, scale.real(LEG_OFF_IN)), to.towards(way, scale.real(LEG_OFF_IN)));
            for (Point end : List.of(from, to))
                labels.keepFreeLine(end.towards(way, scale.real(0.06)), end.towards(way, scale.real(LEG_OFF_IN)));
        }
        // Notes find their room once every dimension has its own.
        for (int i = 0; i + 1 < vertices.size(); i++)
            if (isChord(run, i)) chord(run, i, at(vertices.get(i)), at(vertices.get(i + 1)));
    }

    private boolean isChord(RunLayout run, int leg) {
        return site.job().run(run.run()).legs().get(leg).chord().value().isPresent();
    }

    /** Set off as usual, farther or nearer where its number would lie over another's; none where there is no room for arrows. */
    private Optional<LinearDimension> dimension(RunLayout run, int leg, Point from, Point to) {
        double side = run.line().insideIsLeft() ? -1 : 1;
        String words = site.job().display().length(run.line().line().lengths().get(leg));
        for (double off : List.of(LEG_OFF_IN, 1.45, 0.75, 1.8, 2.2)) {
            LinearDimension tried = LinearDimension.along(from, to, side * off, words, scale);
            if (labels.isFree(tried)) return Optional.of(tried.of(run.run() + "." + (leg + 1)));
        }
        return Optional.empty();
    }

    /** Only the number, where there is room for it. */
    private void length(RunLayout run, int leg, Point from, Point to) {
        double way = from.direction(to) + (run.line().insideIsLeft() ? -1 : 1) * Math.PI / 2;
        marks.addAll(labels.beside(
                from.middle(to),
                site.job().display().length(run.line().line().lengths().get(leg)),
                way,
                Look.note().of(run.run() + "." + (leg + 1))));
    }

    /** A curve has one note for all its chords, at the middle one. */
    private void chord(RunLayout run, int leg, Point from, Point to) {
        ArcChord is = site.job().run(run.run()).legs().get(leg).chord().value().orElseThrow();
        if (is.index() == 0) curve(run, is, from, to);
        if (is.index() != is.count() / 2) return;
        double outside = from.direction(to) + (run.line().insideIsLeft() ? -1 : 1) * Math.PI / 2;
        marks.addAll(labels.beside(
                from.middle(to),
                List.of(
                        "curve R " + site.job().display().length(is.arc().radius()),
                        "fenced in " + is.count()
                                + (is.count() == 1 ? " chord of " : " chords of ")
                                + site.job()
                                        .display()
                                        .length(run.line().line().lengths().get(leg)),
                        "posts on the curve"),
                outside,
                Look.note().of(run.run())));
    }

    /** The curve itself, thin: its posts stand on it and the fence goes from post to post. */
    private void curve(RunLayout run, ArcChord first, Point from, Point to) {
        double turn = first.arc().left().radians();
        double radius = first.arc().radius().inches();
        double tangent = from.direction(to) - turn / first.count() / 2;
        double toCentre = tangent + Math.signum(turn) * Math.PI / 2;
        Point centre = from.towards(toCentre, radius);
        double start = toCentre + Math.PI;
        marks.add(new Arc(
                centre,
                radius,
                turn > 0 ? start : start + turn,
                Math.abs(turn),
                Look.hidden(Layer.FENCE).as(LineKind.CENTRE).of(run.run())));
    }

    private static Point at(PlanPoint place) {
        return Site.at(place);
    }
}
