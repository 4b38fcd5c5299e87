package plumbleaf.cli;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.survey.ColumnOrder;
import plumbleaf.jobfile.survey.PointFile;
import plumbleaf.jobfile.survey.Separator;
import plumbleaf.jobfile.survey.ShotNode;
import plumbleaf.jobfile.survey.SurveyUnit;

/** A survey's point file as shots, shown or put into a job. */
@Command(
        name = "shots",
        description = "Reads a survey's point file (P,N,E,Z,D), says how it was read, and puts its points into a job as"
                + " shots.",
        mixinStandardHelpOptions = true)
final class ShotsVerb implements Callable<Integer> {
    @Parameters(paramLabel = "POINTS", description = "The point file: text, one point a line.")
    private Path points = Path.of("");

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "Order of the columns, such as PNEZD or ENZ; found out when left away.")
    private String order = "";

    @Option(
            names = "--units",
            paramLabel = "UNIT",
            description = "ft, us-ft, m, in or mm; ft when neither you nor the heading says.")
    private String units = "";

    @Option(
            names = "--separator",
            paramLabel = "WORD",
            description = "comma, tab, semicolon or space; found out when left away.")
    private String separator = "";

    @Option(names = "--into", paramLabel = "JOB", description = "A job file to add the shots to; needs --out.")
    private String into = "";

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the job with its new shots.")
    private String out = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        if (into.isEmpty() != out.isEmpty())
            throw BadInput.of("plumbleaf shots", "--into and --out go together", "give both, or neither to look only");
        PointFile file = PointFile.read(points.toString(), text(), said());
        if (!file.errors().isEmpty()) {
            answer.say(file.found());
            throw new BadInput(file.problems());
        }
        if (!into.isEmpty()) write(file, Path.of(into), Path.of(out));
        answer.document(Json.object()
                .put("file", points.toString())
                .put("separator", file.separator().key())
                .put("order", file.order().text())
                .put("units", file.unit().key())
                .put("eastOffFt", (double) file.eastOff())
                .put("northOffFt", (double) file.northOff())
                .put("found", file.found(), Json::text)
                .put("doubts", file.doubts(), InputError::json)
                .put("shots", file.shots(), ShotNode::of)
                .build());
        answer.say(points + ": " + file.shots().size() + " points");
        for (String sentence : file.found()) answer.say("  " + sentence);
        answer.say("  --separator, --order and --units say otherwise");
        answer.say(table(file.shots()).lines(2));
        for (InputError doubt : file.doubts()) answer.say("  line " + doubt.line() + ": " + doubt.problem());
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        return ExitCode.FINE;
    }

    private PointFile.Said said() {
        return new PointFile.Said(
                text(separator)
                        .map(word -> picked("--separator", word, Arrays.asList(Separator.values()), Separator::key)),
                text(order)
                        .map(letters -> ColumnOrder.of(letters)
                                .orElseThrow(() -> BadInput.of(
                                        "plumbleaf shots",
                                        "--order " + letters + " is no order of columns",
                                        "write N, E and Z once each, P and D where the file has them"))),
                text(units).map(word -> picked("--units", word, Arrays.asList(SurveyUnit.values()), SurveyUnit::key)));
    }

    private static Optional<String> text(String option) {
        return option.isEmpty() ? Optional.empty() : Optional.of(option);
    }

    private static <T> T picked(String option, String word, List<T> values, Function<T, String> key) {
        return TextKind.oneOf("a choice", values, key).read().apply(word).match(read -> read.is(), refused -> {
            throw BadInput.of("plumbleaf shots", option + " " + word + " is not known", refused.cure());
        });
    }

    private String text() {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(JobDoor.bytes(points)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw BadInput.of(points.toString(), "this is not UTF-8 text", "save it as plain text in UTF-8");
        }
    }

    private void write(PointFile file, Path job, Path to) {
        JobReading.Good read = JobDoor.job(job);
        if (read.is().ground().shots().stream()
                .anyMatch(shot ->
                        file.shots().stream().anyMatch(other -> other.id().equals(shot.id()))))
            throw BadInput.of(
                    job.toString(),
                    "it has shots of the same names as the point file",
                    "rename them in one of the two");
        Node root = JsonReader.read(new String(JobDoor.bytes(job), StandardCharsets.UTF_8))
                .match(tree -> tree.root(), broken -> Json.nothing());
        List<Node> shots = new ArrayList<>(NodePath.of("ground.shots")
                .find(root)
                .flatMap(Node::asArray)
                .map(array -> array.items())
                .orElse(List.of()));
        for (Shot shot : file.shots()) shots.add(ShotNode.of(shot));
        Node with = NodePath.of("ground.shots").set(root, Json.list(shots, is -> is));
        JobFile.read(to.toString(), with, JobDoor.catalogue(job)).match(good -> true, bad -> {
            throw new BadInput(bad.all());
        });
        Written.text(to, JsonWriter.write(with), over);
    }

    private static Columns table(List<Shot> shots) {
        Columns table = new Columns("lrrrl");
        table.row("shot", "east", "north", "elevation", "note");
        for (Shot shot : shots)
            table.row(
                    shot.id(),
                    LengthText.feetAndInches(ShotNode.east(shot).inches()),
                    LengthText.feetAndInches(ShotNode.north(shot).inches()),
                    LengthText.feetAndInches(ShotNode.elevation(shot).inches()),
                    shot.note());
        return table;
    }
}
