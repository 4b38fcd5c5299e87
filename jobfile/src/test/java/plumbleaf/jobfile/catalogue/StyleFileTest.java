package plumbleaf.jobfile.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.schema.SchemaFile;

/** Style files: the published schema, the reader and the styles that come with the program hold to each other. */
class StyleFileTest {
    private static final SchemaFile SCHEMA = SchemaFile.read("styles.schema.json");
    private static final String STANDARD =
            text(Path.of("src", "main", "resources", "plumbleaf", "jobfile", "catalogue", "styles.json"));
    static final String ALL_KINDS =
            text(Path.of("src", "test", "resources", "plumbleaf", "jobfile", "catalogue", "all-kinds.json"));

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<FenceStyle> good(String text) {
        return StyleFile.read("styles.json", text).match(StyleReading.Good::styles, bad -> {
            throw new AssertionError(bad.all().get(0).text());
        });
    }

    private static List<String> errors(String text) {
        return StyleFile.read("our-styles.json", text)
                .match(
                        good -> List.of(),
                        bad -> bad.all().stream().map(InputError::text).toList());
    }

    @Test
    void theSchemaKnowsEveryKeyOfTheReaderAndNoOther() {
        Map<String, Set<String>> reader = new TreeMap<>();
        StyleFile.keysAskedFor(ALL_KINDS).forEach((object, keys) -> reader.put(object, new TreeSet<>(keys)));
        Map<String, Set<String>> schema = SCHEMA.keys();
        assertThat(schema.keySet()).containsExactlyElementsOf(reader.keySet());
        reader.forEach((object, keys) ->
                assertThat(schema.get(object)).as("keys of " + object).containsExactlyInAnyOrderElementsOf(keys));
    }

    @Test
    void theStylesThatComeWithTheProgramAreAsTheSchemaSays() {
        assertThat(SCHEMA.errors(STANDARD)).isEmpty();
        assertThat(SCHEMA.errors(ALL_KINDS)).isEmpty();
        assertThat(good(STANDARD)).extracting(FenceStyle::id).doesNotHaveDuplicates();
        assertThat(good(ALL_KINDS)).hasSize(6);
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() {
        String wrong = ALL_KINDS
                .replace("\"name\": \"Upright\", ", "")
                .replace("\"top\": \"gothic\"", "\"top\": \"gothik\"")
                .replace("\"leastGap\": \"1/16\\\"\"", "\"leastGap\": \"2\\\"\"")
                .replace("\"id\": \"our-mesh\"", "\"id\": \"our-fabric\"");
        assertThat(errors(wrong))
                .containsExactly(
                        "our-styles.json:5: styles[0].name: this is needed and missing; write \"name\": \"a few words\"",
                        "our-styles.json:10: styles[0].infill.leastGap \"2\"\": this is more than the gap; write the same or less",
                        "our-styles.json:11: styles[0].infill.top \"gothik\": this is not a top of a board; write gothic",
                        "our-styles.json:64: styles[5].id \"our-fabric\": our-fabric is the id of a style above; give this one another");
    }

    @Test
    void whatIsLeftOutIsNamed() {
        assertThat(errors("{ \"format\": \"plumbleaf-styles\", \"version\": 1, \"source\": \"us\", \"styles\": [ {"
                        + " \"id\": \"a\", \"name\": \"A\", \"words\": \"a\", \"source\": \"us\" } ] }"))
                .containsExactly(
                        "our-styles.json:1: styles[0]: a style says what fills its bays; write \"infill\": { \"kind\": \"upright\", ... }",
                        "our-styles.json:1: styles[0].posts.line: a style names its usual line posts;"
                                + " write \"line\": [ { \"upTo\": \"6'\", \"size\": \"F1083-REG-2\" } ]");
    }

    @Test
    void whatAUsersFileNamesMustBeInTheCatalogue() {
        Catalogue known = StandardCatalogue.load();
        int styles = StyleFile.added("our-styles.json", ALL_KINDS.getBytes(StandardCharsets.UTF_8), known)
                .match(good -> known.withStyles(good.styles()).styles().size(), bad -> -1);
        assertThat(styles).isEqualTo(known.styles().size() + 6);
        String wrong = ALL_KINDS
                .replace("\"picket\": \"TUBE-1x1x0.065\"", "\"picket\": \"TUBE-9x9\"")
                .replace("\"size\": \"LIGHT-1.900x0.065\"", "\"size\": \"OAK-4x4\"")
                .replace("\"rails\": \"none\",\n", "");
        List<String> errors = StyleFile.added("our-styles.json", wrong.getBytes(StandardCharsets.UTF_8), known)
                .match(
                        good -> List.of(),
                        bad -> bad.all().stream().map(InputError::text).toList());
        assertThat(errors)
                .containsExactly(
                        "our-styles.json: style our-panel: there is no section TUBE-9x9; write one such as TUBE-1x1x0.065",
                        "our-styles.json: style our-fabric: there is no post OAK-4x4; write one such as F1083-REG-2 or PINE-4x4");
    }

    @Test
    void aJobNamesItsStyleFile() {
        assertThat(StyleFile.namedBy("{ \"styleFile\": \"ours.json\" }".getBytes(StandardCharsets.UTF_8)))
                .contains("ours.json");
        assertThat(StyleFile.namedBy("not json".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
    }
}
