package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.web.page.Table;

class VeilTest {
    /** A remedy that says what it costs does not take all other remedies with it; the price column goes as a whole. */
    @Test
    void aColumnOfWordsStaysWithoutTheAmountInOneOfThem() {
        Table veiled = Veil.table(new Table(
                "Ways, from $1,200",
                List.of("Part", "Instead", "Price"),
                List.of(
                        new Table.Line("P1", List.of("P1", "a thicker post, $86.40 more", "$1,286.40")),
                        new Table.Line("P2", List.of("P2", "a deeper hole", "")),
                        new Table.Line("P3", List.of("P3", "")))));
        assertThat(veiled.caption()).isEqualTo("Ways, from\u2026");
        assertThat(veiled.heads()).containsExactly("Part", "Instead");
        assertThat(veiled.lines())
                .extracting(Table.Line::cells)
                .containsExactly(
                        List.of("P1", "a thicker post,\u2026 more"), List.of("P2", "a deeper hole"), List.of("P3", ""));
    }
}
