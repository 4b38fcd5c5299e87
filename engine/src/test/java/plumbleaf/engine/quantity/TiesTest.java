package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TiesTest {
    @Test
    void theLastDigitsMakeNothingGreater() {
        assertThat(Ties.isMore(100 * (1 + 1e-12), 100)).isFalse();
        assertThat(Ties.isMore(100.001, 100)).isTrue();
        assertThat(Ties.isMore(0, -1)).isTrue();
        assertThat(Ties.isMore(0, 0)).isFalse();
    }

    @Test
    void ofThoseThatTieTheFirstIsNamed() {
        assertThat(Ties.most(List.of(3.0, 5.0, 5.0 + 1e-12, 4.0), value -> value))
                .isEqualTo(5.0);
        assertThat(Ties.most(List.of(3.0, 5.0, 5.1), value -> value)).isEqualTo(5.1);
        assertThatThrownBy(() -> Ties.most(List.<Double>of(), value -> value))
                .hasMessage("Of nothing there is no greatest");
    }

    @Test
    void ratiosStandInOrderByNineDecimals() {
        assertThat(Ties.inOrder(0.5 + 1e-13)).isEqualTo(Ties.inOrder(0.5));
        assertThat(Ties.inOrder(0.50000001)).isGreaterThan(Ties.inOrder(0.5));
        assertThat(Ties.inOrder(Double.MAX_VALUE)).isGreaterThan(Ties.inOrder(1e6));
    }
}
