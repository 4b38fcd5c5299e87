package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.CheckTape;
import plumbleaf.engine.job.Heading;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Start;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** Where a run and its corners lie: starts on the map or on another run, corners taped as triangles or by offsets, and tapes that check them. */
final class CornerForm {
    /** {@code 50' 3" left}: a tape or an offset and the side it goes to. */
    private static final TextKind<Offset> SIDED =
            new TextKind<>("a length and a side", true, "50' 3\" left", CornerForm::sided, CornerForm::sidedText);

    private static final String CURE = "write 12' left or 12' right";

    private CornerForm() {}

    private static Parsed<Offset> sided(String text) {
        String plain = text.strip();
        boolean left = plain.endsWith("left");
        boolean right = plain.endsWith("right");
        if (!left && !right) return new Parsed.Refused<>("it needs its side", CURE);
        String size = plain.substring(0, plain.length() - (left ? 4 : 5)).strip();
        return Words.LEG
                .read()
                .apply(size)
                .then(length -> new Parsed.Read<>(
                        left ? length.asOffset() : length.asOffset().negated()));
    }

    private static String sidedText(Offset left) {
        return TextKind.LENGTH.write().apply(left.size()) + (left.inches() >= 0 ? " left" : " right");
    }

    static Start start(Fields start) {
        String run = start.words("run");
        if (!start.has("run")) {
            for (String key : List.of("station", "in", "out"))
                if (start.has(key)) start.refuse(key, "this belongs to a start on a run", "name the \"run\" too");
            return new Start.At(
                    start.assumed("east", Words.PLAN, Offset.ZERO, "the job's origin"),
                    start.assumed("north", Words.PLAN, Offset.ZERO, "the job's origin"));
        }
        for (String key : List.of("east", "north"))
            if (start.has(key)) start.refuse(key, "a start on a run has its place from that run", "leave it away");
        Length station = start.needed("station", Words.STATION, Length.ZERO);
        Optional<Length> in = start.given("in", Words.ASIDE);
        Optional<Length> out = start.given("out", Words.ASIDE);
        if (start.has("in") && start.has("out")) start.refuse("out", "it lies in or out, not both", "keep one");
        Offset inside = in.map(Length::asOffset)
                .or(() -> out.map(length -> length.asOffset().negated()))
                .orElse(Offset.ZERO);
        return new Start.OnRun(run, station, inside);
    }

    static void writeStart(Start start, Entries out) {
        start.match(at -> out.put("east", TextKind.OFFSET, at.east()).put("north", TextKind.OFFSET, at.north()), on -> {
            out.words("run", on.run()).put("station", TextKind.LENGTH, on.station());
            if (on.inside().isZero()) return out;
            boolean in = on.inside().inches() > 0;
            return out.put(in ? "in" : "out", TextKind.LENGTH, on.inside().size());
        });
    }

    /** The corner before a leg where it was taped; empty where it is a turn or a bearing, or nothing is said. */
    static Optional<Heading> taped(Fields leg, List<Leg> before) {
        Optional<Offset> diagonal = leg.given("diagonal", SIDED);
        Optional<Offset> off = leg.given("off", SIDED);
        Optional<Offset> along = leg.given("along", TextKind.offsetUpTo(Length.feet(100 * 5280)));
        List<String> ways = new ArrayList<>();
        for (String key : List.of("bearing", "turn", "diagonal", "off")) if (leg.has(key)) ways.add(key);
        boolean byTape = leg.has("diagonal") || leg.has("off") || leg.has("along");
        if (!byTape) return Optional.empty();
        String key = leg.has("diagonal") ? "diagonal" : leg.has("off") ? "off" : "along";
        if (ways.size() > 1) leg.refuse(key, "a leg has " + String.join(" or ", ways) + ", not both", "keep one");
        if (before.isEmpty()) leg.refuse(key, "the first leg has none before it to tape from", "give a bearing");
        else if (before.get(before.size() - 1).chord().isSaid())
            leg.refuse(key, "the leg before is a curve: no tape lies along it", "give \"turn\" instead");
        if (leg.has("diagonal"))
            return Optional.of(new Heading.Diagonal(
                    diagonal.map(Offset::size).orElse(Length.feet(8)),
                    diagonal.orElse(Offset.ZERO).inches() < 0 ? Side.RIGHT : Side.LEFT));
        if (!leg.has("off") || !leg.has("along"))
            leg.refuse(key, "along and off go together", "give \"along\": \"3'\" and \"off\": \"12' left\"");
        return Optional.of(new Heading.Offsets(
                along.orElse(Offset.ZERO), off.orElse(Length.feet(8).asOffset())));
    }

