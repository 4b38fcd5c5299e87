package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.ground.Benchmark;
import plumbleaf.engine.ground.Breakline;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.ground.LaterGround;
import plumbleaf.engine.ground.Setup;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.ground.ShotHeight;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.ground.TapeLay;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code ground}: benchmark, setups, shots in their three forms, breaklines, ground to rise later. */
final class GroundForm {
    private GroundForm() {}

    static GroundBook read(Fields ground) {
        Fields benchmark = ground.object("benchmark");
        Benchmark mark = new Benchmark(
                benchmark.assumed("mark", TextKind.WORDS, "first shot", "heights count from the first shot"),
                benchmark.assumed("elevation", Words.ELEVATION, Offset.ZERO, "the benchmark is zero"));
        List<Setup> setups = new ArrayList<>();
        List<Fields> setupFields = ground.objects("setups");
        for (int i = 0; i < setupFields.size(); i++) {
            Fields fields = setupFields.get(i);
            setups.add(new Setup(
                    fields.assumed("id", TextKind.WORDS, "H" + (i + 1), Words.ORDER),
                    fields.assumed("on", TextKind.WORDS, "benchmark", "the level reads back on the benchmark"),
                    fields.needed("backsight", Words.RISE, Length.ZERO)));
        }
        List<Shot> shots = new ArrayList<>();
        List<Fields> shotFields = ground.objects("shots");
        for (int i = 0; i < shotFields.size(); i++) shots.add(shot(shotFields.get(i), i));
        List<Breakline> breaklines = new ArrayList<>();
        for (Fields fields : ground.objects("breaklines"))
            breaklines.add(new Breakline(fields.words("what"), fields.values("shots", TextKind.WORDS)));
        List<LaterGround> later = new ArrayList<>();
        for (Fields fields : ground.objects("later"))
            later.add(new LaterGround(
                    fields.needed("run", TextKind.WORDS, ""),
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.ZERO),
                    fields.needed("rise", Words.RISE, Length.ZERO),
                    fields.words("why")));
        return new GroundBook(mark, setups, shots, breaklines, later);
    }

    private static Shot shot(Fields fields, int index) {
        return new Shot(
                fields.assumed("id", TextKind.WORDS, "S" + (index + 1), Words.ORDER),
                place(fields),
                height(fields),
                fields.words("note"));
    }

    /** By station of a run, so far after another shot, by east and north, or where two tapes meet. */
    private static ShotPlace place(Fields fields) {
        String run = fields.words("run");
        Optional<Length> station = fields.given("station", Words.STATION);
        String after = fields.words("after");
        Optional<Length> over = fields.given("over", Words.STATION);
        Optional<Length> in = fields.given("in", Words.ASIDE);
        Optional<Length> out = fields.given("out", Words.ASIDE);
        Optional<Offset> east = fields.given("east", Words.PLAN);
        Optional<Offset> north = fields.given("north", Words.PLAN);
        Offset inside = in.map(Length::asOffset)
                .orElseGet(() -> out.map(off -> off.asOffset().negated()).orElse(Offset.ZERO));
        if (in.isPresent() && out.isPresent())
            fields.refuse("out", "a shot is not both in and out", "keep one of the two");
        boolean byPlan = fields.has("east") || fields.has("north");
        boolean byTape = fields.has("after") || fields.has("over");
        boolean byStation = fields.has("station");
        boolean byTapes = fields.has("tapes");
        int ways = (byPlan ? 1 : 0) + (byTape ? 1 : 0) + (byStation ? 1 : 0) + (byTapes ? 1 : 0);
        TapeLay lay = fields.given("taped", Words.TAPE_LAY).orElse(TapeLay.UNSAID);
        if (lay != TapeLay.UNSAID && !byTape)
            fields.refuse("taped", "only a shot taped from another says this", "take it out");
        if (ways != 1) {
            fields.refuse(
                    "",
                    ways == 0 ? "this shot has no place" : "this shot has more than one place",
                    "give station, or after and over, or east and north, or tapes");
            return new ShotPlace.At(Offset.ZERO, Offset.ZERO);
        }
        if (byTapes) {
            noneOf(fields, "a shot by tapes", List.of("run", "in", "out"));
            return tapes(fields.object("tapes"));
        }
        if (byPlan) {
            both(fields, "east", "north");
            noneOf(fields, "a shot by east and north", List.of("run", "in", "out"));
            return new ShotPlace.At(east.orElse(Offset.ZERO), north.orElse(Offset.ZERO));
        }
        if (!fields.has("run")) fields.needed("run", TextKind.WORDS, "");
        if (byStation) return new ShotPlace.OnRun(run, station.orElse(Length.ZERO), inside);
        both(fields, "after", "over");
        return new ShotPlace.After(run, after, over.orElse(Length.ZERO), lay, inside);
    }

    /** Two tapes from known points, and a third to check them. */
    private static ShotPlace tapes(Fields tapes) {
        both(tapes, "check", "checkLength");
        Optional<Length> checked = tapes.given("checkLength", Words.LEG);
        String check = tapes.words("check");
        return new ShotPlace.Tapes(
                tapes.needed("from", TextKind.WORDS, ""),
                tapes.needed("length", Words.LEG, Length.feet(8)),
                tapes.needed("and", TextKind.WORDS, ""),
                tapes.needed("andLength", Words.LEG, Length.feet(8)),
                tapes.needed("side", Words.SIDE, Side.LEFT) == Side.LEFT,
                checked.map(length -> new ShotPlace.Tape(check, length)));
    }

    private static void writeTapes(ShotPlace.Tapes tapes, Entries out) {
        out.words("from", tapes.from())
                .put("length", TextKind.LENGTH, tapes.length())
                .words("and", tapes.and())
                .put("andLength", TextKind.LENGTH, tapes.andLength())
                .put("side", Words.SIDE, tapes.left() ? Side.LEFT : Side.RIGHT);
        tapes.check()
                .ifPresent(
                        check -> out.words("check", check.from()).put("checkLength", TextKind.LENGTH, check.length()));
    }

    /** A rod reading from a setup, an elevation, or a fall or rise from another shot. */
    private static ShotHeight height(Fields fields) {
        Optional<Length> rod = fields.given("rod", Words.RISE);
        String setup = fields.words("setup");
        Optional<Offset> elevation = fields.given("elevation", Words.ELEVATION);
        Optional<Length> falls = fields.given("falls", Words.RISE);
        Optional<Length> rises = fields.given("rises", Words.RISE);
        String from = fields.words("from");
        boolean byRod = fields.has("rod") || fields.has("setup");
        boolean byFall = fields.has("falls") || fields.has("rises");
        int ways = (byRod ? 1 : 0) + (fields.has("elevation") ? 1 : 0) + (byFall ? 1 : 0);
        if (ways != 1 || (fields.has("falls") && fields.has("rises"))) {
            fields.refuse(
                    "",
                    ways == 0 ? "this shot has no height" : "this shot has more than one height",
                    "give setup and rod, or elevation, or falls or rises");
            return new ShotHeight.Elevation(Offset.ZERO);
        }
        if (byRod) {
            both(fields, "setup", "rod");
            return new ShotHeight.Rod(setup, rod.orElse(Length.ZERO));
        }
        if (!byFall) return new ShotHeight.Elevation(elevation.orElse(Offset.ZERO));
        String base = from.isEmpty() ? fields.words("after") : from;
        if (base.isEmpty())
            fields.refuse("", "it is not said from which shot this one falls or rises", "give \"from\": \"S1\"");
        Offset by = falls.map(Length::asOffset)
                .orElseGet(() -> rises.map(rise -> rise.asOffset().negated()).orElse(Offset.ZERO));
        return new ShotHeight.Falls(base, by);
    }

    private static void both(Fields fields, String one, String other) {
        if (fields.has(one) != fields.has(other))
            fields.refuse(
                    fields.has(one) ? one : other,
                    one + " and " + other + " go together",
                    "give \"" + (fields.has(one) ? other : one) + "\" too");
    }

    private static void noneOf(Fields fields, String what, List<String> keys) {
        for (String key : keys) {
            if (fields.has(key)) fields.refuse(key, what + " has none", "leave it away");
        }
    }

    static void write(GroundBook ground, Entries out) {
        out.object(
                "benchmark",
                benchmark -> benchmark
                        .put("mark", TextKind.WORDS, ground.benchmark().mark())
                        .put("elevation", TextKind.OFFSET, ground.benchmark().elevation()));
        out.objects(
                "setups",
                ground.setups(),
                (setup, entries) -> entries.words("id", setup.id())
                        .words("on", setup.on())
                        .put("backsight", TextKind.LENGTH, setup.backsight()));
        out.objects("shots", ground.shots(), GroundForm::writeShot);
        out.objects(
                "breaklines",
                ground.breaklines(),
                (line, entries) -> entries.words("what", line.what()).values("shots", TextKind.WORDS, line.shots()));
        out.objects(
                "later",
                ground.later(),
                (later, entries) -> entries.words("run", later.run())
                        .put("from", TextKind.LENGTH, later.from())
                        .put("to", TextKind.LENGTH, later.to())
                        .put("rise", TextKind.LENGTH, later.rise())
                        .words("why", later.why()));
    }

    private static void writeShot(Shot shot, Entries out) {
        out.words("id", shot.id());
        String before = shot.place()
                .match(
                        onRun -> {
                            out.words("run", onRun.run()).put("station", TextKind.LENGTH, onRun.station());
                            return writeInside(onRun.inside(), out, "");
                        },
                        after -> {
                            out.words("run", after.run())
                                    .words("after", after.shot())
                                    .put("over", TextKind.LENGTH, after.over());
                            if (after.lay() != TapeLay.UNSAID) out.put("taped", Words.TAPE_LAY, after.lay());
                            return writeInside(after.inside(), out, after.shot());
                        },
                        at -> {
                            out.put("east", TextKind.OFFSET, at.east()).put("north", TextKind.OFFSET, at.north());
                            return "";
                        },
                        tapes -> {
                            out.object("tapes", entries -> writeTapes(tapes, entries));
                            return "";
                        });
        shot.height()
                .match(
                        rod -> out.words("setup", rod.setup()).put("rod", TextKind.LENGTH, rod.reading()),
                        elevation -> out.put("elevation", TextKind.OFFSET, elevation.above()),
                        falls -> {
                            if (!falls.shot().equals(before)) out.words("from", falls.shot());
                            boolean rises = falls.by().inches() < 0;
                            return out.put(
                                    rises ? "rises" : "falls",
                                    TextKind.LENGTH,
                                    falls.by().size());
                        });
        out.words("note", shot.note());
    }

    private static String writeInside(Offset inside, Entries out, String before) {
        if (!inside.isZero()) out.put(inside.inches() > 0 ? "in" : "out", TextKind.LENGTH, inside.size());
        return before;
    }
}
