package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/** Whatever a verb is given that it cannot use: exit code 2, each error on a line of its own, nothing on stdout, no stack trace. */
class BadInputTest {
    private static final Path NURSERY = Path.of("..", "examples", "nursery-lane.json");

    @TempDir
    private Path folder = Path.of("");

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private void refused(Path file, String... lines) {
        Terminal run = Terminal.run("check", file.toString());
        assertThat(run.errorLines()).containsExactly(lines);
        assertThat(run.out()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
    }

    /** A leaf filled as its fence takes the fence's style, and of those only what stands up reaches over a frame. */
    @ParameterizedTest
    @CsvSource({
        "chain-link, chain-link fabric (chain-link)",
        "pipe-and-mesh, mesh (pipe-and-mesh)",
        "wood-horizontal, boards that lie (wood-horizontal)"
    })
    void whatCannotFollowACurvedTopIsRefusedInWords(String style, String what) throws IOException {
        String arched = Files.readString(NURSERY)
                .replaceFirst("\"style\": \"[a-z-]+\"", "\"style\": \"" + style + "\"")
                .replaceFirst("\"leaf\": \\{", "\"leaf\": { \"top\": { \"kind\": \"arched\", \"rise\": \"5\\\\\"\" },");
        Terminal run = Terminal.run("check", file("yard.json", arched).toString());
        assertThat(run.errorLines())
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .contains("gates[0].leaf.fill")
                        .contains(what + " ends at the straight top of the frame and follows no curve above it"));
        assertThat(run.code()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"opening\": \"4'\"|\"opening\": \"50\"|:55: gates[0].opening \"50\": a length needs its unit; write 50\" or 4' 2\"",
                "\"opening\": \"4'\"|\"opening\": \"1e9 ft\"|:55: gates[0].opening \"1e9 ft\": this is not a length;"
                        + " write 50\", 4' 2-1/2\" or 1270 mm",
                "\"opening\": \"4'\"|\"opening\": \"1000000000'\"|:55: gates[0].opening \"1000000000'\": this is longer than 157 miles;"
                        + " check the number and its unit",
                "\"station\": \"26'\", \"opening\"|\"station\": \"90'\", \"opening\"|:55: gates[0].station \"90'\": G1 reaches from 90' 0\" to"
                        + " 94' 0\", and R1 ends at 86' 0\"; move the gate, or make the run longer",
                "\"infill\": \"6'\"|\"infill\": \"0'\"|:49: runs[0].infill \"0'\": this must be more than zero;"
                        + " write a length above zero, or leave the key away",
                "\"kind\": \"swing\", \"run\": \"R1\"|\"kind\": \"swing\", \"run\": \"R9\"|:55: gates[0].run \"R9\": there is no run R9; write R1",
                "\"hinge\": \"left\"|\"hing\": \"left\"|:55: gates[0].hing: this key is not known here; write hinge",
                "\"maxBay\": \"8'\"|\"maxBay\": \"8'\", \"maxBay\": \"9'\"|:49: runs[0].maxBay: this key is there twice; keep one of them",
            })
    void aWrongValueIsNamedWithItsLineAndCure(String from, String to, String error) throws IOException {
        String nursery = Files.readString(NURSERY);
        assertThat(nursery).contains(from);
        Path file = file("yard.json", nursery.replace(from, to));
        Terminal run = Terminal.run("check", file.toString());
        assertThat(run.errorLines()).contains(file + error);
        assertThat(run.out()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
    }

    /** What was left empty is said once, where it stands, and no sentence has a hole in it. */
    @Test
    void anEmptySetupIsSaidOnce() throws IOException {
        String nursery = Files.readString(NURSERY);
        String from = "\"setup\": \"H1\"";
        assertThat(nursery).contains(from);
        Path file = file("yard.json", nursery.replaceFirst(from, "\"setup\": \"\""));
        assertThat(Terminal.run("check", file.toString()).errorLines())
                .singleElement()
                .asString()
                .endsWith(".setup: a text is missing; write it, or leave the key away");
    }

    /** A limit is told in the units that the value was written in. */
    @Test
    void aLimitIsToldInTheUnitsOfTheValue() throws IOException {
        String nursery = Files.readString(NURSERY);
        Path file = file("yard.json", nursery.replace("\"opening\": \"4'\"", "\"opening\": \"90 m\""));
        assertThat(Terminal.run("check", file.toString()).errorLines())
                .anyMatch(
                        line -> line.endsWith(
                                "gates[0].opening \"90 m\": this is more than 12.2 m, the most here; check the number and its unit"));
    }

    @Test
    void notJson() throws IOException {
        Path file = file("yard.json", "Kiln yard, 46 ft\n");
        refused(
                file,
                file + ":1: this is not JSON: expected value; check the comma, quote or bracket here or just before");
    }

    @Test
    void anEmptyFile() throws IOException {
        Path file = file("yard.json", "");
        refused(file, file + ":1: the file is empty; start one with plumbleaf new");
    }

    @Test
    void aFileOf50Megabytes() throws IOException {
        Path file = folder.resolve("yard.json");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(50L * 1024 * 1024);
        }
        refused(file, file + ": the file is 50 MiB, and 32 MiB is the most; give a smaller file");
    }

