package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PairSwing;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.web.page.Picture.Handle;
import plumbleaf.web.page.Picture.Told;
import plumbleaf.web.page.Picture.Way;

/**
 * What can be taken hold of in the drawings of a job: gates and posts along their run, corners along their leg, a run by its start, shots up
 * and down and where they lie, on a leaf its rails, its hinges, its latch and the posts it hangs between, and how far it opens.
 */
record Handles(DocumentText text, Design design) {
    private static final double MM = 1 / 25.4;
    private static final double ANY = 1e7;
    private static final double STRAIGHT_DEG = 180;

    /** Deeper than any auger of the trade goes. Judgement. */
    private static final double MOST_DEEP_IN = 120;

    /** How far a gate opens goes by what a hold-back or a wall beside it is set to by eye. Judgement. */
    private static final double OPENS_BY_DEG = 5;

    private static final Way EAST = Way.right(1);
    private static final Way NORTH = Way.UP;

    /** Where a corner post and the corner it stands on count as one place. */
    private static final double SAME_IN = 8;

    /** On an unrolled run. */
    List<Handle> onProfile(RunLayout run) {
        Way right = Way.right(run.line().insideIsLeft() ? 1 : -1);
        List<Handle> handles = new ArrayList<>(along(run, station -> right, id -> id));
        for (int i = 0; i < text.count("ground.shots"); i++) {
            String at = "ground.shots[" + i + "]";
            if (text.value(at + ".run").orElse("").equals(run.run())) height(at).ifPresent(handles::add);
        }
        return handles;
    }

    /** On the plan: the same things, each along its own leg. */
    List<Handle> onPlan() {
        List<Handle> handles = new ArrayList<>();
        for (RunLayout run : design.layout().runs()) {
            PlanLine line = run.line().line();
            AlongRun way = station -> {
                Direction leg = line.directionAt(Offset.inches(station));
                return new Way(leg.east(), leg.north());
            };
            handles.addAll(along(run, way, id -> id + " " + id + "a"));
            handles.addAll(start(run));
            for (int i = 0; i < text.count("ground.shots"); i++)
                if (text.value("ground.shots[" + i + "].run").orElse("").equals(run.run()))
                    handles.addAll(beside(run, i, way));
        }
        for (int i = 0; i < text.count("ground.shots"); i++) handles.addAll(placed("ground.shots[" + i + "]"));
        return handles;
    }

    /** Where a run begins: its first post, with the whole run behind it. */
    private List<Handle> start(RunLayout run) {
        String at = place("runs", run.run());
        Optional<Double> east = length(at + ".start.east");
        Optional<Double> north = length(at + ".start.north");
        if (at.isEmpty() || run.posts().isEmpty() || east.isEmpty() || north.isEmpty()) return List.of();
        String of = run.posts().get(0).id();
        return List.of(
                any(of, at + ".start.east", "Start of " + run.run() + ", east", EAST, east.get()),
                any(of, at + ".start.north", "Start of " + run.run() + ", north", NORTH, north.get()));
    }

    /** A shot on or beside a run: along it by its station or by how far it is from the one before, and off it to its side. */
    private List<Handle> beside(RunLayout run, int index, AlongRun way) {
        String at = "ground.shots[" + index + "]";
        String id = text.value(at + ".id").orElse("");
        Optional<Offset> station = stationOf(id, run);
        if (station.isEmpty()) return List.of();
        Way along = way.at(station.get().inches());
        double left = run.line().insideIsLeft() ? 1 : -1;
        Way in = new Way(-along.dy() * left, along.dx() * left);
        List<Handle> handles = new ArrayList<>();
        length(at + ".station")
                .ifPresent(
                        now -> handles.add(handle(id, at + ".station", "Station of shot " + id, along, now, inch())));
        length(at + ".over")
                .ifPresent(now -> handles.add(handle(id, at + ".over", "Shot " + id + ", over", along, now, inch())));
        length(at + ".in")
                .ifPresent(now -> handles.add(handle(id, at + ".in", "Shot " + id + ", in", in, now, inch())));
        length(at + ".out")
                .ifPresent(now -> handles.add(
                        handle(id, at + ".out", "Shot " + id + ", out", new Way(-in.dx(), -in.dy()), now, inch())));
        return handles;
    }

