package plumbleaf.engine.footing;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;

/**
 * Soil is a guess times three: what it likely is, and what it may be on either side.
 *
 * <p>The picked state is the likely one and its neighbours are soft and stiff; at the end of the list, and for a number typed in, half and twice
 * (judgement). On falling ground all three are scaled by the passive factor of the fall (judgement).
 */
public record SoilBand(SoilStiffness soft, SoilStiffness likely, SoilStiffness stiff) {
    /** Davisson's modulus of clay per unit length of pier, times su. Source: UFC 3-220-20 (2025), chapter 6. */
    private static final double CLAY_MODULUS_PER_STRENGTH = 67;

    /** Friction presumed for the fall's factor where only a class is known. Judgement. */
    static final double FRICTION_FOR_FALL_DEG = 30;

    /**
     * The band of a site's soil. Empty for unprepared fill, peat and mud: no number is presumed there.
     * Source: n_h Terzaghi 1955 (from memory); k D = 67 su Davisson, UFC 3-220-20 chapter 6; thumb test common practice, no source.
     * Check: GroundTablesTest beside the tables.
     */
    public static Optional<SoilBand> of(Soil soil, SoilTables tables) {
        if (soil.kind() == SoilKind.FILL) return Optional.empty();
        double fall = FallingGround.factor(soil.slope(), FRICTION_FOR_FALL_DEG);
        if (!(fall > 0)) return Optional.empty();
        SoilBand level = soil.rate()
                .match(
                        said -> halfAndTwice(new SoilStiffness.Growing(said.is())),
                        unsaid -> soil.numbers().undrained().isSaid()
                                ? halfAndTwice(bySaid(soil))
                                : soil.kind() == SoilKind.CLAY || soil.kind() == SoilKind.SILT
                                        ? clay(soil, tables)
                                        : sand(soil, tables));
        return Optional.of(new SoilBand(level.soft.times(fall), level.likely.times(fall), level.stiff.times(fall)));
    }

    private static SoilStiffness bySaid(Soil soil) {
        double su = soil.numbers().undrained().or(Pressure.ZERO).inPsi();
        return new SoilStiffness.Constant(Stress.psi(CLAY_MODULUS_PER_STRENGTH * su));
    }

    private static SoilBand halfAndTwice(SoilStiffness likely) {
        return new SoilBand(likely.times(0.5), likely, likely.times(2));
    }

    /** Rock is taken as the densest sand, on the safe side (judgement). */
    private static SoilBand sand(Soil soil, SoilTables tables) {
        ToDoubleFunction<SandFeel> rate = soil.belowWater()
                ? row -> row.rateBelowWater().poundsPerCubicInch()
                : row -> row.rate().poundsPerCubicInch();
        int at = soil.kind() == SoilKind.ROCK
                ? tables.sands().size() - 1
                : placeOf(tables.sands().stream().map(SandFeel::state).toList(), soil);
        List<Double> rates = tables.sands().stream().map(rate::applyAsDouble).toList();
        return around(rates, at, nh -> new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(nh)));
    }

    private static SoilBand clay(Soil soil, SoilTables tables) {
        int at = placeOf(tables.clays().stream().map(ClayFeel::state).toList(), soil);
        List<Double> strengths =
                tables.clays().stream().map(row -> row.undrained().inPsi()).toList();
        return around(strengths, at, su -> new SoilStiffness.Constant(Stress.psi(CLAY_MODULUS_PER_STRENGTH * su)));
    }

    private interface Stiffened {
        SoilStiffness of(double value);
    }

    private static SoilBand around(List<Double> list, int at, Stiffened of) {
        double likely = list.get(at);
        double soft = at > 0 ? list.get(at - 1) : likely / 2;
        double stiff = at < list.size() - 1 ? list.get(at + 1) : likely * 2;
        return new SoilBand(of.of(soft), of.of(likely), of.of(stiff));
    }

    /** A state of the other list (firm sand) stands at the same place from the soft end. */
    private static int placeOf(List<?> states, Soil soil) {
        int at = states.indexOf(soil.state());
        if (at >= 0) return at;
        int place = switch (soil.state()) {
            case LOOSE, SOFT -> 0;
            case MEDIUM, FIRM -> 1;
            case DENSE, STIFF -> 2;
        };
        return Math.min(place, states.size() - 1);
    }
}
