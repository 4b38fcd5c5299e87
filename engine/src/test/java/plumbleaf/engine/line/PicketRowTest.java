package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

class PicketRowTest {
    private static final Board BOARD = new Board(in(5.5), in(0.625), "western_redcedar");
    private static final Spacing SIDE_BY_SIDE =
            new Spacing(Offset.inches(0.125), Offset.inches(0.0625), Offset.inches(0.25), in(2.5));
    private static final Spacing LAPPED =
            new Spacing(Offset.inches(-1), Offset.inches(-1.5), Offset.inches(-0.75), in(3));

    private static Length in(double inches) {
        return Length.inches(inches);
    }

    @Test
    void wholePicketsTakeTheGapNearestToTheWantedOne() {
        PicketRow row = PicketRow.across(in(17 * 5.5 + 16 * 0.125), BOARD, SIDE_BY_SIDE);
        assertThat(row).isEqualTo(new PicketRow(true, Offset.inches(0.125), 17, in(5.5)));
        PicketRow wider = PicketRow.across(in(17 * 5.5 + 16 * 0.2), BOARD, SIDE_BY_SIDE);
        assertThat(wider.boards()).isEqualTo(17);
        assertThat(wider.gap().inches()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void whereNoneFitsTheEndPicketsAreRippedAlike() {
        PicketRow row = PicketRow.across(in(4 * 5.5 + 5 * 0.125 + 2 * 3.25), BOARD, SIDE_BY_SIDE);
        assertThat(row.fits()).isTrue();
        assertThat(row.boards()).isEqualTo(6);
        assertThat(row.gap()).isEqualTo(Offset.inches(0.125));
        assertThat(row.endWidth().inches()).isCloseTo(3.25, within(1e-9));
    }

    @Test
    void tooLittleForTwoRipsIsMarked() {
        PicketRow row = PicketRow.across(in(7), BOARD, SIDE_BY_SIDE);
        assertThat(row.fits()).isTrue();
        assertThat(row.endWidth().inches()).isCloseTo(3.4375, within(1e-9));
        assertThat(PicketRow.across(in(4), BOARD, SIDE_BY_SIDE).fits()).isFalse();
    }

    @Test
    void boardsAndGapsAddUpToTheStretch() {
        for (double stretch = 20; stretch < 400; stretch += 0.37) {
            PicketRow row = PicketRow.across(in(stretch), BOARD, SIDE_BY_SIDE);
            List<Length> edges = row.edges(BOARD.width());
            int last = edges.size() - 1;
            double end =
                    edges.get(last).inches() + row.widthOf(last, BOARD.width()).inches();
            assertThat(end).isCloseTo(stretch, within(1e-9));
            if (row.fits()) assertThat(row.gap().inches()).isBetween(0.0625 - 1e-9, 0.25 + 1e-9);
        }
    }

    /** 266 pitches of 4-1/2 in. and a board is 1,202.5 in.: in 1,200 the laps come out at 1.0094 in. */
    @Test
    void boardOnBoardIsOddAndLaps() {
        PicketRow row = PicketRow.across(in(1200), BOARD, LAPPED);
        assertThat(row.fits()).isTrue();
        assertThat(row.boards()).isEqualTo(267);
        assertThat(row.gap().inches()).isCloseTo(-(5.5 - 1194.5 / 266), within(1e-9));
    }

    @Test
    void lappedBoardsAreOddOverAnyStretch() {
        for (double total = 20; total < 300; total += 0.37) {
            PicketRow row = PicketRow.across(in(total), BOARD, LAPPED);
            if (!row.fits()) continue;
            assertThat(row.boards() % 2).as("boards over " + total).isEqualTo(1);
            double across = 2 * row.endWidth().inches()
                    + (row.boards() - 2) * 5.5
                    + (row.boards() - 1) * row.gap().inches();
            assertThat(across).as("across " + total).isCloseTo(total, within(1e-9));
            assertThat(row.gap().inches()).isBetween(-1.5 - 1e-9, -0.75 + 1e-9);
        }
    }
}
