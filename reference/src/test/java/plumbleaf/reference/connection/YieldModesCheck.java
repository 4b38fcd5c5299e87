package plumbleaf.reference.connection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.strength.DowelBearing;
import plumbleaf.engine.strength.YieldModes;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Dowel bearing, the six yield modes of a lag, bolt, nail or screw in single shear, and a lag pulled at an angle.
 * Source: NDS 2018 Tables 12.3.3, 12B (its cells from memory), 12K and Equations 12.3-11, 12.4-1; an American Wood Council worked example (MX32); lag roots by ASME B18.2.1-2012,
 * bending yields by NDS Table I1.
 * Tolerance: 0.6 lb for tables printed to 10 lb and computed before rounding, 0.2 lb for MX32 and MX33, 0.1 % else; the mode exactly. The 88 cells of
 * Table 12K are printed to 10 lb: 5.5 lb.
 */
class YieldModesCheck {
    /** Bearing of the plates of Table 12K, from its notes. */
    private static final Stress A653_GRADE_33 = Stress.psi(61_850);

    /** Nominal diameter, root and bending yield of a lag. */
    private record Lag(double nominalIn, double rootIn, double yieldPsi) {
        static Lag of(String size) {
            return switch (size) {
                case "1/4" -> new Lag(0.25, 0.173, 70_000);
                case "5/16" -> new Lag(0.3125, 0.227, 60_000);
                default -> new Lag(0.375, 0.265, 45_000);
            };
        }
    }

    private static Stress bearing(double gravity, double nominalIn, boolean along) {
        Stress exact = along ? DowelBearing.along(gravity) : DowelBearing.across(gravity, Length.inches(nominalIn));
        return DowelBearing.asPrinted(exact);
    }

    private static void check(Vector vector, YieldModes modes) {
        vector.check("Z_lb", modes.governing().value().pounds());
        assertThat(modes.governing().name()).isEqualTo(vector.word("mode"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX25", "MX26", "MX27", "MX28"})
    void lagWithASteelPlate(String id) {
        Vector vector = Vectors.one("connection", id);
        Lag lag = Lag.of(vector.text("size"));
        boolean along = vector.text("dir").equals("par");
        check(
                vector,
                new YieldModes(
                        Length.inches(lag.rootIn()),
                        Length.inches(lag.nominalIn()),
                        Stress.psi(lag.yieldPsi()),
                        Length.inches(8 * lag.nominalIn()),
                        bearing(vector.in("G"), lag.nominalIn(), along),
                        Length.inches(vector.in("ts_in")),
                        Stress.psi(vector.in("Fes_psi")),
                        along ? 0 : 90));
    }

    /** The page of Table 12K: three sizes, plates of 14 to 10 gauge, woods from cedar to southern pine, along and across the grain. */
    @ParameterizedTest
    @CsvFileSource(resources = "/plumbleaf/reference/connection/lag-plates.csv", numLinesToSkip = 3)
    void everyPrintedLagWithASteelPlate(
            String size, double plateIn, double gravity, String direction, double printedLb) {
        Lag lag = Lag.of(size);
        boolean along = direction.equals("par");
        YieldModes modes = new YieldModes(
                Length.inches(lag.rootIn()),
                Length.inches(lag.nominalIn()),
                Stress.psi(lag.yieldPsi()),
                Length.inches(8 * lag.nominalIn()),
                bearing(gravity, lag.nominalIn(), along),
                Length.inches(plateIn),
                A653_GRADE_33,
                along ? 0 : 90);
        assertThat(modes.governing().value().pounds()).isCloseTo(printedLb, within(5.5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX29", "MX30", "MX31"})
    void boltWithASteelPlate(String id) {
        Vector vector = Vectors.one("connection", id);
        boolean along = vector.text("dir").equals("par");
        Length diameter = Length.inches(vector.in("D_in"));
        check(
                vector,
                new YieldModes(
                        diameter,
                        diameter,
                        Stress.psi(vector.in("Fyb_psi")),
                        Length.inches(vector.in("tm_in")),
                        bearing(vector.in("G"), vector.in("D_in"), along),
                        Length.inches(vector.in("ts_in")),
                        Stress.psi(vector.in("Fes_psi")),
                        along ? 0 : 90));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX32", "MX33"})
    void nailAndScrew(String id) {
        Vector vector = Vectors.one("connection", id);
        check(
                vector,
                new YieldModes(
                        Length.inches(vector.in("D_in")),
                        Length.inches(vector.in("Dnom_in")),
                        Stress.psi(vector.in("Fyb_psi")),
                        Length.inches(vector.in("lm_in")),
                        DowelBearing.small(vector.in("Gm")),
                        Length.inches(vector.in("ls_in")),
                        DowelBearing.small(vector.in("Gs")),
                        0));
    }

    @Test
    void dowelBearing() {
        Vector vector = Vectors.one("connection", "MX23");
        vector.check("Fe_par_psi", DowelBearing.along(vector.in("G")).psi());
        vector.check(
                "Fe_perp_psi",
                DowelBearing.across(vector.in("G"), Length.inches(vector.in("D_in")))
                        .psi());
        vector.check("Fe_small_psi", DowelBearing.small(vector.in("G")).psi());
        Vector angle = Vectors.one("connection", "MX24");
        angle.check(
                "F_psi",
                DowelBearing.hankinson(
                                Stress.psi(angle.in("Fpar_psi")),
                                Stress.psi(angle.in("Fperp_psi")),
                                angle.in("theta_deg"))
                        .psi());
    }

    @Test
    void lagPulledAtAnAngle() {
        Vector vector = Vectors.one("connection", "MX34");
        vector.check(
                "Za_lb",
                YieldModes.combined(
                                Force.pounds(vector.in("Wp_lb")),
                                Force.pounds(vector.in("Z_lb")),
                                vector.in("alpha_deg"))
                        .pounds());
    }
}
