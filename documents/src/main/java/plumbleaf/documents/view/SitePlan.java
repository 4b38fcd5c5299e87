package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
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
import plumbleaf.documents.drawing.NorthArrow;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.ScaleBar;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.gate.SwingAxes;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The job from above, north up: runs with their posts, gates with their swing, what must not be dug, what was shot. Where posts come too
 * close on paper for their names, only those of ends, corners and gates are named and no shot is; {@link #part} then draws a piece of the
 * site at a scale where all of them are.
 */
public final class SitePlan {
    /** Posts nearer to one another than this on paper leave no room for a name. */
    private static final double LEAST_PITCH_IN = 0.3;

    private static final Box EVERYWHERE = new Box(-1e9, -1e9, 1e9, 1e9);

    /** Room of the north arrow with its letter, to its length. */
    private static final double NORTH_ROOM = 1.7;

    private static final double POST_DOT_IN = 0.075;

    private final Job job;
    private final Layout layout;
    private final Ground ground;
    private final List<PlacedGate> gates;
    private final List<SlidePlan> slides;
    private final Site site;
    private final Scale scale;
    private final Labels labels;
    private final Box window;
    private final boolean crowded;
    /** What other drawings show closer. */
    private final List<Box> elsewhere;

    private final List<Mark> marks = new ArrayList<>();

    private SitePlan(Site site, Scale scale, Box window, boolean crowded, List<Box> elsewhere) {
        this.site = site;
        this.job = site.job();
        this.layout = site.layout();
        this.ground = site.ground();
        this.gates = site.gates();
        this.slides = site.slides();
        this.scale = scale;
        this.labels = new Labels(scale);
        this.window = window;
        this.crowded = crowded;
        this.elsewhere = List.copyOf(elsewhere);
    }

    /** A piece of the site that has a sheet of its own. */
    public record Piece(Box window, String name) {}

    /** Whether posts come too close together at a scale to be named one by one. */
    public static boolean crowds(Site site, Scale scale) {
        return scale.paper(site.pitchIn()) < LEAST_PITCH_IN;
    }

    public static Drawing of(Site site, Scale scale) {
        return of(site, scale, List.of());
    }

    /** @param pieces drawn as frames with their names, for finding the sheet of each */
    public static Drawing of(Site site, Scale scale, List<Piece> pieces) {
        return new SitePlan(site, scale, EVERYWHERE, crowds(site, scale), List.of()).drawn(pieces);
    }

    /**
     * The whole for where there is little room: the names of ends, corners and gates alone, and the shots that none of the parts shows.
     *
     * @param parts windows of the drawings that show the rest
     */
    public static Drawing overview(Site site, Scale scale, List<Box> parts) {
        return new SitePlan(site, scale, EVERYWHERE, true, parts).drawn(List.of());
    }

    /** North and the scale, for a sheet of pieces. */
    public static Drawing legend(Scale scale, DisplayUnits units) {
        Point middle = new Point(0, 0);
        return Drawing.of(
                "North and scale",
                scale,
                List.of(
                        new NorthArrow(middle, Math.PI / 2, 0.8, Look.note()),
                        ScaleBar.nearly(middle.plus(scale.real(-3.2), scale.real(-0.3)), 2.4, scale, units)));
    }

    /** What lies within a window of the site, with the name of every post; north and scale are the sheet's to show. */
    public static Drawing part(Site site, Scale scale, Box window) {
        return new SitePlan(site, scale, window, crowds(site, scale), List.of()).drawn(List.of());
    }

    private static double angle(Direction direction) {
        return StrictMath.atan2(direction.north(), direction.east());
    }

    private static Point at(PlanPoint place) {
        return Site.at(place);
    }

    private boolean whole() {
        return window.equals(EVERYWHERE);
    }

    private boolean isOverview() {
        return !elsewhere.isEmpty();
    }

    private static Box spot(Point place) {
        return Box.of(place, place);
    }

    private boolean shows(Point place) {
        return window.contains(spot(place));
    }

    private boolean shows(PlanPoint place) {
        return shows(at(place));
    }

    private List<GroundPoint> shots() {
        if (crowded && !isOverview()) return List.of();
        return ground.points().stream()
                .filter(point -> shows(point.point().plan()))
                .filter(point -> elsewhere.stream()
                        .noneMatch(part -> part.contains(spot(at(point.point().plan())))))
                .toList();
    }

    private Drawing drawn(List<Piece> pieces) {
        for (RunLayout run : layout.runs()) keepFree(run);
        for (Piece piece : pieces) keepFree(piece.window());
        for (GroundPoint point : shots())
            labels.keepFree(
                    Box.of(at(point.point().plan()), at(point.point().plan())).grown(scale.real(0.04)));
        for (RunLayout run : layout.runs()) {
            fence(run);
            if (whole()) marks.addAll(LegMarks.of(site, run, scale, labels));
            ends(run, job.run(run.run()));
        }
        DigMarks closed = new DigMarks(site, scale, labels, isOverview());
        for (RunLayout run : layout.runs()) {
            closed.closed(run, this::shows);
            closed.held(run, this::shows);
        }
        marks.addAll(closed.marks());
        Box near = whole() ? site.extents().grown(scale.real(1.0)) : window;
        marks.addAll(PlaceMarks.of(job, near, labels));
        for (PlacedGate gate : gates)
            if (shows(at(gate.axes(), 0, 0))) marks.addAll(GatesOnPlan.swing(site, gate, scale, labels));
        for (SlidePlan slide : slides)
            if (shows(at(slide.at(slide.shape().nose(), Offset.ZERO))))
                marks.addAll(GatesOnPlan.slide(site, slide, scale, labels));
        DigMarks buried = new DigMarks(site, scale, labels, isOverview());
        for (PrivateLine line : job.existing().lines()) if (shows(on(line.run(), line.station()))) buried.line(line);
        for (Plug plug : job.existing().plugs()) if (shows(on(plug.run(), plug.station()))) buried.plug(plug);
        marks.addAll(buried.marks());
        for (Post post : layout.posts()) if (shows(post.at())) post(post);
        for (RunLayout run : layout.runs()) sides(run);
        for (Piece piece : pieces) frame(piece);
        for (Piece piece : pieces) name(piece);
        for (GroundPoint point : shots()) shot(point);
        if (whole()) furniture();
        return Drawing.of("Site plan", scale, marks);
    }

    private void keepFree(RunLayout run) {
        List<PlanPoint> vertices = run.line().line().vertices();
        for (int i = 0; i + 1 < vertices.size(); i++) labels.keepFreeLine(at(vertices.get(i)), at(vertices.get(i + 1)));
        for (PlacedGate gate : gates) {
            SwingAxes axes = gate.axes();
            double reach = gate.gate().leaf().outline().latchEdge().inches();
            Point pin = at(axes, 0, 0);
            labels.keepFree(Box.of(pin, at(axes, reach, reach)).grown(0));
        }
    }

    private static Point at(SwingAxes axes, double alongIn, double sideIn) {
        return at(axes.plan(Offset.inches(alongIn), Offset.inches(sideIn)));
    }

    private PlanPoint on(String run, Length station) {
        return layout.run(run).line().line().pointAt(station);
    }

    /** The fence as a line between posts, broken at gates. */
    private void fence(RunLayout run) {
        PlanLine line = run.line().line();
        for (Bay bay : run.bays()) {
            Point from = at(run.startOf(bay));
            Point to = at(run.endOf(bay));
            if (!shows(from.middle(to))) continue;
            List<Point> path = new ArrayList<>();
            path.add(from);
            for (int i = 1; i < line.legs(); i++) {
                double vertex = line.stationOfVertex(i).inches();
                if (vertex > bay.start().inches() + 0.5 && vertex < bay.end().inches() - 0.5)
                    path.add(at(line.vertex(i)));
            }
            path.add(to);
            marks.add(Stroke.through(path, Look.visible(Layer.FENCE).of(bay.id())));
        }
    }

    private void ends(RunLayout run, Run asked) {
        PlanLine line = run.line().line();
        int last = line.legs();
        EndMarks ends = new EndMarks(scale, labels, site.job().display());
        Point first = at(line.vertex(0));
        Point end = at(line.vertex(last));
        if (shows(first))
            marks.addAll(ends.of(asked.first(), first, angle(line.directions().get(0)) + Math.PI));
        if (shows(end))
            marks.addAll(ends.of(asked.last(), end, angle(line.directions().get(last - 1))));
    }

    private void post(Post post) {
        if (post.role() == PostRole.WALL) return;
        Point at = at(post.at());
        double half = Math.max(post.width().inches() / 2, scale.real(POST_DOT_IN / 2));
        boolean gate = post.role() == PostRole.GATE;
        Look look = Look.visible(Layer.POSTS).of(post.id());
        Box box = Box.of(at, at).grown(half * (gate ? 1.4 : 1));
        if (gate) marks.add(new Fill(box.corners(), look));
        else marks.add(Area.edged(box.corners(), Material.CLEAR, look));
        if (crowded && post.role() == PostRole.LINE) return;
        // The gate says where it is; its posts are named where they are drawn closer.
        if (isOverview() && gate) return;
        double facing = StrictMath.atan2(post.facing().north(), post.facing().east());
        boolean insideLeft = layout.run(post.run()).line().insideIsLeft();
        marks.addAll(labels.beside(
                at,
                post.id(),
                facing + (insideLeft ? -1 : 1) * Math.PI / 2,
                Look.note().of(post.id())));
    }

    /** Which side is which, once for each run: beside its first leg, or beside the middle of what a window shows of it. */
    private void sides(RunLayout run) {
        PlanLine line = run.line().line();
        Point first = at(line.vertex(0));
        Direction leg = line.directions().get(0);
        if (shows(first))
            marks.addAll(labels.beside(
                    first,
                    List.of("run " + run.run(), "station 0"),
                    angle(leg) + Math.PI,
                    Look.note().of(run.run())));
        if (whole()) {
            sides(run, first.shareOf(0.28, at(line.vertex(1))), leg);
            return;
        }
        List<Bay> shown = run.bays().stream()
                .filter(bay -> shows(run.startOf(bay)) && shows(run.endOf(bay)))
                .toList();
        if (shown.isEmpty()) return;
        Offset middle = shown.get(shown.size() / 2).start();
        sides(run, at(line.pointAt(middle)), line.directionAt(middle));
    }

    private void sides(RunLayout run, Point middle, Direction leg) {
        double outside = angle(leg) + (run.line().insideIsLeft() ? -1 : 1) * Math.PI / 2;
        marks.addAll(labels.beside(
                middle.towards(outside, scale.real(isOverview() ? 0.45 : 0.8)),
                "outside",
                outside,
                Look.note().in(Ink.SECOND)));
        marks.addAll(labels.beside(
                middle.towards(outside + Math.PI, scale.real(0.5)),
                "inside",
                outside + Math.PI,
                Look.note().in(Ink.SECOND)));
    }

    private void keepFree(Box frame) {
        List<Point> corners = frame.corners();
        for (int i = 0; i < corners.size(); i++)
            labels.keepFreeLine(corners.get(i), corners.get((i + 1) % corners.size()));
    }

    private void frame(Piece piece) {
        marks.add(Stroke.box(piece.window(), Look.hidden(Layer.SHEET)));
    }

    private void name(Piece piece) {
        marks.addAll(labels.beside(
                piece.window().centre(), piece.name(), -Math.PI / 4, Look.note().in(Ink.SECOND)));
    }

    private void shot(GroundPoint point) {
        Point at = at(point.point().plan());
        double arm = scale.real(0.035);
        Look look = new Look(Layer.SURVEY, LineKind.DIMENSION, Ink.SECOND, point.shot());
        marks.add(Stroke.line(at.plus(-arm, -arm), at.plus(arm, arm), look));
        marks.add(Stroke.line(at.plus(-arm, arm), at.plus(arm, -arm), look));
        String height = Sizes.inches(job.display(), point.point().elevation().inches());
        marks.addAll(labels.beside(at, point.shot() + "  " + height, Math.PI / 2, look));
    }

    /** A corner of the plan that nothing covers, else beside it. */
    private Point northPlace(Box box) {
        double half = scale.real(northIn() * NORTH_ROOM / 2);
        for (double x : List.of(box.minX() + half, box.maxX() - half))
            for (double y : List.of(box.maxY() - half, box.minY() + half)) {
                Box room = Box.of(new Point(x, y), new Point(x, y)).grown(half);
                boolean free = marks.stream()
                        .flatMap(mark -> mark.drawn(scale).stream())
                        .noneMatch(part -> part.extents(scale).grown(0.01).overlaps(room));
                if (free) return new Point(x, y);
            }
        return new Point(box.maxX() + half, box.maxY() - scale.real(0.7));
    }

    private double northIn() {
        return isOverview() ? 0.5 : 0.8;
    }

    private void furniture() {
        Box box = Drawing.of("", scale, marks).frame();
        marks.add(new NorthArrow(northPlace(box), Math.PI / 2, northIn(), Look.note()));
        marks.add(ScaleBar.nearly(
                new Point(box.minX() + scale.real(0.1), box.minY() - scale.real(0.4)), 2.4, scale, job.display()));
        if (shots().isEmpty()) return;
        marks.add(Text.small(
                new Point(box.minX() + scale.real(0.1), box.minY() - scale.real(0.62)),
                "Shots: heights from "
                        + job.ground().benchmark().mark() + ", "
                        + Sizes.inches(
                                job.display(),
                                job.ground().benchmark().elevation().inches())));
    }
}
