package plumbleaf.documents.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines break between words, and never within a measure. */
class LetteringTest {
    @Test
    void feetStayWithTheirInchesAndANumberWithItsUnit() {
        assertThat(Lettering.words("above it 2' 1-1/4\" high; 1524 mm, or 5' it says 90 lb"))
                .containsExactly("above", "it", "2' 1-1/4\"", "high;", "1524 mm,", "or", "5'", "it", "says", "90 lb");
        String text = "Center of gravity 2' 1-1/4\" above the lower hinge corner.";
        for (double room = 0.9; room < 4; room += 0.01) {
            List<String> lines = Lettering.wrapped(text, room, Text.SMALL, Text.Weight.REGULAR);
            assertThat(lines).anyMatch(line -> line.contains("2' 1-1/4\""));
            assertThat(String.join(" ", lines)).isEqualTo(text);
        }
    }
}