    /** A shot by east and north. */
    private List<Handle> placed(String at) {
        String id = text.value(at + ".id").orElse("");
        List<Handle> handles = new ArrayList<>();
        length(at + ".east").ifPresent(now -> handles.add(any(id, at + ".east", "Shot " + id + ", east", EAST, now)));
        length(at + ".north")
                .ifPresent(now -> handles.add(any(id, at + ".north", "Shot " + id + ", north", NORTH, now)));
        return handles;
    }

    /** Where the ground has worked out that a shot lies along a run. */
    private Optional<Offset> stationOf(String shot, RunLayout run) {
        return design.ground().points().stream()
                .filter(point -> point.shot().equals(shot))
                .flatMap(point -> point.on().stream())
                .filter(on -> on.run().equals(run.run()))
                .map(GroundPoint.OnRun::station)
                .findFirst();
    }

    /** How a drawing shows the way along a run at a station. */
    private interface AlongRun {
        Way at(double stationIn);
    }

    /** How a drawing marks a gate. */
    private interface GateMark {
        String of(String id);
    }

    private List<Handle> along(RunLayout run, AlongRun way, GateMark mark) {
        List<Handle> handles = new ArrayList<>();
        for (int i = 0; i < text.count("gates"); i++) {
            String at = "gates[" + i + "]";
            if (!text.value(at + ".run").orElse("").equals(run.run())) continue;
            String id = text.value(at + ".id").orElse("");
            length(at + ".station")
                    .ifPresent(station -> handles.add(handle(
                            mark.of(id), at + ".station", "Station of gate " + id, way.at(station), station, inch())));
        }
        String at = place("runs", run.run());
        if (at.isEmpty()) return handles;
        for (Post post : run.posts()) {
            double station = post.station().inches();
            if (post.role() == PostRole.LINE)
                handles.add(handle(
                        post.id(),
                        SetPostText.path(at, post.id()),
                        "Station of post " + post.id(),
                        way.at(station),
                        station,
                        inch()));
            else leg(run, post, at, way).ifPresent(handles::add);
        }
        return handles;
    }

    /** A corner or the far end: it makes the leg before it longer or shorter, where that leg was taped as one length. */
    private Optional<Handle> leg(RunLayout run, Post post, String at, AlongRun way) {
        PlanLine line = run.line().line();
        if (text.count(at + ".legs") != line.legs()) return Optional.empty();
        boolean stands = post.role() == PostRole.CORNER || post.role() == PostRole.END || post.role() == PostRole.WALL;
        for (int vertex = 1; stands && vertex <= line.legs(); vertex++) {
            double station = line.stationOfVertex(vertex).inches();
            if (Math.abs(station - post.station().inches()) > SAME_IN) continue;
            String path = at + ".legs[" + (vertex - 1) + "].length";
            String name = "Length of leg " + run.run() + "." + vertex;
            return length(path).map(now -> handle(post.id(), path, name, way.at(station - 1), now, inch()));
        }
        return Optional.empty();
    }

