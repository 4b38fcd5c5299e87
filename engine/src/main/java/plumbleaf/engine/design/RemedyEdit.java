package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunBuild;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.QuantityText;
import plumbleaf.engine.quantity.Slope;

/** Applies the edit of a remedy to a job in hand, as one press in a screen would to its file. */
final class RemedyEdit {
    private static final Pattern GATE = Pattern.compile("gates\\[([^]]+)]\\.([A-Za-z.]+)=(.*)");
    private static final Pattern RUN = Pattern.compile("runs\\[([^]]+)]\\.([A-Za-z]+)=(.*)");
    private static final Pattern HELD =
            Pattern.compile("runs\\[([^]]+)]\\.((?:posts|otherPosts\\[\\d+])\\.support[a-z.]*)=(.*)");
    private static final Pattern PLUG = Pattern.compile("existing\\.plugs\\[(\\d{1,6})]\\.fate=pull");
    private static final Pattern FENCE = Pattern.compile("existing\\.fences\\[(\\d{1,6})]\\.plugs=pull");
    private static final Pattern BUILD = Pattern.compile("builds\\.([^.]+)\\.([A-Za-z]+)=(.*)");

    private RemedyEdit() {}

    /** The job with the edit made, or with each of several; empty where this kind of edit is not priced. */
    static Optional<Job> on(Job job, String edits) {
        Optional<Job> made = Optional.of(job);
        for (String edit : List.of(edits.split(Remedy.AND_THEN, -1))) made = made.flatMap(before -> one(before, edit));
        return made;
    }

    private static Optional<Job> one(Job job, String edit) {
        Matcher gate = GATE.matcher(edit);
        if (gate.matches()) return onGate(job, gate.group(1), gate.group(2), gate.group(3));
        Matcher run = RUN.matcher(edit);
        if (run.matches()) return ofRun(job, run.group(1), each -> edited(each, run.group(2), run.group(3)));
        Matcher held = HELD.matcher(edit);
        if (held.matches()) return ofRun(job, held.group(1), each -> HeldEdit.on(each, held.group(2), held.group(3)));
        Matcher plug = PLUG.matcher(edit);
        if (plug.matches())
            return Optional.of(job.withExisting(job.existing().withPlugPulled(Integer.parseInt(plug.group(1)))));
        Matcher fence = FENCE.matcher(edit);
        if (fence.matches())
            return Optional.of(job.withExisting(job.existing().withPlugsPulled(Integer.parseInt(fence.group(1)))));
        Matcher build = BUILD.matcher(edit);
        return build.matches() ? onBuild(job, build.group(1), build.group(2), build.group(3)) : Optional.empty();
    }

    private static Optional<Job> onGate(Job job, String id, String key, String value) {
        List<Gate> gates = new ArrayList<>();
        boolean made = false;
        for (Gate gate : job.gates()) {
            Optional<Gate> edited = gate.id().equals(id) ? edited(gate, key, value) : Optional.empty();
            made = made || edited.isPresent();
            gates.add(edited.orElse(gate));
        }
        return made ? Optional.of(job.withGates(gates)) : Optional.empty();
    }

    private static Optional<Gate> edited(Gate gate, String key, String value) {
        if (key.startsWith("meeting.")) return meeting(gate, key.substring("meeting.".length()), value);
        return switch (key) {
            case "kind" -> kind(gate, value);
            case "slides" -> slides(gate, value);
            case "slide.tail" ->
                LengthText.length(value).value().flatMap(tail -> slid(gate, spec -> spec.withTail(tail)));
            case "holdOpen" -> value.equals("cane-bolt") ? heldOpen(gate) : slid(gate, spec -> spec);
            case "split" -> split(gate, value);
            case "hinge", "swing", "opens" -> swing(gate, key, value).map(gate::withKind);
            case "station" -> LengthText.length(value).value().map(gate::withStation);
            case "leaf.bottomGap" ->
                LengthText.length(value)
                        .value()
                        .map(gap -> gate.withLeaf(gate.leaf().withBottomGap(gap)));
            case "leaf.infill" ->
                LengthText.length(value)
                        .value()
                        .map(high -> gate.withLeaf(gate.leaf().withInfill(high)));
            case "leaf.shape", "leaf.shape.top", "leaf.shape.bottom" ->
                shape(gate.leaf().shape(), key, value)
                        .map(shape -> gate.withLeaf(gate.leaf().withShape(shape)));
            case "regrade" -> Optional.of(gate.withGround(gate.ground().withRegrade(value.equals("true"))));
            case "landing" -> Optional.of(gate.withGround(gate.ground().withLanding(value.equals("true"))));
            case "setBack" ->
                LengthText.length(value)
                        .value()
                        .map(back -> gate.withGround(gate.ground().withSetBack(back)));
            case "hinges.closer" -> Optional.of(gate.withHinges(gate.hinges().withCloser(value.equals("true"))));
            case "hinges.model" -> Optional.of(gate.withHinges(gate.hinges().withModel(value)));
            default -> Optional.empty();
        };
    }

