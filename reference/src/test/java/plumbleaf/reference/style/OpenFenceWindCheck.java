package plumbleaf.reference.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Solidity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.WindTables;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;

/**
 * How solid each style is, and which table of the wind standard it falls under.
 * Source: ASCE 7-16 Figure 29.3-1 note (openings under 30 % count as a wall) and Table 29.4-2 (round and flat members); solid shares are geometry, done by hand here.
 * Tolerance: 0.5 of the last digit written.
 */
class OpenFenceWindCheck {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final WindTables TABLES = StandardTables.load().wind();
    private static final Length SIX = Length.feet(6);

    private static Solidity of(String id) {
        FenceStyle style = CATALOGUE.style(id).orElseThrow();
        return Solidity.of(style, CATALOGUE, SIX);
    }

    private static Screen screen(String id) {
        Solidity solid = of(id);
        return new Screen(solid.share(), solid.round(), solid.member());
    }

    /** Wire 0.148 in., 2 in. clear: (2/2.148)2 = 0.8669 open; one 1.375 in. rail in 72 in. leaves 0.8504 of it. */
    @Test
    void chainLinkIsFifteenPercentSolid() {
        assertThat(of("chain-link").share()).isCloseTo(0.1496, within(0.00005));
        assertThat(screen("chain-link").isWall()).isFalse();
    }

    /** q 13.77 psf (105 mph, B): 13.77 x 0.85 x 1.3 x 0.1496 = 2.3 psf bare; with slats it is a wall. */
    @Test
    void bareLinkTakesTwoPointThreePoundsAndSlatsMakeAWallOfIt() {
        Screen bare = screen("chain-link");
        Pressure velocity = Pressure.psf(13.77);
        double cf = bare.openCoefficient(velocity, TABLES);
        assertThat(cf).isEqualTo(1.3);
        assertThat(13.77 * 0.85 * cf * bare.solidShare()).isCloseTo(2.3, within(0.05));
        assertThat(screen("chain-link-slats").isWall()).isTrue();
    }

    @Test
    void boardsThatLapAndShadowboxesAreSolid() {
        for (String id : new String[] {"wood-side-by-side", "wood-board-on-board", "wood-shadowbox", "wood-horizontal"})
            assertThat(of(id).share()).as(id).isEqualTo(1);
    }

    /** Pickets 3-1/2 in. at 5-1/4 in.: two thirds, which is an open screen of flat members. Panel: 1 in. at 4-3/4, three 1-1/2 in. rails in 72. */
    @Test
    void picketsAndPanelsAreOpenScreens() {
        assertThat(of("wood-spaced-picket").share()).isCloseTo(0.6667, within(0.00005));
        assertThat(screen("wood-spaced-picket").openCoefficient(Pressure.psf(14), TABLES))
                .isEqualTo(1.6);
        double panel = 1 - (1 - 1 / 4.75) * (1 - 4.5 / 72);
        assertThat(of("metal-panel").share()).isCloseTo(panel, within(1e-9));
    }
}
