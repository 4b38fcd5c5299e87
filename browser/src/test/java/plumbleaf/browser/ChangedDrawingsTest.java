package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.browser.PageDrawings.Shown;

/** A page that says what it shows is sent what has changed and nothing else, and has then what it would have been sent whole. */
class ChangedDrawingsTest {
    private static final List<String> ALL = List.of();

    private final PageBench bench = Books.bench();
    private final Map<String, String> shown = new HashMap<>();
    private String before = "";

    @BeforeEach
    void open() throws IOException {
        before = Files.readString(Path.of("..", "examples", "kiln-yard.json"), StandardCharsets.UTF_8);
        bench.design(before);
        for (Drawn each : Drawn.in(bench.laid(before, ALL, Shown.NOTHING)))
            shown.put(each.key(), each.svg().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                // The last of the run: the shot before it lies where its last two strips meet.
                "\"elevation\": \"-33\\\"\" | \"elevation\": \"-32\\\"\" | R1.1/ R1.2/",
                // One beside the run, under the way of the leaf, which clears it.
                "\"elevation\": \"-11\\\"\" | \"elevation\": \"-10\\\"\" | R1.1/",
                // The first of the run.
                "\"rod\": \"3' 11\\\"\" | \"rod\": \"3' 10\\\"\" | R1.0/",
            })
    void aShotDrawsTheStripsItLiesUnder(String was, String becomes, String strips) {
        String edited = edited(was, becomes);
        List<String> fresh = Drawn.in(bench.laid(edited, List.of("R1"), new Shown(keys(), List.of()))).stream()
                .filter(each -> each.svg().isPresent())
                .map(each -> each.key().replaceAll("/.*", "/"))
                .toList();
        assertThat(fresh).isEqualTo(List.of(strips.split(" ", -1)));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "\"elevation\": \"-10\\\"\" | \"elevation\": \"-12\\\"\"",
                "\"elevation\": \"-33\\\"\" | \"elevation\": \"-32\\\"\"",
                "\"station\": \"18'\", \"opening\" | \"station\": \"19'\", \"opening\"",
                "\"opening\": \"4'\" | \"opening\": \"4' 3\\\"\"",
                "\"hinge\": \"right\" | \"hinge\": \"left\"",
                "\"infill\": \"6'\" | \"infill\": \"5' 6\\\"\"",
                "\"maxBay\": \"8'\" | \"maxBay\": \"5'\"",
                "\"outside\": \"right\" | \"outside\": \"left\"",
                "\"display\": \"us\" | \"display\": \"metric\"",
                "\"style\": \"wood-side-by-side\" | \"style\": \"wood-spaced-picket\"",
                "\"kind\": \"free\" | \"kind\": \"wall\", \"of\": \"masonry\"",
            })
    void whatIsKeptAndWhatIsSentAreTogetherTheWholeAnswer(String was, String becomes) {
        String edited = edited(was, becomes);
        List<Drawn> whole = Drawn.in(bench.laid(edited, ALL, Shown.NOTHING));
        List<Drawn> sent = Drawn.in(bench.laid(edited, ALL, new Shown(keys(), List.of())));
        List<String> together = new ArrayList<>();
        for (Drawn each : sent) together.add(each.svg().orElseGet(() -> shown.getOrDefault(each.key(), "not shown")));
        assertThat(together)
                .isEqualTo(whole.stream().map(each -> each.svg().orElseThrow()).toList());
        assertThat(sent.stream().filter(each -> each.svg().isPresent()))
                .as("each that is sent has changed")
                .isNotEmpty()
                .noneMatch(each -> shown.containsValue(each.svg().orElseThrow()));
        assertThat(sent.stream().map(Drawn::key))
                .containsExactlyElementsOf(whole.stream().map(Drawn::key).toList());
    }

    @Test
    void whatIsNotOnTheScreenStaysUntilItIsAskedFor() {
        String edited = edited("\"elevation\": \"-10\\\"\"", "\"elevation\": \"-12\\\"\"");
        List<String> later =
                keys().stream().filter(key -> !key.startsWith("R1.0/")).toList();
        List<Drawn> sent = Drawn.in(bench.laid(edited, ALL, new Shown(keys(), later)));
        assertThat(sent.stream().filter(each -> each.svg().isPresent()).map(Drawn::key))
                .singleElement()
                .asString()
                .startsWith("R1.0/");
        assertThat(sent.stream().filter(each -> each.svg().isEmpty()).map(Drawn::key))
                .containsExactlyInAnyOrderElementsOf(later);
        List<String> then = sent.stream().map(Drawn::key).toList();
        List<String> rest = Drawn.in(bench.drawings(edited, List.of("R1"), new Shown(then, List.of()))).stream()
                .filter(each -> each.svg().isPresent())
                .map(each -> each.key().replaceAll("/.*", ""))
                .toList();
        assertThat(rest).contains("R1.1").doesNotContain("R1.0");
    }

    private List<String> keys() {
        return List.copyOf(shown.keySet());
    }

    private String edited(String was, String becomes) {
        String edited = before.replace(was, becomes);
        assertThat(edited).isNotEqualTo(before);
        return edited;
    }
}
