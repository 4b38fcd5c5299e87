package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
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
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PostStretch;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;

/** What a digger must know, on the site plan: stretches where no post may stand or none is dug, buried lines in the uniform colours, old plugs. */
final class DigMarks {
    private static final double BAND_IN = 0.10;

    private final Site site;
    private final Scale scale;
    private final Labels labels;
    /** Whether the kind alone is written, for where another drawing has the rest. */
    private final boolean brief;

    private final List<Mark> marks = new ArrayList<>();

    DigMarks(Site site, Scale scale, Labels labels, boolean brief) {
        this.brief = brief;
        this.site = site;
        this.scale = scale;
        this.labels = labels;
    }

    /** What was drawn so far. */
    List<Mark> marks() {
        return List.copyOf(marks);
    }

    void closed(RunLayout run, Predicate<Point> shows) {
        for (NoDig stretch : site.job().run(run.run()).noDig()) {
            PlanLine line = run.line().line();
            Point from = at(line.pointAt(stretch.from()));
            Point to = at(line.pointAt(stretch.to()));
            if (!shows.test(from.middle(to))) continue;
            double way = from.direction(to) + Math.PI / 2;
            double half = scale.real(BAND_IN);
            List<Point> band = List.of(
                    from.towards(way, half), from.towards(way, -half), to.towards(way, -half), to.towards(way, half));
            Look look = new Look(Layer.UTILITIES, LineKind.THIN, Ink.MUST_FIX, run.run());
            marks.add(Area.edged(band, Material.SHADE, look));
            for (int i = 0; i < 4; i++)
                marks.add(Stroke.line(
                        band.get(0).shareOf(i / 4.0, band.get(3)),
                        band.get(1).shareOf((i + 1) / 4.0, band.get(2)),
                        look));
            marks.addAll(labels.beside(
                    from.middle(to),
                    brief
                            ? List.of("no dig")
                            : List.of(
                                    "no dig: " + stretch.words(site.job().existing()),
                                    "from " + site.job().display().length(stretch.from()) + " to "
                                            + site.job().display().length(stretch.to())),
                    run.line().insideIsLeft() ? way : way + Math.PI,
                    Look.note()));
        }
    }

    /** Where posts are held by concrete that is there, or driven: nobody brings an auger to them. */
    void held(RunLayout run, Predicate<Point> shows) {
        for (PostStretch stretch : site.job().run(run.run()).otherPosts()) {
            String words = stretch.posts()
                    .match(
                            footing -> "",
                            driven -> "posts driven",
                            plate -> "posts on plates",
                            socket -> "posts cored into concrete",
                            wall -> "posts on a wall",
                            existing -> "posts that stand");
            if (!words.isEmpty()) stretch(run, stretch.from(), stretch.to(), words, shows);
        }
        for (Guarded guard : site.job().rules().guards())
            if (guard.at().run().equals(run.run()))
                stretch(
                        run,
                        guard.at().from(),
                        guard.at().to(),
                        "beside a drop of " + site.job().display().length(guard.drop()),
                        shows);
    }

    private void stretch(RunLayout run, Length from, Length to, String words, Predicate<Point> shows) {
        PlanLine line = run.line().line();
        Length last = to.compareTo(line.length()) < 0 ? to : line.length();
        if (last.compareTo(from) <= 0) return;
        Length middle = from.plus(last).times(0.5);
        Point at = at(line.pointAt(middle));
        if (!shows.test(at)) return;
        Direction leg = line.directionAt(middle);
        double way = StrictMath.atan2(leg.north(), leg.east()) + (run.line().insideIsLeft() ? -1 : 1) * Math.PI / 2;
        marks.addAll(labels.beside(
                at,
                brief
                        ? List.of(words)
                        : List.of(
                                words,
                                "from " + site.job().display().length(from) + " to "
                                        + site.job().display().length(last)),
                way,
                Look.note()));
    }

    void line(PrivateLine line) {
        RunLayout run = site.layout().run(line.run());
        PlanLine plan = run.line().line();
        Point at = at(plan.pointAt(line.station()));
        Direction leg = plan.directionAt(line.station());
        double across = StrictMath.atan2(leg.north(), leg.east()) + Math.PI / 2;
        double reach = scale.real(0.5);
        Look look = new Look(Layer.UTILITIES, LineKind.PHANTOM, ink(line.kind()), run.run());
        marks.add(Stroke.line(at.towards(across, reach), at.towards(across, -reach), look));
        double half = line.byHand().inches();
        double along = across - Math.PI / 2;
        for (double sign : List.of(-1.0, 1.0)) {
            Point edge = at.towards(along, sign * half);
            marks.add(Stroke.line(
                    edge.towards(across, reach / 2), edge.towards(across, -reach / 2), look.as(LineKind.HIDDEN)));
        }
        labels.keepFreeLine(at.towards(across, reach), at.towards(across, -reach));
        marks.addAll(labels.beside(
                at.towards(across, reach),
                brief
                        ? List.of(letter(line.kind()))
                        : List.of(
                                letter(line.kind()) + ": " + line.kind(),
                                "hand-dig " + site.job().display().length(line.byHand()) + " each side"),
                across,
                Look.note().in(ink(line.kind()))));
    }

    /** Uniform colours of buried lines by what they carry. */
    private static Ink ink(String kind) {
        String words = kind.toLowerCase(Locale.ROOT);
        if (words.contains("gas") || words.contains("oil")) return Ink.GAS;
        if (words.contains("electric") || words.contains("power") || words.contains("light")) return Ink.ELECTRIC;
        if (words.contains("phone") || words.contains("cable") || words.contains("wire")) return Ink.COMMUNICATION;
        if (words.contains("drip") || words.contains("irrigation") || words.contains("sprinkler")) return Ink.RECLAIMED;
        if (words.contains("sewer") || words.contains("septic") || words.contains("drain")) return Ink.SEWER;
        return Ink.WATER;
    }

    private static String letter(String kind) {
        return switch (ink(kind)) {
            case GAS -> "G";
            case ELECTRIC -> "E";
            case COMMUNICATION -> "C";
            case RECLAIMED -> "I";
            case SEWER -> "S";
            default -> "W";
        };
    }

    void plug(Plug plug) {
        PlanLine line = site.layout().run(plug.run()).line().line();
        Point at = at(line.pointAt(plug.station()));
        Look look = Look.hidden(Layer.UTILITIES);
        marks.add(Arc.circle(at, Math.max(plug.diameter().inches() / 2, scale.real(0.06)), look));
        marks.addAll(labels.beside(at, "old plug", Math.PI / 2, Look.note()));
    }

    private static Point at(PlanPoint place) {
        return Site.at(place);
    }
}
