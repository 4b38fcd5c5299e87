package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An edit is answered in three steps, and each shows what the next one keeps: what is drawn at once is not drawn otherwise a moment later. */
class StagedAnswerTest {
    /** Drawings as the engine writes them: whose, and what is shown. */
    private static final Pattern DRAWING = Pattern.compile(
            "\"of\": \"([^\"]*)\",\\s*\"key\": \"[^\"]*\",\\s*\"name\": \"[^\"]*\",\\s*(\"svg\": [^\\n]*)");

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
        PageBench bench = PageBench.ofTheProgram();
        bench.design(before);

        List<String> atOnce = drawn(bench.laid(edited, List.of(), List.of()), gate);
        String unpriced = bench.unpriced(edited);
        String whole = bench.design(edited);

        // Every line of them stays; where a leaf drops onto the ground, which only its frame tells, a line more comes.
        assertThat(atOnce).isNotEmpty();
        assertThat(drawn(bench.drawings(edited, List.of(), List.of()), gate)).containsSubsequence(atOnce);
        assertThat(whole).isEqualTo(PageBench.ofTheProgram().design(edited));
        assertThat(unpriced).isEqualTo(whole.replaceAll(",\\s*\"priceChange\": \"[^\"]*\"", ""));
    }

    private static List<String> drawn(String json, String of) {
        List<String> drawings = new ArrayList<>();
        Matcher drawing = DRAWING.matcher(json);
        while (drawing.find())
            if (drawing.group(1).equals(of))
                drawings.addAll(List.of(drawing.group(2).split("\\\\n")));
        return drawings;
    }
}
