package plumbleaf.engine.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

class TubePropertiesTest {
    @Test
    void sharpSquareTubeIsTheDifferenceOfTwoSquares() {
        TubeProperties tube =
                TubeProperties.rectangular(Length.inches(4), Length.inches(4), Length.inches(1), Length.ZERO);
        assertThat(tube.areaIn2()).isCloseTo(12, within(1e-12));
        assertThat(tube.ixIn4()).isCloseTo((256 - 16) / 12.0, within(1e-12));
        assertThat(tube.zxIn3()).isCloseTo((64 - 8) / 4.0, within(1e-12));
    }

    @Test
    void squareWithCornersOfHalfItsWidthIsRound() {
        TubeProperties round = TubeProperties.round(Length.inches(3), Length.inches(0.2));
        TubeProperties tube =
                TubeProperties.rectangular(Length.inches(3), Length.inches(3), Length.inches(0.2), Length.inches(1.5));
        assertThat(tube.areaIn2()).isCloseTo(round.areaIn2(), within(1e-12));
        assertThat(tube.ixIn4()).isCloseTo(round.ixIn4(), within(1e-12));
        assertThat(tube.zyIn3()).isCloseTo(round.zyIn3(), within(1e-12));
    }

    @Test
    void sharpCornersOverstateASmallTubeBySevenPerCent() {
        Length two = Length.inches(2);
        Length wall = Length.inches(0.12);
        double sharp = TubeProperties.rectangular(two, two, wall, Length.ZERO).ixIn4();
        double real = TubeProperties.rectangular(two, two, wall).ixIn4();
        assertThat(sharp / real).isBetween(1.06, 1.08);
    }

    @Test
    void aThickerWallIsNeverWeakerInTheRangeOfTubes() {
        double before = 0;
        for (int hundredths = 5; hundredths <= 30; hundredths++) {
            TubeProperties tube =
                    TubeProperties.rectangular(Length.inches(3), Length.inches(2), Length.inches(hundredths / 100.0));
            assertThat(tube.ixIn4()).isGreaterThan(before);
            before = tube.ixIn4();
        }
    }

    @Test
    void refusesAWallThatDoesNotFit() {
        assertThatThrownBy(() -> TubeProperties.round(Length.inches(1), Length.inches(0.6)))
                .hasMessage("Wall must fit into the diameter");
    }
}
