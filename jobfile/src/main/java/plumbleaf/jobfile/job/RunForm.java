package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.job.Arc;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.FitPart;
import plumbleaf.engine.job.Heading;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.PostStretch;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.SetPost;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stain;
import plumbleaf.engine.job.Start;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.support.WallKind;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code runs[]}: legs, ends, style, height, fit, where no hole may be, posts staked out. */
final class RunForm {
    private static final List<String> ENDS = List.of("free", "wall", "joins", "neighbour");

    /** More chords than this in one curve are a slip of the pen. */
    private static final int MOST_CHORDS = 200;

    private static final TextKind<Boolean> ANSWER =
            TextKind.oneOf("an answer", List.of(true, false), answer -> answer ? "yes" : "no");

    private static final TextKind<Stain.Texture> TEXTURE =
            TextKind.oneOf("a texture", List.of(Stain.Texture.values()), Stain.Texture::key);

    private RunForm() {}

    static Run read(Fields run, int index, Catalogue catalogue) {
        String id = run.assumed("id", TextKind.WORDS, "R" + (index + 1), Words.ORDER);
        Side outside = run.assumed(
                "outside", Words.SIDE, Side.RIGHT, "as when one walks round a yard with the yard on the left");
        Start from = CornerForm.start(run.object("start"));
        List<RunEnd> ends = ends(run, from);
        String style = run.needed("style", TextKind.WORDS, "none");
        Length infill = run.assumed("infill", Words.HEIGHT, Length.feet(6), Words.CUSTOM);
        Length bottomGap = run.assumed("bottomGap", Words.GAP, Length.inches(2), Words.CUSTOM);
        boolean panels = catalogue.style(style).map(FenceStyle::isPanel).orElse(false);
        Fit fit = panels
                ? run.assumed("fit", Words.FIT, Fit.MIXED, "panels rack to their limit, else they step")
                : run.assumed("fit", Words.FIT, Fit.RACKED, Words.CUSTOM);
        Length maxBay = run.assumed("maxBay", Words.BAY, Length.feet(8), Words.CUSTOM);
        if (run.has("maxBay") && maxBay.compareTo(Length.feet(2)) < 0)
            run.refuse("maxBay", "a bay is 2' at least", "write a longer bay");
        List<Leg> legs = legs(run, maxBay);
        FinishedFace face = run.assumed("finishedFace", Words.FACE, FinishedFace.OUT, Words.CUSTOM);
        List<NoDig> noDig = new ArrayList<>();
        for (Fields fields : run.objects("noDig"))
            noDig.add(new NoDig(
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.ZERO),
                    fields.words("why"),
                    Open.of(fields.given("ticket", TextKind.WORDS))));
        List<SetPost> set = new ArrayList<>();
        for (Fields fields : run.objects("set"))
            set.add(new SetPost(
                    fields.needed("id", TextKind.WORDS, ""), fields.needed("station", Words.STATION, Length.ZERO)));
        return new Run(
                id,
                outside,
                from,
                legs,
                ends.get(0),
                ends.get(1),
                style,
                infill,
                bottomGap,
                fit,
                maxBay,
                face,
                noDig,
                set,
                SupportForm.read(run.object("posts")),
                otherPosts(run),
                Open.of(run.given("basis", Words.BASIS)),
                stain(run.object("stain")),
                fits(run),
                Open.of(run.given("step", Words.SPACE)),
                CornerForm.checks(run),
                sides(run),
                run.flag("lowRails"),
                crossSlope(run));
    }

    private static List<RunSide> sides(Fields run) {
        List<RunSide> sides = new ArrayList<>();
        Length end = Length.ZERO;
        for (Fields fields : run.objects("sides")) {
            RunSide side = new RunSide(
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.feet(8)),
                    Open.of(fields.given("basis", Words.BASIS)),
                    Open.of(fields.given("post", TextKind.WORDS)),
                    Open.of(fields.given("hole", Words.HOLE)),
                    Open.of(fields.given("depth", Words.DEPTH)),
                    Open.of(fields.given("maxBay", Words.BAY)));
            if (side.maxBay().or(Length.feet(2)).compareTo(Length.feet(2)) < 0)
                fields.refuse("maxBay", "a bay is 2' at least", "write a longer bay");
            if (side.from().compareTo(side.to()) >= 0)
                fields.refuse("to", "this is not beyond the near end", "write the farther end here");
            if (side.from().compareTo(end) < 0)
                fields.refuse("from", "this side begins before the one before it ends", "give the sides in order");
            if (Stream.of("basis", "post", "hole", "depth", "maxBay").noneMatch(fields::has))
                fields.refuse(
                        "",
                        "this side is built as the rest",
                        "give its \"basis\", or its \"post\", \"hole\", \"depth\" or \"maxBay\"");
            end = side.to();
            sides.add(side);
        }
        return sides;
    }

    private static Stated<Slope> crossSlope(Fields run) {
        Optional<Slope> said = run.given("crossSlope", TextKind.SLOPE);
        if (said.isPresent() && StrictMath.abs(said.get().ratio()) > 1)
            run.refuse(
                    "crossSlope", "the ground beside a fence falls 1 in 1 at most", "shoot the ground beside the run");
        return Open.of(said);
    }

    private static Stain stain(Fields stain) {
        return new Stain(
                stain.givenCount("coats", 0, 2).orElse(0),
                stain.given("texture", TEXTURE).orElse(Stain.Texture.ROUGH));
    }

    private static List<PostStretch> otherPosts(Fields run) {
        List<PostStretch> parts = new ArrayList<>();
        Length end = Length.ZERO;
        for (Fields fields : run.objects("otherPosts")) {
            PostStretch part = new PostStretch(
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.feet(8)),
                    SupportForm.read(fields));
            if (part.from().compareTo(part.to()) >= 0)
                fields.refuse("to", "this is not beyond the near end", "write the farther end here");
            if (part.from().compareTo(end) < 0)
                fields.refuse("from", "this part begins before the one before it ends", "give the parts in order");
            end = part.to();
            parts.add(part);
        }
        return parts;
    }

    private static List<FitPart> fits(Fields run) {
        List<FitPart> parts = new ArrayList<>();
        Length end = Length.ZERO;
        for (Fields fields : run.objects("fits")) {
            FitPart part = new FitPart(
                    fields.needed("from", Words.STATION, Length.ZERO),
                    fields.needed("to", Words.STATION, Length.feet(8)),
                    fields.needed("fit", Words.FIT, Fit.RACKED));
            if (part.from().compareTo(part.to()) >= 0)
                fields.refuse("to", "this is not beyond the near end", "write the farther end here");
            if (part.from().compareTo(end) < 0)
                fields.refuse("from", "this part begins before the one before it ends", "give the parts in order");
            end = part.to();
            parts.add(part);
        }
        return parts;
    }

    private static List<Leg> legs(Fields run, Length maxBay) {
        List<Leg> legs = new ArrayList<>();
        for (Fields leg : run.objects("legs")) {
            Optional<Heading> taped = CornerForm.taped(leg, legs);
            Heading heading = taped.orElseGet(() -> heading(leg, legs.isEmpty()));
            if (leg.has("arc")) {
                if (taped.isPresent()) leg.refuse("arc", "a curve begins with a turn", "give \"turn\" instead");
                legs.addAll(arc(leg, taped.isPresent() ? new Heading.Turn(Angle.ZERO) : heading, maxBay));
                continue;
            }
            legs.add(CornerForm.leg(leg, heading, legs));
        }
        if (legs.isEmpty() && !run.has("legs")) run.needed("legs", LEGS, "");
        else if (legs.isEmpty()) run.refuse("legs", "a run needs a leg", "write \"legs\": [ { \"length\": \"40'\" } ]");
        return legs;
    }

    /** A curve is fenced by chords, and has its length and tape from its radius. */
    private static List<Leg> arc(Fields leg, Heading heading, Length maxBay) {
        Fields arc = leg.object("arc");
        if (leg.has("length")) leg.refuse("length", "a curve has its length from radius and turn", "leave it away");
        if (leg.has("taped")) leg.refuse("taped", "a curve is not taped along", "leave it away");
        Arc read = new Arc(
                arc.needed("radius", Words.LEG, Length.feet(30)),
                arc.needed("turn", Words.TURN, Angle.degrees(90)),
                arc.assumed("sagitta", Words.SPACE, Length.inches(2), Words.JUDGED));
        if (arc.has("radius") && read.radius().inches() < 24)
            arc.refuse("radius", "a fence does not bend round less than 2'", "write the radius to the post centers");
        if (arc.has("turn") && read.left().isZero()) arc.refuse("turn", "a curve turns", "write 90 deg left");
        boolean good = read.radius().inches() >= 24 && !read.left().isZero() && maxBay.inches() >= 1;
        List<Leg> chords = good ? read.legs(heading, maxBay) : List.of();
        if (chords.size() <= MOST_CHORDS && good) return chords;
        if (good)
            arc.refuse(
                    "sagitta",
                    "this takes " + chords.size() + " chords, more than " + MOST_CHORDS,
                    "write a larger sagitta, or split the curve");
        return List.of(new Leg(Length.feet(8), heading));
    }

    /** Only to say what is missing: legs are objects and never read as text. */
    private static final TextKind<String> LEGS =
            new TextKind<>("a leg", false, "...", TextKind.WORDS.read(), TextKind.WORDS.write());

    private static Heading heading(Fields leg, boolean first) {
        Optional<Angle> bearing = leg.given("bearing", TextKind.ANGLE);
        Optional<Angle> turn = leg.given("turn", Words.TURN);
        if (leg.has("bearing") && leg.has("turn"))
            leg.refuse("turn", "a leg has a bearing or a turn, not both", "keep one of the two");
        if (first && leg.has("turn"))
            leg.refuse("turn", "the first leg has none before it to turn from", "write \"bearing\": \"90 deg\"");
        if (bearing.isPresent()) return new Heading.Bearing(bearing.get());
        if (turn.isPresent()) return new Heading.Turn(turn.get());
        if (!leg.has("bearing") && !leg.has("turn")) {
            if (first)
                leg.leaveOut(
                        "bearing",
                        "90 deg",
                        "drawn to the right; directions do not matter until a drawing is set on a map");
            else leg.leaveOut("turn", "0 deg", "straight on");
        }
        return first ? new Heading.Bearing(Angle.degrees(90)) : new Heading.Turn(Angle.ZERO);
    }

    /** A run that begins on another shares its post there. */
    private static List<RunEnd> ends(Fields run, Start from) {
        Optional<String> tee = from.match(
                at -> Optional.empty(), on -> on.inside().isZero() ? Optional.of(on.run()) : Optional.empty());
        if (!run.has("ends"))
            run.leaveOut("ends", tee.map(id -> "joins " + id).orElse("free") + ", free", Words.CUSTOM);
        List<RunEnd> ends = new ArrayList<>();
        if (!run.has("ends") && tee.isPresent()) ends.add(new RunEnd.Joins(tee.get()));
        for (Choice choice : run.choices("ends", ENDS)) ends.add(end(choice));
        if (run.has("ends") && ends.size() != 2)
            run.refuse("ends", "a run has two ends, first and last", "write \"ends\": [ \"free\", \"free\" ]");
        while (ends.size() < 2) ends.add(new RunEnd.Free());
        return ends;
    }

    private static RunEnd end(Choice choice) {
        return switch (choice.kind()) {
            case "wall" -> new RunEnd.Wall(choice.fields().needed("of", Words.WALL, WallKind.MASONRY));
            case "joins" -> new RunEnd.Joins(choice.fields().needed("run", TextKind.WORDS, ""));
            case "neighbour" ->
                new RunEnd.Neighbour(
                        choice.fields().words("fence"),
                        Open.of(choice.fields().given("height", Words.HEIGHT)),
                        Open.of(choice.fields().given("agreed", ANSWER)));
            default -> new RunEnd.Free();
        };
    }

    static void write(Run run, Entries out) {
        out.words("id", run.id()).put("outside", Words.SIDE, run.outside());
        out.object("start", start -> CornerForm.writeStart(run.start(), start));
        List<Leg> written = run.legs().stream()
                .filter(leg -> leg.chord().match(chord -> chord.is().index() == 0, straight -> true))
                .toList();
        out.objects("legs", written, (leg, entries) -> {
            CornerForm.writeLeg(leg, entries);
            leg.chord()
                    .match(
                            chord -> entries.object(
                                    "arc", arc -> writeArc(chord.is().arc(), arc)),
                            straight -> entries);
        });
        out.choices("ends", List.of(run.first(), run.last()), RunForm::endKind, RunForm::writeEnd);
        out.words("style", run.style())
                .put("infill", TextKind.LENGTH, run.infill())
                .put("bottomGap", TextKind.LENGTH, run.bottomGap())
                .put("fit", Words.FIT, run.fit())
                .put("maxBay", TextKind.LENGTH, run.maxBay())
                .put("finishedFace", Words.FACE, run.finishedFace());
        out.objects(
                "fits",
                run.fits(),
                (part, entries) -> entries.put("from", TextKind.LENGTH, part.from())
                        .put("to", TextKind.LENGTH, part.to())
                        .put("fit", Words.FIT, part.fit()));
        out.objects(
                "noDig",
                run.noDig(),
                (noDig, entries) -> entries.put("from", TextKind.LENGTH, noDig.from())
                        .put("to", TextKind.LENGTH, noDig.to())
                        .words("why", noDig.why())
                        .putIfAny("ticket", TextKind.WORDS, noDig.ticket().value()));
        out.objects(
                "set",
                run.set(),
                (set, entries) -> entries.words("id", set.id()).put("station", TextKind.LENGTH, set.station()));
        out.putIfAny("step", TextKind.LENGTH, run.step().value());
        CornerForm.writeChecks(run.checks(), out);
        out.object("posts", posts -> SupportForm.write(run.posts(), posts));
        out.objects("otherPosts", run.otherPosts(), (part, entries) -> {
            entries.put("from", TextKind.LENGTH, part.from()).put("to", TextKind.LENGTH, part.to());
            SupportForm.write(part.posts(), entries);
        });
        if (run.lowRails()) out.flag("lowRails", true);
        out.putIfAny("crossSlope", TextKind.SLOPE, run.crossSlope().value());
        out.putIfAny("basis", Words.BASIS, run.basis().value());
        out.objects(
                "sides",
                run.sides(),
                (side, entries) -> entries.put("from", TextKind.LENGTH, side.from())
                        .put("to", TextKind.LENGTH, side.to())
                        .putIfAny("basis", Words.BASIS, side.basis().value())
                        .putIfAny("post", TextKind.WORDS, side.post().value())
                        .putIfAny("hole", TextKind.LENGTH, side.hole().value())
                        .putIfAny("depth", TextKind.LENGTH, side.depth().value())
                        .putIfAny("maxBay", TextKind.LENGTH, side.maxBay().value()));
        if (!run.stain().isNone())
            out.object(
                    "stain",
                    stain -> stain.count("coats", run.stain().coats())
                            .put("texture", TEXTURE, run.stain().texture()));
    }

    private static void writeArc(Arc arc, Entries out) {
        out.put("radius", TextKind.LENGTH, arc.radius())
                .put("turn", Words.TURN, arc.left())
                .put("sagitta", TextKind.LENGTH, arc.sagitta());
    }

    private static String endKind(RunEnd end) {
        return end.match(free -> "free", wall -> "wall", joins -> "joins", theirs -> "neighbour");
    }

    private static void writeEnd(RunEnd end, Entries out) {
        end.match(
                free -> out,
                wall -> out.put("of", Words.WALL, wall.of()),
                joins -> out.words("run", joins.run()),
                theirs -> {
                    out.words("fence", theirs.fence());
                    return out.putIfAny(
                                    "height", TextKind.LENGTH, theirs.height().value())
                            .putIfAny("agreed", ANSWER, theirs.agreed().value());
                });
    }
}
