package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Spread;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Offset;

/**
 * A run unrolled flat and seen from outside, the fence on its ground, at one scale both ways. Below it, under each post, its running
 * station, the ground, its top and its hole.
 */
public final class RunProfile {
    private static final double BEYOND_IN = 14;
    private static final double ROW_IN = 0.185;
    private static final double FAR_IN = 1e8;

    /** What stands on the edge of a strip is in both. */
    private static final double EDGE_IN = 0.5;

    /** Half a post: a strip that begins or ends nearer to the run's end shows the whole of it. */
    private static final double WHOLE_IN = 30;

    private final Strip strip;
    private final RunLayout run;
    private final Profile profile;
    private final List<PostDetail> posts;
    private final List<PlacedGate> gates;
    private final List<SlideOnProfile> slides;
    private final List<StationNote> notes;
    private final DisplayUnits units;
    private final Scale scale;
    private final double fromIn;
    private final double toIn;
    private final int rightward;
    private final List<Mark> marks = new ArrayList<>();

    private double leafTopIn = Double.NEGATIVE_INFINITY;

    private RunProfile(Strip strip, DisplayUnits units, Scale scale) {
        this.strip = strip;
        this.run = strip.run();
        this.profile = strip.profile();
        this.fromIn = strip.from().inches();
        this.toIn = strip.to().inches();
        this.posts = strip.shownPosts();
        this.gates = strip.gates();
        this.slides = strip.shownSlides();
        this.notes = strip.shownNotes();
        this.units = units;
        this.scale = scale;
        this.rightward = run.line().insideIsLeft() ? 1 : -1;
    }

    /**
     * A stretch of a run.
     *
     * @param posts of the run, all of them
     * @param gates on the run
     * @param slides on the run
     * @param notes about the run
     */
    public record Strip(
            RunLayout run,
            Profile profile,
            List<PostDetail> posts,
            List<PlacedGate> gates,
            List<SlideOnProfile> slides,
            List<StationNote> notes,
            Offset from,
            Offset to) {
        public Strip {
            posts = List.copyOf(posts);
            gates = List.copyOf(gates);
            slides = List.copyOf(slides);
            notes = List.copyOf(notes);
        }

        /** Whether a place of the run is in it, or on its edge. */
        public boolean shows(Offset station) {
            return station.inches() > from.inches() - EDGE_IN && station.inches() < to.inches() + EDGE_IN;
        }

        /** The ground that is drawn: that of the stretch, and a little beyond both its ends. */
        public List<ProfilePoint> ground() {
            return profile.between(Offset.inches(from.inches() - BEYOND_IN), Offset.inches(to.inches() + BEYOND_IN));
        }

        public List<PostDetail> shownPosts() {
            return posts.stream().filter(post -> shows(post.post().station())).toList();
        }

        /** The bays of which both ends are in it. */
        public List<Bay> shownBays() {
            return run.bays().stream()
                    .filter(bay -> shows(bay.start()) && shows(bay.end()))
                    .toList();
        }

        /** The gates of which the pin or the middle is in it: their leaf is drawn there, or their name stands there. */
        public List<PlacedGate> shownGates() {
            return gates.stream()
                    .filter(gate -> shows(Offset.inches(gate.pinStationIn())) || shows(gate.middle()))
                    .toList();
        }

        public List<SlideOnProfile> shownSlides() {
            return slides.stream()
                    .filter(slide -> slide.middleStationIn() > from.inches() && slide.middleStationIn() < to.inches())
                    .toList();
        }

        public List<StationNote> shownNotes() {
            return notes.stream()
                    .filter(note -> note.to().inches() > from.inches() - EDGE_IN
                            && note.from().inches() < to.inches() + EDGE_IN)
                    .toList();
        }
    }

    public static Drawing of(Strip strip, DisplayUnits units, Scale scale) {
        return new RunProfile(strip, units, scale).drawn();
    }

    private double x(double stationIn) {
        return rightward * stationIn;
    }

    private Point at(double stationIn, double elevationIn) {
        return new Point(x(stationIn), elevationIn);
    }

    private Drawing drawn() {
        ground();
        for (PostDetail post : posts) post(post);
        for (Bay bay : strip.shownBays()) bay(bay);
        for (PlacedGate gate : gates) gate(gate);
        for (SlideOnProfile slide : slides) addLeaf(slide.marks(this::at));
        marks.addAll(ProfileWords.over(strip, slides, notes, units, scale, highest()));
        double below = lowest() - scale.real(0.14);
        shots();
        band(below);
        return Drawing.of("Profile of run " + run.run() + part() + ", from outside", scale, marks);
    }

