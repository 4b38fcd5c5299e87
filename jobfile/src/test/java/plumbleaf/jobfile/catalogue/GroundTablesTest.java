package plumbleaf.jobfile.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.footing.SoilTables;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;

class GroundTablesTest {
    private static SoilTables tables() {
        var classes = GroundTables.classes("c.csv", MaterialTablesTest.resource("soil-classes.csv"));
        var sands = GroundTables.sands("s.csv", MaterialTablesTest.resource("soil-sands.csv"));
        var clays = GroundTables.clays("k.csv", MaterialTablesTest.resource("soil-clays.csv"));
        assertThat(classes.errors()).isEmpty();
        assertThat(sands.errors()).isEmpty();
        assertThat(clays.errors()).isEmpty();
        return new SoilTables(classes.rows(), sands.rows(), clays.rows());
    }

    private static Soil soil(SoilKind kind, SoilState state, Stated<SoilRate> rate, Slope slope) {
        return new Soil(kind, state, false, 4, rate, Length.ZERO, slope);
    }

    private static double number(SoilStiffness stiffness) {
        return stiffness.match(
                growing -> growing.rate().poundsPerCubicInch(),
                constant -> constant.perLength().psi());
    }

    private static double[] band(Soil soil) {
        SoilBand band = SoilBand.of(soil, tables()).orElseThrow();
        return new double[] {number(band.soft()), number(band.likely()), number(band.stiff())};
    }

    @Test
    void neighboursOfThePickAreTheBand() {
        assertThat(band(soil(SoilKind.SAND, SoilState.MEDIUM, Stated.open(), Slope.ZERO)))
                .containsExactly(8.1, 24.3, 64.8);
        assertThat(band(soil(SoilKind.SAND, SoilState.LOOSE, Stated.open(), Slope.ZERO)))
                .containsExactly(4.05, 8.1, 24.3);
        assertThat(band(soil(SoilKind.CLAY, SoilState.STIFF, Stated.open(), Slope.ZERO)))
                .containsExactly(new double[] {67 * 1000 / 144.0, 67 * 2000 / 144.0, 67 * 4000 / 144.0}, within(1e-9));
    }

    @Test
    void aNumberTypedInIsHalvedAndDoubled() {
        Stated<SoilRate> typed = Stated.of(SoilRate.poundsPerCubicInch(20));
        assertThat(band(soil(SoilKind.SAND, SoilState.MEDIUM, typed, Slope.ZERO)))
                .containsExactly(10, 20, 40);
    }

    @Test
    void fallingGroundWeakensAllThree() {
        double[] level = band(soil(SoilKind.SAND, SoilState.MEDIUM, Stated.open(), Slope.ZERO));
        double[] fall = band(soil(SoilKind.SAND, SoilState.MEDIUM, Stated.open(), Slope.percent(25)));
        assertThat(fall[1] / level[1]).isCloseTo(0.643, within(0.001));
        assertThat(fall[0] / level[0]).isCloseTo(fall[2] / level[2], within(1e-12));
    }

    @Test
    void nothingIsPresumedForFill() {
        assertThat(SoilBand.of(soil(SoilKind.FILL, SoilState.LOOSE, Stated.open(), Slope.ZERO), tables()))
                .isEmpty();
    }
}
