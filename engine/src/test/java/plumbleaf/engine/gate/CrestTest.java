package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.job.TopEdge;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** The curve on top of a leaf: an arc by its chord and rise, its area, and the chords it is drawn with. */
class CrestTest {
    private static final Length WIDE = Length.inches(48);
    private static final Crest HALF = new Crest(Length.ZERO, new TopEdge.Arched(Length.inches(24)));

    @Test
    void halfACircleIsHalfACircle() {
        assertThat(HALF.radius(WIDE).inches()).isCloseTo(24, within(1e-12));
        assertThat(HALF.areaIn2(WIDE)).isCloseTo(Math.PI * 24 * 24 / 2, within(1e-9));
        assertThat(HALF.overFrameIn(24, WIDE)).isCloseTo(24, within(1e-12));
        assertThat(HALF.overFrameIn(24 - 24 * Math.cos(Math.PI / 6), WIDE)).isCloseTo(12, within(1e-9));
    }

    @Test
    void anArchAndAScallopOfOneDepthFillTheirRectangle() {
        Crest arch = new Crest(Length.inches(2), new TopEdge.Arched(Length.inches(6)));
        Crest scallop = new Crest(Length.inches(2), new TopEdge.Scalloped(Length.inches(6)));
        assertThat(arch.areaIn2(WIDE) + scallop.areaIn2(WIDE)).isCloseTo(48 * (6 + 2 * 2), within(1e-9));
        assertThat(arch.overFrameIn(0, WIDE)).isCloseTo(2, within(1e-9));
        assertThat(scallop.overFrameIn(0, WIDE)).isCloseTo(8, within(1e-9));
        assertThat(scallop.overFrameIn(24, WIDE)).isCloseTo(2, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4, 9, 16, 24})
    void noChordLeavesTheArcByMoreThanASixteenth(double rise) {
        Crest crest = new Crest(Length.ZERO, new TopEdge.Arched(Length.inches(rise)));
        assertThat(crest.sagitta(WIDE).inches()).isLessThanOrEqualTo(1 / 16.0);
        int chords = crest.chords(WIDE);
        double sum = 0;
        for (int i = 0; i < 4000; i++) sum += crest.overFrameIn(48 * (i + 0.5) / 4000, WIDE) * 48 / 4000;
        assertThat(crest.areaIn2(WIDE)).isCloseTo(sum, within(0.02));
        for (int i = 0; i < chords; i++) {
            double a = 48.0 * i / chords;
            double b = 48.0 * (i + 1) / chords;
            double middle = crest.overFrameIn((a + b) / 2, WIDE);
            double chord = (crest.overFrameIn(a, WIDE) + crest.overFrameIn(b, WIDE)) / 2;
            assertThat(middle - chord).isBetween(-1e-12, 1 / 16.0);
        }
    }

    @Test
    void theFaceCountsWhatStandsAboveAndHangsBelow() {
        Outline outline = new Outline(
                Offset.inches(0),
                Offset.inches(48),
                Offset.inches(4),
                Offset.inches(64),
                Slope.ZERO,
                Slope.ZERO,
                Length.inches(1),
                new Crest(Length.inches(3), new TopEdge.Straight()));
        assertThat(outline.face().squareInches()).isCloseTo(48 * 64, within(1e-9));
    }
}
