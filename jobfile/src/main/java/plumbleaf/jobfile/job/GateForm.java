package plumbleaf.jobfile.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateGround;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.GateLoads;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.LatchSpec;
import plumbleaf.engine.job.Obstacle;
import plumbleaf.engine.job.PostSpec;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[]}: kind and hand, place, leaf, posts, hardware, loads, the opening as set, release. */
final class GateForm {
    private static final List<String> KINDS = List.of("swing", "pair", "slide", "flagged");
    private static final List<String> HOLDS = List.of("free", "cane-bolt", "stop", "hinge-lock");
    private static final List<String> RELEASES = List.of("priced", "hold", "released");
    private static final TextKind<String> KIND = TextKind.oneOf("a kind of gate", KINDS, word -> word);
    private static final Length WIDE = Length.feet(5);

    private GateForm() {}

    /** @param runs those read before, since a gate takes after the fence it stands in */
    static Gate read(Fields gate, int index, List<Run> runs) {
        String id = gate.assumed("id", TextKind.WORDS, "G" + (index + 1), Words.ORDER);
        String kindWord = gate.needed("kind", KIND, "swing");
        String run = gate.needed("run", TextKind.WORDS, "");
        Length station = gate.needed("station", Words.STATION, Length.ZERO);
        Length opening = gate.needed("opening", Words.OPENING, Length.feet(4));
        GateKind kind = kind(kindWord, gate, opening);
        Optional<Run> fence = runs.stream().filter(is -> is.id().equals(run)).findFirst();
        return new Gate(
                id,
                kind,
                run,
                station,
                opening,
                LeafForm.read(gate.object("leaf"), fence),
                new PostSpec(SupportForm.read(gate.object("hingePost"))),
                new PostSpec(SupportForm.read(gate.object("latchPost"))),
                hinges(kindWord.equals("slide") ? gate.idleObject("hinges") : gate.object("hinges"), opening),
                latch(gate.object("latch")),
                loads(gate.object("loads")),
                asSet(gate),
                release(gate),
                obstacles(gate),
                ground(gate, kindWord));
    }

    private static boolean isNoSetBack(Length back) {
        return back.compareTo(GateGround.SET_BACK_LEAST) < 0 || back.compareTo(GateGround.SET_BACK_MOST) > 0;
    }

    private static GateGround ground(Fields gate, String kind) {
        boolean regrade = gate.flag("regrade");
        boolean landing = gate.flag("landing");
        Optional<Length> back = gate.given("setBack", Words.OPENING);
        GateGround ground = new GateGround(regrade, landing, back.orElse(Length.ZERO));
        boolean swings = kind.equals("swing") || kind.equals("pair");
        if (back.isPresent() && !swings) gate.refuse("setBack", "only leaves that swing are set back", "leave it away");
        else if (back.isPresent() && gate.given("swing", Words.SWING).isEmpty())
            gate.refuse("setBack", "it is away from the side the gate swings to", "say \"swing\": \"in\" or \"out\"");
        else if (back.filter(GateForm::isNoSetBack).isPresent())
            gate.refuse("setBack", "a gate is set back 12\" to 48\"", "make a longer one a leg of the run");
        if (ground.landing() && !swings)
            gate.refuse(
                    "landing", "a landing lies under leaves that swing", "leave it away, or write \"regrade\": true");
        return ground;
    }

    /** The fence's fit decides how a leaf is shaped when nobody says. */
    static boolean racks(Optional<Run> fence) {
        return fence.map(run -> run.fit() == Fit.RACKED || run.fit() == Fit.MIXED)
                .orElse(true);
    }

    private static GateKind kind(String word, Fields gate, Length opening) {
        return switch (word) {
            case "pair" ->
                new GateKind.Pair(
                        gate.assumed("split", TextKind.shareUpTo(0.9), 0.5, Words.CUSTOM),
                        gate.assumed("active", Words.SIDE, Side.RIGHT, Words.CUSTOM),
                        Open.of(gate.given("swing", Words.SWING)),
                        opens(gate),
                        holdOpen(gate),
                        MeetingForm.read(gate.object("meeting")));
            case "slide" ->
                new GateKind.Slide(
                        gate.needed("slides", Words.SIDE, Side.LEFT), SlideForm.read(gate.object("slide"), opening));
            case "flagged" -> new GateKind.Flagged(gate.needed("name", TextKind.WORDS, ""));
            default ->
                new GateKind.Swing(
                        Open.of(gate.given("hinge", Words.SIDE)),
                        Open.of(gate.given("swing", Words.SWING)),
                        opens(gate),
                        holdOpen(gate));
        };
    }

    private static Angle opens(Fields gate) {
        Angle opens = gate.assumed("opens", TextKind.ANGLE, Angle.degrees(90), Words.CUSTOM);
        boolean sensible = opens.radians() > 0 && opens.inDegrees() <= 180.000001;
        if (!sensible) gate.refuse("opens", "a leaf opens more than 0 and at most 180 deg", "write 90 deg or 180 deg");
        return opens;
    }

