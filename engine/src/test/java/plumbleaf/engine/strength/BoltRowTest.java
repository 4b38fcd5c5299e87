package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

/** Rows of bolts by hand. */
class BoltRowTest {
    private static final BoltRow PAIR = new BoltRow(2, Length.inches(3), Length.inches(1), Length.inches(2));

    @Test
    void aForceThroughTheMiddleIsHalved() {
        BoltRow.Share share = PAIR.share(60, 80, 100, 0, 0, 0);
        assertThat(share.shear().pounds()).isCloseTo(50, within(1e-12));
        assertThat(share.tension().pounds()).isCloseTo(50, within(1e-12));
    }

    /** 300 lb-in over 3 in. is 100 lb a bolt, sideways for a twist and off for a tilt. */
    @Test
    void momentsGoByTheSpacing() {
        assertThat(PAIR.share(0, 0, 0, 300, 0, 0).shear().pounds()).isCloseTo(100, within(1e-12));
        assertThat(PAIR.share(0, 0, 0, 0, 300, 0).tension().pounds()).isCloseTo(100, within(1e-12));
    }

    /** About the row itself both bolts pull against the plate's edge, 1 in. away. */
    @Test
    void aRollIsHeldByThePlatesEdge() {
        assertThat(PAIR.share(0, 0, 0, 0, 0, 300).tension().pounds()).isCloseTo(150, within(1e-12));
    }

    /** Three bolts 2 in. apart: sum of y2 is 8, the outer one takes M 2/8. */
    @Test
    void threeBoltsShareByTheirDistance() {
        BoltRow three = new BoltRow(3, Length.inches(2), Length.inches(1), Length.inches(1));
        assertThat(three.share(0, 0, 0, 400, 0, 0).shear().pounds()).isCloseTo(100, within(1e-12));
    }

    @Test
    void aLoneBoltTakesATiltByThePlatesEnd() {
        BoltRow one = new BoltRow(1, Length.ZERO, Length.inches(1), Length.inches(1.5));
        assertThat(one.share(0, 0, 0, 0, 300, 0).tension().pounds()).isCloseTo(200, within(1e-12));
    }

    /** A pressed plate pulls on no bolt. */
    @Test
    void aPushPullsNothing() {
        assertThat(PAIR.share(0, 0, -100, 0, 0, 0).tension().pounds()).isZero();
    }
}
