package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.quantity.Length;

class PicketRowTest {
    @Test
    void wholeBoardsWithAGapNearestToTheWantedOne() {
        // 8 boards of 5.5 in 45 in.: 1 in. over 7 gaps.
        PicketRow row = PicketRow.across(Length.inches(45), GateSamples.sideBySide());
        assertThat(row.boards()).isEqualTo(8);
        assertThat(row.gap().inches()).isCloseTo(1.0 / 7, within(1e-12));
        assertThat(row.endWidth()).isEqualTo(Length.inches(5.5));
    }

    @Test
    void whereWholeBoardsDoNotFitTheTwoEndsAreRippedAlike() {
        // 48 in.: 8 boards leave gaps of 4/7, too wide; 9 boards do not fit. Ends (48 - 7 x 5.5 - 8 x 1/8) / 2 = 4.25.
        PicketRow row = PicketRow.across(Length.inches(48), GateSamples.sideBySide());
        assertThat(row.boards()).isEqualTo(9);
        assertThat(row.endWidth().inches()).isCloseTo(4.25, within(1e-12));
        assertThat(row.gap()).isEqualTo(Length.inches(0.125));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 24.3, 30, 33.7, 40, 44.4, 46.625, 50.1, 58, 61.9, 70.2, 95, 110.5, 144})
    void aRowAlwaysFillsItsStretch(double stretchIn) {
        PicketRow row = PicketRow.across(Length.inches(stretchIn), GateSamples.sideBySide());
        List<double[]> edges = row.edges(Length.inches(5.5));
        double[] last = edges.get(edges.size() - 1);
        assertThat(last[0] + last[1]).isCloseTo(stretchIn, within(1e-9));
        if (row.fits()) {
            assertThat(row.gap().inches()).isBetween(0.0625 - 1e-9, 0.25 + 1e-9);
            assertThat(row.endWidth().inches()).isBetween(2.5, 5.5);
        }
    }
}
