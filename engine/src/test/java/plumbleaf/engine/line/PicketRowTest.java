package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.RailCount;
import plumbleaf.engine.quantity.Length;

class PicketRowTest {
    private static final FenceStyle STYLE = new FenceStyle(
            "wood",
            "Wood",
            in(5.5),
            in(0.625),
            "western_redcedar",
            in(3.5),
            in(1.5),
            "western_redcedar",
            List.of(new RailCount(in(999), 3)),
            in(0.125),
            in(0.0625),
            in(0.25),
            in(2.5),
            in(7),
            1,
            2,
            "common practice, no source");

    private static Length in(double inches) {
        return Length.inches(inches);
    }

    @Test
    void wholePicketsTakeTheGapNearestToTheWantedOne() {
        PicketRow row = PicketRow.across(in(17 * 5.5 + 16 * 0.125), STYLE);
        assertThat(row).isEqualTo(new PicketRow(true, in(0.125), 17, in(5.5)));
        PicketRow wider = PicketRow.across(in(17 * 5.5 + 16 * 0.2), STYLE);
        assertThat(wider.boards()).isEqualTo(17);
        assertThat(wider.gap().inches()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void whereNoneFitsTheEndPicketsAreRippedAlike() {
        PicketRow row = PicketRow.across(in(4 * 5.5 + 5 * 0.125 + 2 * 3.25), STYLE);
        assertThat(row.fits()).isTrue();
        assertThat(row.boards()).isEqualTo(6);
        assertThat(row.gap()).isEqualTo(in(0.125));
        assertThat(row.endWidth().inches()).isCloseTo(3.25, within(1e-9));
    }

    @Test
    void tooLittleForTwoRipsIsMarked() {
        PicketRow row = PicketRow.across(in(7), STYLE);
        assertThat(row.fits()).isTrue();
        assertThat(row.endWidth().inches()).isCloseTo(3.4375, within(1e-9));
        assertThat(PicketRow.across(in(4), STYLE).fits()).isFalse();
    }

    @Test
    void boardsAndGapsAddUpToTheStretch() {
        for (double stretch = 20; stretch < 400; stretch += 0.37) {
            PicketRow row = PicketRow.across(in(stretch), STYLE);
            List<Length> edges = row.edges(STYLE.boardWidth());
            int last = edges.size() - 1;
            double end = edges.get(last).inches()
                    + row.widthOf(last, STYLE.boardWidth()).inches();
            assertThat(end).isCloseTo(stretch, within(1e-9));
            if (row.fits()) assertThat(row.gap().inches()).isBetween(0.0625 - 1e-9, 0.25 + 1e-9);
        }
    }
}
