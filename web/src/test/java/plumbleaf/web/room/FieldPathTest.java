package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldPathTest {
    @ParameterizedTest
    @CsvSource({
        "title, title",
        "gates[G1].leaf.hingeGap, gates/[G1]/leaf/hingeGap",
        "ground.shots[2].elevation, ground/shots/[2]/elevation",
        "site.soil.layers[a-1.b_2], site/soil/layers/[a-1.b_2]",
        "lists[0][1], lists/[0]/[1]",
        "by-law.x9, by-law/x9",
    })
    void aPathIsReadStepByStep(String text, String steps) {
        assertThat(FieldPath.of(text).steps().stream()
                        .map(step -> step.item() ? "[" + step.name() + "]" : step.name())
                        .collect(Collectors.joining("/")))
                .isEqualTo(steps);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".title",
                "title.",
                "9lives",
                "a..b",
                "gates[]",
                "gates[G1",
                "gates[G1]leaf",
                "gates[a b]",
                "gates[a-name-of-over-twenty-signs]",
                "título",
                "a/b",
                "-a",
            })
    void whatIsNoPathIsRefused(String text) {
        assertThatThrownBy(() -> FieldPath.of(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {201, 5000})
    void aPathWithoutEndIsRefused(int signs) {
        assertThatThrownBy(() -> FieldPath.of("a".repeat(signs))).isInstanceOf(IllegalArgumentException.class);
    }
}