    /** On the frame of a leaf between its posts. */
    List<Handle> onFrame(GateDesign gate, GateSubject subject) {
        List<Handle> handles = new ArrayList<>();
        Gate asked = gate.asked();
        String at = place("gates", gate.id());
        Leaf leaf = subject.leaf();
        LeafSpec spec = asked.leaf();
        int railIndex = 0;
        for (Member member : leaf.members()) {
            if (member.role() == MemberRole.TOP_RAIL)
                handles.add(up(
                        member.id(),
                        at + ".leaf.infill",
                        "Height of the infill",
                        spec.infill().inches()));
            if (member.role() == MemberRole.BOTTOM_RAIL)
                handles.add(up(
                        member.id(),
                        at + ".leaf.bottomGap",
                        "Gap under the leaf",
                        spec.bottomGap().inches()));
            if (member.role() == MemberRole.MID_RAIL)
                midRail(member, at, spec, leaf, railIndex++).ifPresent(handles::add);
        }
        List<HingePin> pins = leaf.pins();
        if (pins.size() >= 2) {
            handles.add(up(
                    pins.get(0).id(),
                    at + ".hinges.fromBottom",
                    "Lower hinge above the frame's bottom",
                    asked.hinges().fromBottom().inches()));
            handles.add(handle(
                    pins.get(pins.size() - 1).id(),
                    at + ".hinges.fromTop",
                    "Upper hinge below the frame's top",
                    Way.DOWN,
                    asked.hinges().fromTop().inches(),
                    half()));
        }
        handles.add(up(
                leaf.id() + ".latch",
                at + ".latch.height",
                "Latch above ground",
                asked.latch().height().inches()));
        if (!subject.isPair()) {
            int towardsLatch = leaf.hand().hinge() == Side.LEFT ? 1 : -1;
            handles.add(handle(
                    subject.latchPost(),
                    at + ".opening",
                    "Opening of gate " + gate.id(),
                    Way.right(towardsLatch),
                    asked.opening().inches(),
                    half()));
        }
        return handles;
    }

    /** On the swing from above: the leaf as it stands open, about its pin. */
    List<Handle> onSwing(GateDesign gate, GateSubject subject) {
        return List.of(opens(gate, subject, 0));
    }

    /** Both leaves of a pair open as far: either is taken hold of. */
    List<Handle> onPairSwing(GateDesign gate, GateSubject a, GateSubject b) {
        return List.of(opens(gate, a, 0), opens(gate, b, PairSwing.pinsApartIn(a, b)));
    }

    private Handle opens(GateDesign gate, GateSubject subject, double pinX) {
        Hand hand = subject.leaf().hand();
        int rightward = hand.hinge() == Side.LEFT ? 1 : -1;
        int turn = hand.swing() == SwingWay.IN ? rightward : -rightward;
        return new Handle(
                SwingPlan.opened(subject.mark()),
                place("gates", gate.id()) + ".opens",
                "How far gate " + gate.id() + " opens",
                Way.right(rightward).turning(turn, pinX),
                subject.swing().opens().inDegrees(),
                OPENS_BY_DEG,
                OPENS_BY_DEG,
                STRAIGHT_DEG,
                Told.DEGREES);
    }

    /** The bottoms of holes. */
    List<Handle> onHoles(List<PostDesign> posts) {
        List<Handle> handles = new ArrayList<>();
        for (PostDesign post : posts) {
            Dug dug = dug(post);
            handles.add(new Handle(
                    HolePicture.bottom(post),
                    dug.path(),
                    dug.name() + ", at " + post.id(),
                    Way.DOWN,
                    post.depth().inches(),
                    spade(),
                    2 * spade(),
                    MOST_DEEP_IN,
                    told()));
        }
        return handles;
    }

    /** Where the job tells how deep a hole is dug. */
    private record Dug(String path, String name) {}

    /** A gate's footings go down together and so do all the others of a run, but for those that the job has given a depth of their own. */
    private Dug dug(PostDesign designed) {
        Post post = designed.post();
        String gate = post.gate();
        if (!gate.isEmpty()) {
            String own = "builds." + gate + ".latchDepth";
            boolean isLatch = design.gates().stream()
                    .anyMatch(each -> each.id().equals(gate) && each.latchPost().equals(post.id()));
            return isLatch && text.has(own)
                    ? new Dug(own, "Footing " + designed.footingId() + " of gate " + gate)
                    : new Dug("builds." + gate + ".depth", "Footings of gate " + gate);
        }
        List<RunSide> sides = design.job().run(post.run()).sides();
        for (int i = 0; i < sides.size(); i++) {
            if (!sides.get(i).holds(post.station().inches())) continue;
            String own = place("runs", post.run()) + ".sides[" + i + "].depth";
            if (text.has(own)) return new Dug(own, "Holes of run " + post.run() + ", side " + (i + 1));
            break;
        }
        return new Dug("builds." + post.run() + ".depth", "Holes of run " + post.run());
    }