    /** A sloped leaf is said word by word: its kind, then its top, then its bottom. */
    private static Optional<LeafShape> shape(LeafShape now, String key, String value) {
        if (value.equals("square")) return Optional.of(new LeafShape.Square());
        if (value.equals("sloped")) return Optional.of(new LeafShape.Sloped(Slope.ZERO, Slope.ZERO));
        Optional<Slope> slope = QuantityText.slope(value).value();
        return now.match(
                square -> Optional.empty(),
                raked -> Optional.empty(),
                sloped -> slope.map(is -> key.endsWith("top")
                        ? new LeafShape.Sloped(is, sloped.bottom())
                        : new LeafShape.Sloped(sloped.top(), is)));
    }

    private static Optional<Gate> kind(Gate gate, String value) {
        return switch (value) {
            case "pair" -> pair(gate);
            case "slide" -> Optional.of(gate.withKind(new GateKind.Slide(Side.LEFT, SlideSpec.usual(gate.opening()))));
            default -> Optional.empty();
        };
    }

    /** Kept open by a rod into the ground at the latch stile. */
    private static Optional<Gate> heldOpen(Gate gate) {
        HoldOpen rod = new HoldOpen.CaneBolt();
        return gate.kind()
                .match(
                        swing -> Optional.of(
                                gate.withKind(new GateKind.Swing(swing.hinge(), swing.swing(), swing.opens(), rod))),
                        pair -> Optional.of(gate.withKind(new GateKind.Pair(
                                pair.split(), pair.active(), pair.swing(), pair.opens(), rod, pair.meeting()))),
                        slide -> Optional.empty(),
                        flagged -> Optional.empty());
    }

    private static Optional<Gate> slides(Gate gate, String value) {
        Side side = value.equals("left") ? Side.LEFT : Side.RIGHT;
        return ofSlide(gate, slide -> new GateKind.Slide(side, slide.spec()));
    }

    private static Optional<Gate> slid(Gate gate, UnaryOperator<SlideSpec> change) {
        return ofSlide(gate, slide -> new GateKind.Slide(slide.opensTo(), change.apply(slide.spec())));
    }

    private static Optional<Gate> ofSlide(Gate gate, UnaryOperator<GateKind.Slide> change) {
        return gate.kind()
                .match(
                        swing -> Optional.empty(),
                        pair -> Optional.empty(),
                        slide -> Optional.of(gate.withKind(change.apply(slide))),
                        flagged -> Optional.empty());
    }

    /** The gate as a pair that swings and is held open as it was, with what most yards fit where its leaves meet. */
    private static Optional<Gate> pair(Gate gate) {
        return gate.kind()
                .match(
                        swing -> Optional.of(gate.withKind(new GateKind.Pair(
                                0.5, Side.RIGHT, swing.swing(), swing.opens(), swing.holdOpen(), Meeting.usual()))),
                        pair -> Optional.of(gate),
                        slide -> Optional.empty(),
                        flagged -> Optional.empty());
    }

    private static Optional<Gate> split(Gate gate, String value) {
        return QuantityText.share(value)
                .value()
                .flatMap(share -> ofPair(
                        gate,
                        pair -> new GateKind.Pair(
                                share, pair.active(), pair.swing(), pair.opens(), pair.holdOpen(), pair.meeting())));
    }

    private static Optional<Gate> meeting(Gate gate, String key, String value) {
        return switch (key) {
            case "rod" -> met(gate, meeting -> meeting.withRod(value));
            case "rods" -> met(gate, meeting -> meeting.withRods(value.equals("2") ? 2 : 1));
            case "topKeeper" -> met(gate, meeting -> meeting.withTopKeeper(value.equals("true")));
            case "sleeveAbove" ->
                LengthText.length(value).value().flatMap(up -> met(gate, meeting -> meeting.withSleeveAbove(up)));
            case "sleeveDepth" ->
                LengthText.length(value).value().flatMap(deep -> met(gate, meeting -> meeting.withSleeveDepth(deep)));
            case "stop" ->
                LengthText.length(value).value().flatMap(high -> met(gate, meeting -> meeting.withStop(high)));
            default -> Optional.empty();
        };
    }