    private static HoldOpen holdOpen(Fields gate) {
        Choice choice = gate.assumedChoice("holdOpen", HOLDS, "cane-bolt", Words.CUSTOM);
        return switch (choice.kind()) {
            case "free" -> new HoldOpen.Free();
            case "stop" ->
                new HoldOpen.Stop(choice.fields().assumed("radius", Words.OPENING, Length.feet(2), Words.JUDGED));
            case "hinge-lock" ->
                new HoldOpen.HingeLock(choice.fields().assumed("lever", Words.HOLE, Length.inches(2), Words.JUDGED));
            default -> new HoldOpen.CaneBolt();
        };
    }

    private static HingeSpec hinges(Fields hinges, Length opening) {
        boolean wide = opening.compareTo(WIDE) > 0;
        String model =
                hinges.assumed("model", TextKind.WORDS, wide ? "HINGE-ADJ-0.75" : "HINGE-ADJ-0.625", Words.CUSTOM);
        Length fromTop = hinges.assumed("fromTop", Words.HEIGHT, Length.inches(9), Words.CUSTOM);
        Length fromBottom = hinges.assumed("fromBottom", Words.HEIGHT, Length.inches(9), Words.CUSTOM);
        int count = hinges.assumedCount("count", 2, 5, 2, Words.CUSTOM);
        int weightOn = hinges.assumedCount("weightOn", 1, 5, 1, "the lowest hinge, common practice, no source");
        if (weightOn > count)
            hinges.refuse(
                    "weightOn",
                    "there is no hinge " + weightOn + " of " + count,
                    "count from the bottom, 1 the lowest");
        return new HingeSpec(model, fromTop, fromBottom, count, Math.min(weightOn, count) - 1, hinges.flag("closer"));
    }

    private static LatchSpec latch(Fields latch) {
        return new LatchSpec(
                latch.assumed("model", TextKind.WORDS, "LATCH-THUMB", Words.CUSTOM),
                latch.assumed("height", Words.HEIGHT, Length.inches(42), Words.CUSTOM));
    }

    private static GateLoads loads(Fields loads) {
        return new GateLoads(
                loads.assumed("person", TextKind.FORCE, Force.pounds(200), Words.CUSTOM),
                loads.assumed("serviceGust", TextKind.SPEED, Speed.mph(40), Words.JUDGED),
                loads.assumed("slamSpeed", TextKind.SPEED, Speed.mph(2), "a push by hand, judgement"),
                loads.assumed("laterRise", Words.GAP, Length.ZERO, "no paving or mulch to come; ask"),
                loads.assumed(
                        "shotError", Words.GAP, Length.inches(0.25), "hand level at 30 ft, common practice, no source"),
                loads.given("ice", Words.ICE).orElse(Length.ZERO));
    }

    private static List<AsSet> asSet(Fields gate) {
        List<AsSet> readings = new ArrayList<>();
        for (Fields set : gate.objects("asSet")) {
            Fields hinge = set.object("hingePlumb");
            Fields latch = set.object("latchPlumb");
            Length top = set.needed("top", Words.OPENING, Length.feet(4));
            readings.add(new AsSet(
                    set.needed("date", TextKind.DATE, LocalDate.of(2000, 1, 1)),
                    top,
                    set.assumed("middle", Words.OPENING, top, "taken as parallel"),
                    set.assumed("bottom", Words.OPENING, top, "taken as parallel"),
                    hinge.assumed("along", Words.PLUMB, Offset.ZERO, "taken as plumb"),
                    hinge.assumed("across", Words.PLUMB, Offset.ZERO, "taken as plumb"),
                    latch.assumed("along", Words.PLUMB, Offset.ZERO, "taken as plumb"),
                    latch.assumed("across", Words.PLUMB, Offset.ZERO, "taken as plumb")));
        }
        return readings;
    }

    private static Release release(Fields gate) {
        Choice choice = gate.assumedChoice("release", RELEASES, "priced", "not for the shop until someone says so");
        Fields fields = choice.fields();
        return switch (choice.kind()) {
            case "hold" -> new Release.Hold();
            case "released" ->
                new Release.Released(
                        fields.needed("revision", TextKind.WORDS, ""),
                        fields.needed("date", TextKind.DATE, LocalDate.of(2000, 1, 1)),
                        fields.needed("by", TextKind.WORDS, ""),
                        fields.flag("beforePosts"));
            default -> new Release.Priced();
        };
    }