    /** From which post to which, where it is not the whole run; empty where it is. */
    private String part() {
        boolean whole = fromIn < WHOLE_IN && toIn > run.line().line().length().inches() - WHOLE_IN;
        if (whole || posts.size() < 2) return "";
        return ", " + posts.get(0).post().id() + " to "
                + posts.get(posts.size() - 1).post().id();
    }

    private void ground() {
        List<Point> surface = new ArrayList<>();
        for (ProfilePoint point : strip.ground())
            surface.add(at(point.station().inches(), point.elevation().inches()));
        if (rightward < 0) java.util.Collections.reverse(surface);
        marks.addAll(GroundLine.along(surface, scale.real(0.14)));
    }

    private double groundAt(double stationIn) {
        return profile.elevationAt(Offset.inches(stationIn)).inches();
    }

    private double lowest() {
        double low = 1e9;
        for (PostDetail post : posts)
            low = Math.min(low, post.post().grade().inches() - post.depth().inches());
        for (double s : List.of(fromIn, toIn)) low = Math.min(low, groundAt(s) - scale.real(0.2));
        return low;
    }

    private void post(PostDetail detail) {
        if (detail.post().role() == PostRole.WALL) {
            wall(detail);
            return;
        }
        double station = detail.post().station().inches();
        double grade = detail.post().grade().inches();
        double half = detail.post().width().inches() / 2;
        String id = detail.post().id();
        if (detail.isDug()) {
            double hole = detail.hole().inches() / 2;
            marks.add(Area.edged(
                    Box.of(at(station - hole, grade - detail.depth().inches()), at(station + hole, grade))
                            .corners(),
                    Material.CONCRETE,
                    Look.thin(Layer.FOOTINGS).of("F" + id.substring(1))));
            double foot = detail.post().top().inches() - detail.length().inches();
            for (double side : List.of(-half, half))
                marks.add(Stroke.line(
                        at(station + side, grade),
                        at(station + side, Math.max(foot, grade - detail.depth().inches())),
                        Look.hidden(Layer.POSTS).of(id)));
        } else {
            marks.addAll(HeldOnProfile.of(detail, this::at));
        }
        marks.add(Area.edged(
                Box.of(
                                at(station - half, grade),
                                at(station + half, detail.post().top().inches()))
                        .corners(),
                Material.STEEL_FACE,
                Look.visible(Layer.POSTS).as(LineKind.THIN).of(id)));
    }

    private void wall(PostDetail detail) {
        double station = detail.post().station().inches();
        double away = station > (fromIn + toIn) / 2 ? 1 : -1;
        double grade = groundAt(station);
        // Drawn no higher than leaves the words over the bays free.
        double top = Math.min(detail.post().top().inches() + 8, highest() + scale.real(0.12));
        Box stone = Box.of(at(station, grade - scale.real(0.1)), at(station + away * 10, top));
        marks.add(Area.edged(
                stone.corners(),
                Material.CONCRETE,
                Look.visible(Layer.GROUND).of(detail.post().id())));
    }

    private void bay(Bay bay) {
        marks.addAll(BayFace.of(bay, run.style(), this::at));
    }

    private void gate(PlacedGate placed) {
        double pin = placed.pinStationIn();
        if (pin < fromIn || pin > toIn) return;
        double dy = placed.gate().pinElevation().inches();
        addLeaf(Shifted.by(GateElevation.leafOnly(placed.gate(), scale), x(pin), dy, scale));
    }

    /** A leaf may rise over its posts: its words stand over its crest. */
    private void addLeaf(List<Mark> leaf) {
        for (Mark mark : leaf)
            for (Primitive part : mark.drawn(scale))
                leafTopIn = Math.max(leafTopIn, part.extents(scale).maxY());
        marks.addAll(leaf);
    }

    private double highest() {
        double high = -1e9;
        for (PostDetail post : posts) high = Math.max(high, post.post().top().inches());
        return Math.max(high + run.style().map(BayFace::over).orElse(0.0), leafTopIn);
    }

