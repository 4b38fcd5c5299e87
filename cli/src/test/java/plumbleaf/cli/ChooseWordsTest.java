package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What choose answers, each answer by a gate that brings it: some cheaper fail, none is cheaper, all is given, nothing passes; and what a search says of it in the design. */
@Tag("slow")
class ChooseWordsTest {
    private static final String NURSERY =
            Path.of("..", "examples", "nursery-lane.json").toString();
    private static final String JOINT = ", \"joint\": \"mitered\"";
    private static final String DEPTH = ",\n      \"hole\": \"12\\\"\", \"depth\": \"36\\\"\"";
    private static final String BUILD = "TUBE-2x2x0.083 1 mitered F1083-REG-2.5 F1083-REG-2.5 12\" x ";

    @TempDir
    private Path folder = Path.of("");

    /** The nursery's gate with something about its build said in another way, or left open. */
    private Path gate(String joint, String depth) throws IOException {
        String job = Files.readString(Path.of(NURSERY));
        assertThat(job).containsOnlyOnce(JOINT).containsOnlyOnce(DEPTH);
        return with(job.replace(JOINT, joint).replace(DEPTH, depth));
    }

    private Path with(String job) throws IOException {
        return Files.writeString(folder.resolve("job.json"), job);
    }

    private static String hole(String depth) {
        return ",\n      \"hole\": \"12\\\"\", \"depth\": \"" + depth + "\\\"\"";
    }

    private static List<String> said(int code, Path job) {
        Terminal run = Terminal.run("choose", job.toString());
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(code);
        return run.out().lines().toList();
    }

    /** The same job with both gate posts there already. */
    private static String standing(Path job) throws IOException {
        return Files.readString(job)
                .replace("Post\": { \"support\": \"new-footing\" }", "Post\": { \"support\": \"existing\" }");
    }

    private static String found(Path job) {
        return Terminal.run("design", job.toString(), "--json").out();
    }

    @Test
    void eachCheaperOneIsNamedWithItsPriceAndWhatItFails() throws IOException {
        Path job = gate(JOINT, ",\n      \"hole\": \"12\\\"\"");
        List<String> lines = said(0, job);
        assertThat(lines.get(0)).isEqualTo("G1: 8 builds in all");
        assertThat(lines.get(1)).startsWith("  chosen  " + BUILD + "42\"  $");
        assertThat(lines.subList(2, 5)).allMatch(line -> line.startsWith("  next    " + BUILD));
        assertThat(lines.get(5))
                .isEqualTo("  What each further 1/16 in. less of drop after hanging in soft soil costs:");
        assertThat(lines.get(6)).matches(" {4}1/8\" and less +\\+\\$[0-9.]+ {2}TUBE.*48\"");
        assertThat(lines.get(7)).matches(" {4}1/16\" and less +\\+\\$[0-9.]+ {2}TUBE.*60\"");
        assertThat(lines.get(8)).isEqualTo("  2 cheaper ones fail, each for a reason:");
        assertThat(lines.get(9)).endsWith(BUILD + "30\": drops 3/4\" after hanging in soft soil");
        assertThat(lines.get(10)).endsWith(BUILD + "36\": drops 3/8\" after hanging in soft soil");
        assertThat(lines).hasSize(11);
        assertThat(found(job))
                .contains("G1: the cheapest of 8 builds that passes; each of the 2 cheaper ones fails a check.");
    }

    @Test
    void whereNoneIsCheaperThatIsTheProof() throws IOException {
        Path job = gate("", hole("42"));
        List<String> lines = said(0, job);
        assertThat(lines).startsWith("G1: 2 builds in all").endsWith("  None is cheaper.");
        assertThat(lines.get(1)).startsWith("  chosen  TUBE-2x2x0.083 1 butted ");
        assertThat(lines.get(2)).startsWith("  next    TUBE-2x2x0.083 1 mitered ");
    }

    @Test
    void theDesignSaysTheSameOfHolesLeftOpen() throws IOException {
        Path job = gate(JOINT, ",\n      \"depth\": \"42\\\"\"");
        assertThat(said(0, job)).endsWith("  None is cheaper.");
        assertThat(found(job)).contains(" builds that passes; none is cheaper.");
    }

    @Test
    void whereAllIsGivenAndPassesNothingWasChosen() throws IOException {
        Path job = gate(JOINT, hole("42"));
        assertThat(said(0, job))
                .startsWith("G1: 1 build in all")
                .endsWith("  All of its build is given: nothing was left to choose.");
    }

    @Test
    void whereAllIsGivenAndFailsItsReasonIsNamed() throws IOException {
        List<String> lines = said(3, gate(JOINT, DEPTH));
        assertThat(lines).startsWith("G1: 1 build in all", "  No build passes.", "  It fails, for a reason:");
        assertThat(lines.get(3)).endsWith(BUILD + "36\": drops 3/8\" after hanging in soft soil");
        assertThat(lines).hasSize(4);
    }

    /** Where thousands fail the dearest eight say little: each kind of reason is said once, with how many it is of. */
    @Test
    void whereNothingPassesEachKindOfReasonIsSaidOnce() throws IOException {
        Path job = gate("", ",\n      \"hole\": \"12\\\"\", \"depth\": \"30\\\"\"");
        Files.writeString(
                job, Files.readString(job).replace("\"frame\": \"TUBE-2x2x0.083\", \"braces\": 1", "\"braces\": 1"));
        List<String> lines = said(3, job);
        assertThat(lines.get(1)).isEqualTo("  No build passes.");
        assertThat(lines.get(2)).matches(" {2}\\d+ fail, for 2 reasons; the last in order of price of each:");
        assertThat(lines.subList(3, 5))
                .anyMatch(line -> line.matches(" {4}\\d+ like \\$.*its frame is 3\" thick.*"))
                .anyMatch(line -> line.matches(" {4}\\d+ like \\$.*drops .* after hanging in soft soil"));
        assertThat(lines).hasSize(6).last().asString().endsWith("--json lists them all");
        assertThat(found(job)).contains(" builds passes; the usual one is shown.");
    }

    /** With its posts standing and the rest given there is one build, and the design does not speak of others. */
    @Test
    void whereOneBuildIsLeftThatFailsTheDesignSaysSo() throws IOException {
        String text = standing(gate(JOINT, DEPTH));
        String posts = ", \"hingePost\": \"F1083-REG-2.5\", \"latchPost\": \"F1083-REG-2.5\"";
        assertThat(text).containsOnlyOnce(posts);
        Path job = with(text.replace(posts, ""));
        assertThat(said(3, job)).startsWith("G1: 1 build in all", "  No build passes.");
        assertThat(found(job))
                .contains("G1: all of its build is given, and it fails a check. Shorten the leaf")
                .doesNotContain("none of 1 build");
    }

    /** A post that stands is there: it is neither sold nor looked for, so a gate between two of them is a choice of leaves. */
    @Test
    void aPostThatStandsIsNotChosen() throws IOException {
        Path job = gate(JOINT, DEPTH);
        String text = standing(job);
        int builds = text.indexOf("\"G1\": {\n      \"frame\"");
        with(text.substring(0, builds - 6) + text.substring(text.indexOf('}', builds) + 1));
        String out = Terminal.run("choose", job.toString(), "--json").out();
        assertThat(out)
                .contains("\"builds\": 240", " F1083-REG-2.5 F1083-REG-2.5 ")
                .doesNotContain(" F1083-REG-3 ", " F1083-REG-4 ");
    }
}
