package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

class LyingRowTest {
    private static final Board BOARD = new Board(Length.inches(5.5), Length.inches(1), "cedar");
    private static final Spacing GAPS =
            new Spacing(Offset.inches(0.25), Offset.inches(0.125), Offset.inches(0.5), Length.inches(2.5));

    /** 12 boards and 11 gaps in 72 in.: 66 in. of wood, 6/11 in. is too wide; 13 need 71.5 in., 1/24 in. is too tight: the highest is ripped. */
    @Test
    void ripsTheHighestWhereWholeBoardsDoNotFit() {
        LyingRow row = LyingRow.up(Length.inches(72), BOARD, GAPS);
        assertThat(row.fits()).isTrue();
        assertThat(row.boards()).isEqualTo(13);
        assertThat(row.gap().inches()).isEqualTo(0.25);
        assertThat(row.top().inches()).isCloseTo(72 - 12 * 5.75, within(1e-9));
    }

    @Test
    void takesWholeBoardsWhereAGapInRangeFillsTheHeight() {
        LyingRow row = LyingRow.up(Length.inches(12 * 5.5 + 11 * 0.3), BOARD, GAPS);
        assertThat(row.boards()).isEqualTo(12);
        assertThat(row.gap().inches()).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void fillsAnyHeight() {
        for (double high = 30; high < 145; high += 0.37) {
            LyingRow row = LyingRow.up(Length.inches(high), BOARD, GAPS);
            double filled =
                    (row.boards() - 1) * (5.5 + row.gap().inches()) + row.top().inches();
            assertThat(filled).as("height " + high).isCloseTo(high, within(1e-9));
            assertThat(row.middles(BOARD.width())).hasSize(row.boards());
        }
    }

    /** A lap of 1 in. across 1-1/2 in. of rail: seen through from 33.7 degrees. */
    @Test
    void sightThroughAShadowbox() {
        Boarding shadowbox = new Boarding(
                BOARD, GAPS, BoardTop.FLAT, true, new Board(Length.inches(3.5), Length.inches(1.5), "cedar"), 2);
        assertThat(SightThrough.of(shadowbox, Offset.inches(-1)).inDegrees()).isCloseTo(33.69, within(0.005));
        assertThat(SightThrough.of(shadowbox, Offset.inches(0.1)).inDegrees()).isZero();
        Boarding twoLayers = new Boarding(
                BOARD, GAPS, BoardTop.FLAT, false, new Board(Length.inches(3.5), Length.inches(1.5), "cedar"), 2);
        assertThat(SightThrough.of(twoLayers, Offset.inches(-0.2)).inDegrees()).isCloseTo(90, within(1e-9));
    }
}
