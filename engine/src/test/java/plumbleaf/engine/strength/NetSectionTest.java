package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** A drilled post by hand. */
class NetSectionTest {
    @Test
    void aHoleTakesItsWidthAndASixteenthFromBothWalls() {
        Section pipe = Examples.pipe(2.875, 0.203);
        double t = pipe.usedWall().inches();
        double gone = t * 0.625 * (pipe.depth().inches() - t);
        double full = TubeStrength.of(pipe).allowableX().poundInches();
        assertThat(NetSection.allowable(pipe, Length.inches(0.5625)).poundInches())
                .isCloseTo(full * (1 - gone / pipe.zxIn3()), within(1e-9));
        assertThat(NetSection.allowable(pipe, Length.inches(8)).poundInches()).isZero();
    }
}
