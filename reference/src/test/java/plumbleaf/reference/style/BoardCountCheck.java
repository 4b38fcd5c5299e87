package plumbleaf.reference.style;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.line.PicketRow;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/**
 * Boards in a hundred feet, as the trade counts them.
 * Source: common practice, no source: 218 boards of 5-1/2 in. tight, 267 board on board with 1 in. laps.
 * Tolerance: none on the laps; the program leaves 1/8 in. between boards side by side, which makes 213 of 218.
 */
class BoardCountCheck {
    private static PicketRow hundredFeetOf(String id) {
        Boarding boards =
                StandardCatalogue.load().style(id).flatMap(FenceStyle::boarding).orElseThrow();
        return PicketRow.across(Length.feet(100), boards.board(), boards.spacing());
    }

    @Test
    void boardOnBoardTakes267() {
        assertThat(hundredFeetOf("wood-board-on-board").boards()).isEqualTo(267);
        assertThat(hundredFeetOf("wood-shadowbox").boards()).isEqualTo(267);
    }

    @Test
    void sideBySideTakesAFewLessThanTight() {
        assertThat(hundredFeetOf("wood-side-by-side").boards()).isBetween(212, 218);
    }
}
