package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.gate.Galvanizing;
import plumbleaf.engine.section.Section;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/**
 * Vent holes of frames that are dipped in zinc.
 *
 * Source: American Galvanizers Association, venting of handrail after ASTM A385: outside holes at least 3/8 in. and 25 % of the inside diameter; a pipe of 1.61 in. inside needs 0.4025 in.
 * (CX35). Square tube: 25 % of the inside diagonal, design manual of the Galvanizers Association of Australia.
 * Tolerance: the printed digits.
 */
class GalvanizingCheck {
    private static Section section(String id) {
        return StandardCatalogue.load().section(id).orElseThrow();
    }

    @Test
    void aPipeIsVentedByAQuarterOfItsInside() {
        assertThat(Galvanizing.vent(section("F1083-REG-1.5")).inches()).isCloseTo(0.4025, within(0.00005));
    }

    @Test
    void aThinPipeKeepsTheLeastHole() {
        assertThat(Galvanizing.vent(section("LIGHT-1.375x0.065")).inches()).isCloseTo(0.375, within(1e-12));
    }

    @Test
    void aSquareTubeIsVentedByItsDiagonal() {
        double inside = (2 - 2 * 0.083) * Math.sqrt(2);
        assertThat(Galvanizing.vent(section("TUBE-2x2x0.083")).inches()).isCloseTo(inside / 4, within(1e-12));
    }
}
