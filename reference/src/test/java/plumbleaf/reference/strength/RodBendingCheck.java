package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.strength.RodBending;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/**
 * A drop rod of round bar as a cantilever from its sleeve: moment, elastic stress, what the bar may carry and how stiff it is.
 * Source: closed forms of a solid circle, S = pi d3 / 32, Z = d3 / 6, I = pi d4 / 64 (AISC Manual Table 17-27, from memory), M = P L and 3 E I / L3 of
 * a cantilever with a load at its end (AISC Manual Table 3-23, from memory), Mn = Fy Z <= 1.6 Fy S (AISC 360-22 F11.1). The push is that of two leaves of 8 by 6 ft
 * in 16.2 psf, half of each: hand calculation.
 * Tolerance: half of the last digit given.
 */
class RodBendingCheck {
    private static RodModel rod(String id) {
        return StandardCatalogue.load().rod(id).orElseThrow();
    }

    /** 16.2 psf on 48 ft2 is 778 lb a leaf, 389 lb at its free foot; on 47.5 ft2 of frame 385. One 5/8 in. rod for both, 3 in. and 1 in. free. */
    @ParameterizedTest
    @CsvSource({"3, 96.4", "1, 32.1", "0.75, 24.1"})
    void oneRodForTwoLeaves(double exposedIn, double ksi) {
        RodBending bent = RodBending.of(rod("ROD-0.625"), Length.inches(exposedIn), Force.pounds(2 * 385));
        assertThat(bent.moment().poundInches()).isCloseTo(770 * exposedIn, within(1e-9));
        assertThat(bent.stress().psi() / 1000).isCloseTo(ksi, within(0.05));
    }

    /** d = 1: S = 0.09817, Z = 0.16667, 1.6 S = 0.15708 governs; Fy 36 ksi: Mn = 5,655 lb-in, allowable 3,386. */
    @Test
    void anInchBarMayCarryItsPlasticMomentUpToOneAndSixTenthsOfYield() {
        RodBending bent = RodBending.of(rod("ROD-1"), Length.inches(2), Force.pounds(1000));
        assertThat(bent.nominal().poundInches()).isCloseTo(5655, within(0.5));
        assertThat(bent.allowable().poundInches()).isCloseTo(3386, within(0.5));
        assertThat(bent.utilisation()).isCloseTo(2000 / 3386.2, within(5e-4));
    }

    /** d = 1, e = 3: I = 0.049087, k = 3 x 29,000,000 x 0.049087 / 27 = 158,170 lb/in. */
    @Test
    void theRodIsAsStiffAsACantilever() {
        assertThat(RodBending.stiffnessLbPerIn(rod("ROD-1"), Length.inches(3))).isCloseTo(158_170, within(5.0));
    }
}
