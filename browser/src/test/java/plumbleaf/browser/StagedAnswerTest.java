package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.browser.PageDrawings.Shown;

/** An edit is answered in three steps, and each shows what the next one keeps: what is drawn at once is not drawn otherwise a moment later. */
class StagedAnswerTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "kiln-yard.json | G1 | \"opening\": \"4'\" | \"opening\": \"4' 3\\\"\"",
                "kiln-yard.json | G1 | \"hinge\": \"right\" | \"hinge\": \"left\"",
                "kiln-yard.json | G1 | \"infill\": \"6'\" | \"infill\": \"5' 6\\\"\"",
                "gannet-spit.json | G1 | \"swing\": \"in\" | \"swing\": \"out\"",
                "fallow-gate.json | G1 | \"infill\": \"6'\" | \"infill\": \"5' 6\\\"\""
            })
    void whatIsDrawnAtOnceStays(String example, String gate, String was, String becomes) throws IOException {
        String before = Files.readString(Path.of("..", "examples", example), StandardCharsets.UTF_8);
        String edited = before.replace(was, becomes);
        assertThat(edited).isNotEqualTo(before);
        PageBench bench = Books.bench();
        bench.design(before);

        List<String> atOnce = drawn(bench.laid(edited, List.of(), Shown.NOTHING), gate);
        String unpriced = bench.unpriced(edited);
        String whole = bench.design(edited);

        // Every line of them stays; where a leaf drops onto the ground, which only its frame tells, a line more comes.
        assertThat(atOnce).isNotEmpty();
        assertThat(drawn(bench.drawings(edited, List.of(), Shown.NOTHING), gate))
                .containsSubsequence(atOnce);
        assertThat(whole).isEqualTo(Books.bench().design(edited));
        assertThat(unpriced).isEqualTo(whole.replaceAll(",\\s*\"priceChange\": \"[^\"]*\"", ""));
    }

    /** Each line of what is drawn of a part. */
    private static List<String> drawn(String json, String of) {
        return Drawn.in(json).stream()
                .filter(drawing -> drawing.of().equals(of))
                .flatMap(drawing -> drawing.svg().orElseThrow().lines())
                .toList();
    }
}
