package plumbleaf.jobfile.job;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code builds.*.braces}: a number of tubes, or a word for what else keeps a leaf square; and {@code bracket}, the corner of a frame that is bolted. */
final class BracingForm {
    private static final List<String> KINDS = List.of("none", "one", "two", "x", "rod");
    private static final List<RodRuns> RUNS = List.of(RodRuns.values());
    private static final TextKind<RodRuns> RUN = TextKind.oneOf("how a rod runs", RUNS, RodRuns::key);

    private BracingForm() {}

    static Optional<Bracing> read(Fields build) {
        return build.countOrChoice("braces", 0, 2, KINDS).map(BracingForm::bracing);
    }

    private static Bracing bracing(Choice choice) {
        return switch (choice.kind()) {
            case "0", "none" -> Bracing.tubes(0);
            case "2", "two" -> Bracing.tubes(2);
            case "x" -> new Bracing.Cross();
            case "rod" ->
                new Bracing.Rod(
                        choice.fields().assumed("diameter", Words.ROD, Length.inches(0.375), Words.CUSTOM),
                        choice.fields()
                                .assumed(
                                        "pretension",
                                        TextKind.FORCE,
                                        Force.pounds(100),
                                        "a turnbuckle drawn up by hand, judgement"),
                        choice.fields()
                                .assumed(
                                        "runs", RUN, RodRuns.FROM_TOP_HINGE, "so that the leaf's own weight pulls it"));
            default -> Bracing.tubes(1);
        };
    }

    static void write(Bracing bracing, Entries out) {
        Entries written = bracing.match(
                tubes -> out.count("braces", tubes.count()),
                cross -> out.choice("braces", "x", rest -> {}),
                rod -> out.choice(
                        "braces",
                        "rod",
                        rest -> rest.put("diameter", TextKind.LENGTH, rod.diameter())
                                .put("pretension", TextKind.FORCE, rod.pretension())
                                .put("runs", RUN, rod.runs())));
        if (written != out) throw new IllegalStateException("A bracing was not written");
    }

    static Bracket bracket(Fields fields) {
        return new Bracket(
                Open.of(fields.given("play", TextKind.ANGLE).map(BracingForm::size)),
                Open.of(fields.given("momentPerDegree", TextKind.MOMENT)),
                Open.of(fields.given("capacity", TextKind.MOMENT)));
    }

    private static Angle size(Angle angle) {
        return Angle.radians(Math.abs(angle.radians()));
    }

    static void writeBracket(Bracket bracket, Entries out) {
        out.putIfAny("play", TextKind.ANGLE, bracket.play().value())
                .putIfAny(
                        "momentPerDegree", TextKind.MOMENT, bracket.turnsUnder().value())
                .putIfAny("capacity", TextKind.MOMENT, bracket.capacity().value());
    }
}
