package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

class SheetBendingTest {
    private static SheetBending sheet(double acrossIn, double upIn) {
        return new SheetBending(Length.inches(0.0598), Length.inches(acrossIn), Length.inches(upIn));
    }

    /**
     * A simply supported rectangular plate under a uniform load, Poisson's ratio 0.3: {@code w = alpha p b4 / D}, {@code M = beta p b2} across the shorter side. Source: Timoshenko and
     * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., Table 8, from memory; its last digit was reckoned by hand and may be one or two off.
     */
    @ParameterizedTest
    @CsvSource({
        "1.0, 0.00406, 0.0479",
        "1.2, 0.00564, 0.0627",
        "1.5, 0.00772, 0.0812",
        "2.0, 0.01013, 0.1017",
        "3.0, 0.01223, 0.1189",
        "5.0, 0.01297, 0.1246"
    })
    void aPlateBendsAsThePublishedTableSays(double longer, double alpha, double beta) {
        assertThat(sheet(longer * 30, 30).bowFactor()).isCloseTo(alpha, within(0.00002));
        assertThat(sheet(longer * 30, 30).momentFactor()).isCloseTo(beta, within(0.00006));
    }

    @Test
    void aLongNarrowSheetBendsAsAStripDoes() {
        double psf = 10;
        double strip = psf / 144 * 24 * 24 / 8 * 6 / (0.0598 * 0.0598);
        assertThat(sheet(24 * 12, 24).stress(Pressure.psf(psf)).psi()).isCloseTo(strip, within(strip * 1e-3));
    }

    @Test
    void itMattersNotWhichWayTheLongerSideLies() {
        Pressure wind = Pressure.psf(15);
        assertThat(sheet(60, 40).ratio(wind)).isEqualTo(sheet(40, 60).ratio(wind));
        assertThat(sheet(60, 40).bow(wind)).isEqualTo(sheet(40, 60).bow(wind));
    }

    @Test
    void halfTheOpeningAQuarterOfTheStress() {
        Pressure wind = Pressure.psf(15);
        assertThat(sheet(30, 20).ratio(wind)).isCloseTo(sheet(60, 40).ratio(wind) / 4, within(1e-12));
    }
}
