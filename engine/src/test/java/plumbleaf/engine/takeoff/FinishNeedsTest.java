package plumbleaf.engine.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.job.Stain;

class FinishNeedsTest {
    private static final long INCH = 25_400_000;

    @Test
    void everyFaceAndBothEndsOfEveryBoardCount() {
        // One 1x6 of 72 in.: 2 (0.75 + 5.5) 72 + 2 x 0.75 x 5.5 = 908.25 in2 = 6.307 ft2. Rough, two coats, 10 % lost:
        // 6.307 (1/150 + 1/210) 1.1 = 0.0793 gal.
        FinishNeeds.Coats coats = FinishNeeds.of(board("picket-1x6/western_redcedar", BarNeed.Saw.WOOD), two(), "B1");
        assertThat(coats.needs()).hasSize(1);
        assertThat(coats.needs().get(0).quantity()).isCloseTo(0.07929, within(0.00005));
        assertThat(coats.needs().get(0).cause()).isEqualTo("B1");
        assertThat(coats.brushedFt2()).isCloseTo(12.6146, within(0.0005));
    }

    @Test
    void steelAndUnstainedWoodTakeNone() {
        assertThat(FinishNeeds.of(board("TUBE-2x2x0.083", BarNeed.Saw.STEEL), two(), "G1a")
                        .needs())
                .isEmpty();
        assertThat(FinishNeeds.of(board("picket-1x6/western_redcedar", BarNeed.Saw.WOOD), Stain.NONE, "B1")
                        .needs())
                .isEmpty();
    }

    @Test
    void boardsAreReadBackAtTheirDressedSize() {
        assertThat(WoodItem.dressedIn("rail-2x4/western_redcedar")).containsExactly(1.5, 3.5);
        assertThat(WoodItem.dressedIn("cap-5/4x6/western_redcedar")).containsExactly(1, 5.5);
        assertThat(WoodItem.dressedIn("board-2x8/western_redcedar")).containsExactly(1.5, 7.25);
    }

    private static Stain two() {
        return new Stain(2, Stain.Texture.ROUGH);
    }

    private static Needs board(String item, BarNeed.Saw saw) {
        BarNeed bar = new BarNeed(item, item, PartGroup.FENCE, saw, Piece.square("B1.k1", "B1", 72 * INCH));
        return new Needs(List.of(), List.of(bar));
    }
}