    @Test
    void aFolder() {
        refused(folder, folder + ": this is a folder; name a file in it");
    }

    @Test
    void noFile() {
        Path file = folder.resolve("yard.json");
        refused(file, file + ": there is no such file; check the name and the folder");
    }

    @Test
    void aRunThatIsMissing() throws IOException {
        Path file = file("yard.json", "{ \"format\": \"plumbleaf-job\", \"version\": 1 }\n");
        refused(
                file,
                file
                        + ":1: runs: a job needs a run; write \"runs\": [ { ... } ], or \"draft\": true while you are at it");
    }

    @Test
    void withJsonTheErrorsAreOneDocument() throws IOException {
        Path file = file("yard.json", Files.readString(NURSERY).replace("\"opening\": \"4'\"", "\"opening\": \"50\""));
        Terminal run = Terminal.run("check", "--json", file.toString());
        assertThat(run.code()).isEqualTo(2);
        Node document = JsonReader.read(run.out()).match(tree -> tree.root(), broken -> {
            throw new AssertionError(broken);
        });
        assertThat(NodePath.of("errors[0].field").find(document).flatMap(Node::asText))
                .contains("gates[0].opening");
        assertThat(NodePath.of("errors[0].line").find(document).flatMap(Node::asNumber))
                .contains("55");
        assertThat(NodePath.of("errors[0].cure").find(document).flatMap(Node::asText))
                .contains("write 50\" or 4' 2\"");
        assertThat(run.errorLines()).hasSize(1);
    }

    @Test
    void aWrongVerbOrOption() {
        Terminal verb = Terminal.run("chekc");
        assertThat(verb.errorLines())
                .containsExactly("plumbleaf: unmatched argument at index 0: 'chekc'; did you mean check?");
        assertThat(verb.code()).isEqualTo(2);
        Terminal option = Terminal.run("check", "--jsn", "x");
        assertThat(option.errorLines()).hasSize(1).first().asString().startsWith("plumbleaf check: unknown option");
        assertThat(option.code()).isEqualTo(2);
        Terminal missing = Terminal.run("check");
        assertThat(missing.errorLines())
                .containsExactly("plumbleaf check: missing required parameter: 'FILE'; see plumbleaf check --help");
        assertThat(missing.code()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "[1,2]",
                "null",
                "\"x\"",
                "{\"runs\": 7}",
                "{\"runs\": [[]]}",
                "{\"site\": []}",
                "{\"builds\": {\"R1\": 3}}",
                "\u0000"
            })
    void nothingIsEverAStackTrace(String text) throws IOException {
        Terminal run = Terminal.run("check", file("odd.json", text).toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(run.out()).isEmpty();
    }
}
