package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.section.Section;

/** A wheel on a tube, worked out by hand. */
class WheelOnTubeTest {
    /** {@code 5.5 Fy t^2 / 1.67} with the design wall of the example's pipe. */
    @Test
    void aWheelOnARoundTubeIsHeldByItsWall() {
        Section pipe = Examples.pipe(2.875, 0.203);
        double t = pipe.designWall().inches();
        double byHand = 5.5 * pipe.yieldStress().psi() * t * t / 1.67;
        assertThat(WheelOnTube.allowable(pipe).pounds()).isCloseTo(byHand, within(1e-9 * byHand));
    }

    /** A wall twice as thick carries four times as much, whatever is bought. */
    @Test
    void itGrowsWithTheSquareOfTheWall() {
        double thin = WheelOnTube.allowable(Examples.pipe(2.875, 0.1)).pounds();
        double thick = WheelOnTube.allowable(Examples.pipe(2.875, 0.2)).pounds();
        assertThat(thick / thin).isCloseTo(4, within(1e-9));
    }
}
