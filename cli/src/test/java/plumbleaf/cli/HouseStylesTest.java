package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A job in a style that only the house's own file knows. */
@Tag("slow")
class HouseStylesTest {
    private static final Path NURSERY = Path.of("..", "examples", "nursery-lane.json");

    private static final Pattern FIRST_COUNT =
            Pattern.compile("\"pickets\"\\s*:\\s*\\{[^}]*?\"count\"\\s*:\\s*([0-9]+)");

    private static final String STYLES = """
            { "format": "plumbleaf-styles", "version": 1, "source": "measured in our yard",
              "styles": [
                { "id": "our-wide-board", "name": "Wide board", "words": "cedar boards 7-1/4 in. wide",
                  "infill": { "kind": "upright", "board": { "width": "WIDE", "thickness": "3/4\\"", "species": "western_redcedar" },
                    "gap": "1/8\\"", "leastGap": "1/16\\"", "greatestGap": "3/8\\"", "leastRip": "3\\"", "top": "flat", "fasteners": 2 },
                  "rails": { "kind": "wood", "width": "3-1/2\\"", "thickness": "1-1/2\\"", "species": "western_redcedar",
                    "counts": [ { "upTo": "4'", "count": 2 }, { "upTo": "8'", "count": 3 } ], "edge": "7\\"" },
                  "posts": { "line": [ { "upTo": "8'", "size": "F1083-REG-2" } ] },
                  "source": "our foreman" } ] }
            """;

    @TempDir
    private Path folder = Path.of("");

    private Path job = Path.of("");
    private Path styles = Path.of("");

    @BeforeEach
    void write() throws IOException {
        job = Files.writeString(
                folder.resolve("job.json"),
                Files.readString(NURSERY).replaceFirst("\"style\": \"[a-z-]+\"", "\"style\": \"our-wide-board\""));
        styles = Files.writeString(folder.resolve("house.json"), STYLES.replace("WIDE", "7-1/4\\\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "design", "price"})
    void theStyleIsKnownWithTheFileAndRefusedWithoutIt(String verb) {
        Terminal without = Terminal.run(verb, job.toString());
        assertThat(without.code()).isEqualTo(2);
        assertThat(without.err()).contains("runs[0].style \"our-wide-board\"");
        Terminal with = Terminal.run(verb, job.toString(), "--styles", styles.toString());
        assertThat(with.code()).as(with.err()).isIn(0, 3);
    }

    @Test
    void thePapersAreWrittenInIt() {
        Path out = folder.resolve("papers");
        Terminal run = Terminal.run("papers", job.toString(), "--styles", styles.toString(), "--out", out.toString());
        assertThat(run.code()).as(run.err()).isIn(0, 3);
        assertThat(out.resolve("packet.pdf")).isNotEmptyFile();
    }

    /** The job's own file says 5-1/2 in. boards under the same id: more of them than of the house's. */
    @Test
    void whatTheJobNamesGoesBeforeIt() throws IOException {
        String house = Terminal.run("design", job.toString(), "--styles", styles.toString(), "--json")
                .out();
        Files.writeString(folder.resolve("own.json"), STYLES.replace("WIDE", "5-1/2\\\""));
        Files.writeString(job, Files.readString(job).replaceFirst("\\{", "{ \"styleFile\": \"own.json\","));
        String own = Terminal.run("design", job.toString(), "--styles", styles.toString(), "--json")
                .out();
        assertThat(boards(own)).isGreaterThan(boards(house));
    }

    private static int boards(String result) {
        Matcher count = FIRST_COUNT.matcher(result);
        assertThat(count.find()).isTrue();
        return Integer.parseInt(count.group(1));
    }

    @Test
    void aBadStyleFileIsRefusedWithItsPlace() throws IOException {
        Files.writeString(styles, STYLES.replace("\"WIDE\"", "\"wide\""));
        Terminal run = Terminal.run("design", job.toString(), "--styles", styles.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("house.json").contains("styles[0].infill.board.width");
        assertThat(run.out()).isEmpty();
    }
}
