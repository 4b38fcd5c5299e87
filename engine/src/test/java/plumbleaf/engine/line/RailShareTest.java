package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

class RailShareTest {
    /** Both rails together carry the whole height, and its middle lies where their shares say: force and moment in balance. */
    @Test
    void twoRailsBalanceWhatHangsOnThem() {
        double bottom = 21;
        double space = 50;
        double top = 9;
        double low = RailShare.ofEnd(bottom, space, top);
        double high = RailShare.ofEnd(top, space, bottom);
        assertThat(low + high).isCloseTo(bottom + space + top, within(1e-12));
        assertThat(high * space).isCloseTo((bottom + space + top) * ((space + top - bottom) / 2), within(1e-9));
    }

    /** The lowest of three rails, with 21 in. past it: about the next rail, 48 in. at their middle over 27 in., 48 x 24 / 27 = 42.7. */
    @Test
    void aLongOverhangIsALever() {
        assertThat(RailShare.ofEnd(21, 27, 0)).isCloseTo(48 * 24 / 27.0, within(1e-12));
        RailRows rows =
                new RailRows(Length.inches(1.5), List.of(Length.inches(21), Length.inches(48), Length.inches(75)));
        assertThat(rows.busiestShare(Length.inches(84), false).inches()).isCloseTo(48 * 24 / 27.0, within(1e-12));
    }

    /** A wire at the bottom holds it there: no lever, and the one rail hangs what is over it on itself and the wire. */
    @Test
    void aWireIsANeighborAtTheBottom() {
        RailRows rows = new RailRows(Length.inches(1.5), List.of(Length.inches(66)));
        assertThat(rows.busiestShare(Length.inches(72), true).inches()).isCloseTo(72 * 36 / 66.0, within(1e-12));
        assertThat(rows.busiestShare(Length.inches(72), false).inches()).isEqualTo(72);
    }
}
