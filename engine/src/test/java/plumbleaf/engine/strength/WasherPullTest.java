package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

class WasherPullTest {
    private static final Section TUBE = Examples.square(2, 0.083, "looked-up");

    /** 1.5 t dw Fu / 3, the washer's whole width to 3/4 in. */
    @Test
    void aWallIsPulledOverItsWasher() {
        double perInch =
                0.5 * TUBE.designWall().inches() * TUBE.ultimateStress().psi();
        assertThat(WasherPull.allowable(TUBE, Length.inches(0.625)).pounds()).isCloseTo(0.625 * perInch, within(1e-9));
        assertThat(WasherPull.allowable(TUBE, Length.inches(1.0625)).pounds()).isCloseTo(0.75 * perInch, within(1e-9));
    }
}