    private void shots() {
        Labels labels = new Labels(scale).keepFreeText(marks);
        // The band of numbers comes below all of this.
        labels.keepFree(new Box(-FAR_IN, -FAR_IN, FAR_IN, lowest() - scale.real(0.42)));
        for (PostDetail post : posts) {
            double half = Math.max(post.hole().inches(), post.post().width().inches()) / 2;
            labels.keepFree(Box.of(
                    at(
                            post.post().station().inches() - half,
                            post.post().grade().inches() - post.depth().inches()),
                    at(post.post().station().inches() + half, post.post().top().inches())));
            double foot = post.post().grade().inches() - post.depth().inches();
            labels.keepFreeLine(
                    at(post.post().station().inches(), foot),
                    at(post.post().station().inches(), lowest() - scale.real(0.42)));
        }
        for (ProfilePoint point : profile.points()) {
            double station = point.station().inches();
            if (station < fromIn - BEYOND_IN || station > toIn + BEYOND_IN) continue;
            Point at = at(station, point.elevation().inches());
            double half = scale.real(0.04);
            Look look = new Look(Layer.SURVEY, LineKind.THIN, Ink.INK, point.shot());
            marks.add(Stroke.outline(List.of(at, at.plus(half, -1.8 * half), at.plus(-half, -1.8 * half)), look));
            marks.addAll(labels.beside(at.plus(0, -scale.real(0.16)), point.shot(), -Math.PI / 2, look));
        }
        for (StationNote note : notes)
            if (note.low() && strip.shows(note.from()))
                marks.addAll(labels.beside(
                        at(note.from().inches(), groundAt(note.from().inches())).plus(0, -scale.real(0.36)),
                        note.words(),
                        -Math.PI / 2,
                        Look.note().in(Ink.WATER)));
    }

    private String hole(PostDetail post) {
        return Sizes.inches(units, post.hole().inches()) + " x "
                + Sizes.inches(units, post.depth().inches());
    }

    private void band(double topY) {
        List<PostDetail> shown = new ArrayList<>(posts);
        shown.sort(java.util.Comparator.comparingDouble(
                post -> x(post.post().station().inches())));
        List<List<String>> columns = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        List<Double> wanted = new ArrayList<>();
        for (PostDetail post : shown) {
            List<String> column = List.of(
                    post.post().id(),
                    units.length(post.post().station()),
                    Sizes.inches(units, post.post().grade().inches()),
                    Sizes.inches(units, post.post().top().inches()),
                    post.isDug() ? hole(post) : HeldOnProfile.words(post.post().support(), units));
            columns.add(column);
            double wide = 0.3;
            for (String text : column) wide = Math.max(wide, Lettering.width(text, Text.SMALL, Text.Weight.SEMIBOLD));
            widths.add(scale.real(wide));
            wanted.add(x(post.post().station().inches()));
        }
        List<Double> places = Spread.apart(wanted, widths, scale.real(0.12));
        List<String> titles = List.of("post", "station", "ground", "top of post", "hole");
        double left = Math.min(x(fromIn), x(toIn)) - scale.real(0.25);
        if (!places.isEmpty()) left = Math.min(left, places.get(0) - widths.get(0) / 2 - scale.real(0.2));
        double right = Math.max(x(fromIn), x(toIn)) + scale.real(0.3);
        if (!places.isEmpty())
            right = Math.max(
                    right, places.get(places.size() - 1) + widths.get(widths.size() - 1) / 2 + scale.real(0.1));
        double first = topY - scale.real(0.30);
        for (int row = 0; row < titles.size(); row++) {
            double y = first - scale.real(row * ROW_IN);
            marks.add(Text.small(new Point(left, y), titles.get(row))
                    .anchored(Text.Across.END, Text.Up.MIDDLE)
                    .with(Look.note().in(Ink.SECOND)));
            marks.add(Stroke.line(
                    new Point(left - scale.real(0.9), y - scale.real(ROW_IN / 2)),
                    new Point(right, y - scale.real(ROW_IN / 2)),
                    new Look(Layer.NOTES, LineKind.DIMENSION, Ink.HAIR, "")));
        }
        for (int i = 0; i < shown.size(); i++) {
            PostDetail post = shown.get(i);
            Look look = Look.note().of(post.post().id());
            double foot = post.post().grade().inches() - post.depth().inches();
            marks.add(Stroke.through(
                    List.of(
                            new Point(wanted.get(i), Math.min(foot, topY + scale.real(0.3)) - scale.real(0.05)),
                            new Point(wanted.get(i), topY),
                            new Point(places.get(i), topY - scale.real(0.12)),
                            new Point(places.get(i), topY - scale.real(0.19))),
                    look.as(LineKind.DIMENSION)));
            for (int row = 0; row < titles.size(); row++) {
                Text text = Text.small(
                                new Point(places.get(i), first - scale.real(row * ROW_IN)),
                                columns.get(i).get(row))
                        .centred()
                        .with(look);
                marks.add(row == 0 ? text.bold() : text);
            }
        }
    }
}