    /** One rail alone, or one of those whose heights were given: rails that share the height evenly have none of their own. */
    private Optional<Handle> midRail(Member member, String at, LeafSpec spec, Leaf leaf, int index) {
        boolean given = index < spec.midRailsAt().size();
        if (!given && (spec.midRails() != 1 || index > 0)) return Optional.empty();
        double bottom = leaf.outline().corners().get(0).z().inches();
        double now = given
                ? spec.midRailsAt().get(index).inches()
                : Math.min(member.from().r().inches(), member.to().r().inches())
                                == member.from().r().inches()
                        ? member.from().z().inches() - bottom
                        : member.to().z().inches() - bottom;
        return Optional.of(
                up(member.id(), at + ".leaf.midRailsAt[" + index + "]", "Mid rail above the frame's bottom", now));
    }

    private Handle up(String of, String path, String name, double now) {
        return handle(of, path, name, Way.UP, now, half());
    }

    private Handle handle(String of, String path, String name, Way way, double now, double step) {
        return new Handle(of, path, name, way, now, step, 0, ANY, told());
    }

    /** Where nothing is the least: coordinates go below it. */
    private Handle any(String of, String path, String name, Way way, double now) {
        return new Handle(of, path, name, way, now, inch(), -ANY, ANY, told());
    }

    /** The height of a shot in the form it was taken in: a larger rod reading is lower ground. */
    private Optional<Handle> height(String at) {
        String id = text.value(at + ".id").orElse("");
        for (Form form : Form.values()) {
            Optional<Double> now = length(at + "." + form.key);
            if (now.isPresent())
                return Optional.of(new Handle(
                        id,
                        at + "." + form.key,
                        form.words + " of shot " + id,
                        form.up ? Way.UP : Way.DOWN,
                        now.get(),
                        quarter(),
                        -ANY,
                        ANY,
                        told()));
        }
        return Optional.empty();
    }

    /** An item of a list by its place: {@code runs[0]}; empty where it is none of the file's own. */
    private String place(String list, String id) {
        for (int i = 0; i < text.count(list); i++)
            if (text.value(list + "[" + i + "].id").orElse("").equals(id)) return list + "[" + i + "]";
        return "";
    }

    private boolean isMetric() {
        return design.job().display() == DisplayUnits.METRIC;
    }

    private Told told() {
        return isMetric() ? Told.MILLIMETRES : Told.FEET_AND_INCHES;
    }

    /** Along a run: an inch, or a centimeter. */
    private double inch() {
        return isMetric() ? 10 * MM : 1;
    }

    /** On a leaf: half an inch, or a centimeter. */
    private double half() {
        return isMetric() ? 10 * MM : 0.5;
    }

    /** Of a hole: half a foot, or a decimeter. */
    private double spade() {
        return isMetric() ? 100 * MM : 6;
    }

    /** Of the ground: a quarter inch, or half a centimeter. */
    private double quarter() {
        return isMetric() ? 5 * MM : 0.25;
    }

    private Optional<Double> length(String path) {
        return text.value(path)
                .flatMap(written -> LengthText.offset(written).value())
                .map(Offset::inches);
    }

    private enum Form {
        ROD("rod", "Rod", false),
        ELEVATION("elevation", "Elevation", true),
        FALLS("falls", "Fall", false),
        RISES("rises", "Rise", true);

        private final String key;
        private final String words;
        private final boolean up;

        Form(String key, String words, boolean up) {
            this.key = key;
            this.words = words;
            this.up = up;
        }
    }
}