    /** A straight leg; by offsets its length is worked out. */
    static Leg leg(Fields leg, Heading heading, List<Leg> before) {
        Optional<Length> worked = heading.match(
                b -> Optional.empty(), t -> Optional.empty(), d -> Optional.empty(), o -> Optional.of(o.length()));
        if (worked.isPresent()) {
            for (String key : List.of("length", "taped"))
                if (leg.has(key)) leg.refuse(key, "a leg by offsets has its length from them", "leave it away");
            boolean some = worked.get().inches() >= 1;
            if (!some) leg.refuse("off", "this corner lies on the one before", "write the offsets as taped");
            return new Leg(some ? worked.get() : Length.feet(8), heading);
        }
        Length length = leg.needed("length", Words.LEG, Length.feet(8));
        Taped taped = leg.assumed("taped", Words.TAPED, Taped.LEVEL, Words.CUSTOM);
        Leg made = new Leg(length, heading, leg.has("taped") ? Stated.of(taped) : Stated.open(), Stated.open());
        if (!before.isEmpty()) triangle(leg, made, before.get(before.size() - 1));
        return made;
    }

    private static void triangle(Fields fields, Leg leg, Leg before) {
        boolean level = leg.taped() == Taped.LEVEL && before.taped() == Taped.LEVEL;
        boolean closes =
                leg.heading().match(b -> true, t -> true, d -> d.closes(before.length(), leg.length()), o -> true);
        if (!closes && level)
            fields.refuse(
                    "diagonal",
                    "three tapes of these lengths make no triangle",
                    "tape the diagonal from where the leg before begins to where this one ends");
    }

    static void writeLeg(Leg leg, Entries out) {
        boolean curve = leg.chord().isSaid();
        boolean offsets = leg.heading().match(b -> false, t -> false, d -> false, o -> true);
        if (!curve && !offsets) out.put("length", TextKind.LENGTH, leg.length());
        leg.heading()
                .match(
                        bearing -> out.put("bearing", TextKind.ANGLE, bearing.fromNorth()),
                        turn -> out.put("turn", Words.TURN, turn.left()),
                        diagonal -> out.put(
                                "diagonal",
                                SIDED,
                                diagonal.to() == Side.LEFT
                                        ? diagonal.tape().asOffset()
                                        : diagonal.tape().asOffset().negated()),
                        by -> out.put("along", TextKind.OFFSET, by.along()).put("off", SIDED, by.left()));
        if (!curve && !offsets) leg.tape().value().ifPresent(taped -> out.put("taped", Words.TAPED, taped));
    }

    static List<CheckTape> checks(Fields run) {
        List<CheckTape> checks = new ArrayList<>();
        for (Fields fields : run.objects("checks"))
            checks.add(new CheckTape(
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.ZERO),
                    fields.needed("taped", Words.LEG, Length.feet(8))));
        return checks;
    }

    static void writeChecks(List<CheckTape> checks, Entries out) {
        out.objects(
                "checks",
                checks,
                (check, entries) -> entries.put("from", TextKind.LENGTH, check.from())
                        .put("to", TextKind.LENGTH, check.to())
                        .put("taped", TextKind.LENGTH, check.taped()));
    }
}