    private static Optional<Gate> met(Gate gate, UnaryOperator<Meeting> change) {
        return ofPair(
                gate,
                pair -> new GateKind.Pair(
                        pair.split(),
                        pair.active(),
                        pair.swing(),
                        pair.opens(),
                        pair.holdOpen(),
                        change.apply(pair.meeting())));
    }

    private static Optional<Gate> ofPair(Gate gate, UnaryOperator<GateKind.Pair> change) {
        return gate.kind()
                .match(
                        swing -> Optional.empty(),
                        pair -> Optional.of(gate.withKind(change.apply(pair))),
                        slide -> Optional.empty(),
                        flagged -> Optional.empty());
    }

    private static Optional<GateKind> swing(Gate gate, String key, String value) {
        return gate.kind()
                .match(
                        swing -> switch (key) {
                            case "hinge" ->
                                Optional.of(new GateKind.Swing(
                                        Stated.of(value.equals("left") ? Side.LEFT : Side.RIGHT),
                                        swing.swing(),
                                        swing.opens(),
                                        swing.holdOpen()));
                            case "swing" ->
                                Optional.of(new GateKind.Swing(
                                        swing.hinge(),
                                        Stated.of(value.equals("in") ? SwingWay.IN : SwingWay.OUT),
                                        swing.opens(),
                                        swing.holdOpen()));
                            default ->
                                QuantityText.angle(value)
                                        .value()
                                        .map(opens -> new GateKind.Swing(
                                                swing.hinge(), swing.swing(), opens, swing.holdOpen()));
                        },
                        pair -> switch (key) {
                            case "swing" ->
                                Optional.of(new GateKind.Pair(
                                        pair.split(),
                                        pair.active(),
                                        Stated.of(value.equals("in") ? SwingWay.IN : SwingWay.OUT),
                                        pair.opens(),
                                        pair.holdOpen(),
                                        pair.meeting()));
                            case "opens" ->
                                QuantityText.angle(value)
                                        .value()
                                        .map(opens -> new GateKind.Pair(
                                                pair.split(),
                                                pair.active(),
                                                pair.swing(),
                                                opens,
                                                pair.holdOpen(),
                                                pair.meeting()));
                            // A pair has no hinge side; taking it out of the file changes nothing.
                            default -> Optional.of(pair);
                        },
                        // A slide has none of these; taking them out of the file changes nothing.
                        Optional::of,
                        flagged -> Optional.empty());
    }

    private static Optional<Job> ofRun(Job job, String id, Function<Run, Optional<Run>> change) {
        return job.runs().stream()
                .filter(run -> run.id().equals(id))
                .findFirst()
                .flatMap(change)
                .map(job::withRun);
    }

    private static Optional<Run> edited(Run run, String key, String value) {
        return switch (key) {
            case "sides" -> RunSides.of(value).map(run::withSides);
            case "lowRails" -> Optional.of(run.withLowRails(value.equals("true")));
            case "maxBay" -> LengthText.length(value).value().map(run::withMaxBay);
            case "fit" -> fit(value).map(fit -> run.fitted(fit, run.fits()));
            default -> Optional.empty();
        };
    }

    private static Optional<Fit> fit(String key) {
        return Stream.of(Fit.values()).filter(fit -> fit.key().equals(key)).findFirst();
    }

    private static Optional<Job> onBuild(Job job, String id, String key, String value) {
        Optional<Run> fence =
                job.runs().stream().filter(run -> run.id().equals(id)).findFirst();
        if (fence.isPresent())
            return edited(job.builds().of(fence.get()), key, value)
                    .map(build -> job.withBuilds(job.builds().with(build)));
        List<GateBuild> builds = new ArrayList<>();
        boolean made = false;
        for (Gate each : job.gates()) {
            GateBuild build = job.builds().of(each);
            Optional<GateBuild> edited = each.id().equals(id) ? edited(build, key, value) : Optional.empty();
            made = made || edited.isPresent();
            builds.add(edited.orElse(build));
        }
        return made ? Optional.of(job.withBuilds(new Builds(job.builds().runs(), builds))) : Optional.empty();
    }

    private static Optional<RunBuild> edited(RunBuild build, String key, String value) {
        return switch (key) {
            case "post" -> Optional.of(build.withPost(value));
            case "hole" -> LengthText.length(value).value().map(build::withHole);
            case "depth" -> LengthText.length(value).value().map(build::withDepth);
            default -> Optional.empty();
        };
    }

    private static Optional<GateBuild> edited(GateBuild build, String key, String value) {
        return switch (key) {
            case "depth" -> LengthText.length(value).value().map(build::withDepth);
            case "hingePost" -> Optional.of(build.withHingePost(value));
            case "frame" -> Optional.of(build.withFrame(value));
            default -> Optional.empty();
        };
    }
}
