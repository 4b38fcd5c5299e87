package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DisplayUnitsTest {
    @Test
    void whatWeighsLittleDoesNotWeighNothing() {
        assertThat(DisplayUnits.US.weight(0.3)).isEqualTo("under 1 lb");
        assertThat(DisplayUnits.US.weight(0.5)).isEqualTo("1 lb");
        assertThat(DisplayUnits.US.weight(0)).isEqualTo("0 lb");
        assertThat(DisplayUnits.US.weight(107.2)).isEqualTo("107 lb");
        assertThat(DisplayUnits.METRIC.weight(0.05)).isEqualTo("under 0.1 kg");
        assertThat(DisplayUnits.METRIC.weight(0.3)).isEqualTo("0.1 kg");
        assertThat(DisplayUnits.METRIC.weight(0)).isEqualTo("0 kg");
    }
}