    private static List<Obstacle> obstacles(Fields gate) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (Fields fields : gate.objects("obstacles"))
            obstacles.add(new Obstacle(
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("along", Words.PLAN, Offset.ZERO),
                    fields.needed("side", Words.ASIDE, Length.ZERO)));
        return obstacles;
    }

    static void write(Gate gate, Entries out) {
        out.words("id", gate.id());
        out.put(
                "kind",
                KIND,
                gate.kind().match(swing -> "swing", pair -> "pair", slide -> "slide", flagged -> "flagged"));
        out.words("run", gate.run())
                .put("station", TextKind.LENGTH, gate.station())
                .put("opening", TextKind.LENGTH, gate.opening());
        gate.kind()
                .match(
                        swing -> writeSwing(swing, out),
                        pair -> writePair(pair, out),
                        slide -> out.put("slides", Words.SIDE, slide.opensTo())
                                .object("slide", spec -> SlideForm.write(slide.spec(), spec)),
                        flagged -> out.words("name", flagged.name()));
        out.object("leaf", leaf -> LeafForm.write(gate.leaf(), leaf));
        out.object("hingePost", post -> SupportForm.write(gate.hingePost().support(), post));
        out.object("latchPost", post -> SupportForm.write(gate.latchPost().support(), post));
        out.object("hinges", hinges -> {
            hinges.words("model", gate.hinges().model())
                    .put("fromTop", TextKind.LENGTH, gate.hinges().fromTop())
                    .put("fromBottom", TextKind.LENGTH, gate.hinges().fromBottom())
                    .count("count", gate.hinges().count())
                    .count("weightOn", gate.hinges().weightOn() + 1);
            if (gate.hinges().closer()) hinges.flag("closer", true);
        });
        out.object(
                "latch",
                latch -> latch.words("model", gate.latch().model())
                        .put("height", TextKind.LENGTH, gate.latch().height()));
        out.object("loads", loads -> {
            loads.put("person", TextKind.FORCE, gate.loads().person())
                    .put("serviceGust", TextKind.SPEED, gate.loads().serviceGust())
                    .put("slamSpeed", TextKind.SPEED, gate.loads().slamSpeed())
                    .put("laterRise", TextKind.LENGTH, gate.loads().laterRise())
                    .put("shotError", TextKind.LENGTH, gate.loads().shotError());
            if (!gate.loads().ice().isZero())
                loads.put("ice", TextKind.LENGTH, gate.loads().ice());
        });
        out.objects("asSet", gate.asSet(), GateForm::writeAsSet);
        gate.release()
                .match(
                        priced -> out.choice("release", "priced", rest -> {}),
                        hold -> out.choice("release", "hold", rest -> {}),
                        released -> out.choice(
                                "release",
                                "released",
                                rest -> rest.words("revision", released.revision())
                                        .put("date", TextKind.DATE, released.date())
                                        .words("by", released.by())
                                        .flag("beforePosts", released.beforePosts())));
        out.objects(
                "obstacles",
                gate.obstacles(),
                (obstacle, entries) -> entries.words("what", obstacle.what())
                        .put("along", TextKind.OFFSET, obstacle.along())
                        .put("side", TextKind.LENGTH, obstacle.side()));
        if (gate.ground().regrade()) out.flag("regrade", true);
        if (gate.ground().landing()) out.flag("landing", true);
        if (!gate.ground().setBack().isZero())
            out.put("setBack", TextKind.LENGTH, gate.ground().setBack());
    }

    private static Entries writeSwing(GateKind.Swing swing, Entries out) {
        out.putIfAny("hinge", Words.SIDE, swing.hinge().value())
                .putIfAny("swing", Words.SWING, swing.swing().value())
                .put("opens", TextKind.ANGLE, swing.opens());
        return writeHold(swing.holdOpen(), out);
    }

    private static Entries writePair(GateKind.Pair pair, Entries out) {
        out.put("split", TextKind.SHARE, pair.split())
                .put("active", Words.SIDE, pair.active())
                .putIfAny("swing", Words.SWING, pair.swing().value())
                .put("opens", TextKind.ANGLE, pair.opens());
        return writeHold(pair.holdOpen(), out).object("meeting", meeting -> MeetingForm.write(pair.meeting(), meeting));
    }

    private static Entries writeHold(HoldOpen hold, Entries out) {
        return hold.match(
                free -> out.choice("holdOpen", "free", rest -> {}),
                caneBolt -> out.choice("holdOpen", "cane-bolt", rest -> {}),
                stop -> out.choice("holdOpen", "stop", rest -> rest.put("radius", TextKind.LENGTH, stop.radius())),
                lock -> out.choice("holdOpen", "hinge-lock", rest -> rest.put("lever", TextKind.LENGTH, lock.lever())));
    }

    private static void writeAsSet(AsSet set, Entries out) {
        out.put("date", TextKind.DATE, set.date())
                .put("top", TextKind.LENGTH, set.top())
                .put("middle", TextKind.LENGTH, set.middle())
                .put("bottom", TextKind.LENGTH, set.bottom());
        out.object(
                "hingePlumb",
                plumb -> plumb.put("along", TextKind.OFFSET, set.hingePlumbAlong())
                        .put("across", TextKind.OFFSET, set.hingePlumbAcross()));
        out.object(
                "latchPlumb",
                plumb -> plumb.put("along", TextKind.OFFSET, set.latchPlumbAlong())
                        .put("across", TextKind.OFFSET, set.latchPlumbAcross()));
    }
}
