package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.strength.BoardLever;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/**
 * A 1x6 cedar board, 5/8 in. thick, that hangs 30 in. below its lowest rail in 27 psf.
 * Source: by hand. M = w c^2 / 2 of a lever under an even load (AISC Manual, 15th edition, Table 3-23 case 19); 0.6 W of ASCE 7-16 2.4.1; Fb 700 psi of western
 * cedars No. 2, CF 1.3, Cfu 1.15 of 6 in. wide, CM 1.0 below 1,150 psi (NDS Supplement 2018 Table 4A), CD 1.6 (NDS 2018 Table 2.3.2).
 * Tolerance: 0.01 %, the digits of the hand calculation.
 */
class BoardLeverCheck {
    @Test
    void momentOverSectionOverAllowable() {
        Timber board = new Timber(
                Length.inches(5.5),
                Length.inches(0.625),
                StandardCatalogue.load().species("western_redcedar").orElseThrow());
        double w = 27.0 / 144 * 5.5;
        double moment = 0.6 * w * 30 * 30 / 2;
        assertThat(moment).isCloseTo(278.44, within(0.005));
        double section = 5.5 * 0.625 * 0.625 / 6;
        assertThat(section).isCloseTo(0.35807, within(0.000005));
        double allowable = 700 * 1.3 * 1.15 * 1.6;
        assertThat(allowable).isCloseTo(1674.4, within(0.05));
        double byHand = 777.60 / 1674.4;
        assertThat(BoardLever.ratio(board, Length.inches(30), w)).isCloseTo(byHand, within(0.0001 * byHand));
    }
}
