package plumbleaf.engine.footing;

import plumbleaf.engine.job.Soil;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/**
 * Lateral soil as one footing may count on it.
 *
 * @param perFoot lateral bearing per foot of depth, with the fall of the ground and any doubling
 * @param looseTop depth that counts for nothing
 */
public record LateralSoil(Pressure perFoot, Length looseTop) {
    /** IBC 2021 1806.3.4: where half an inch of movement at grade from short-term load does no harm. */
    private static final double ISOLATED_POLE = 2;

    /**
     * A soils report's own value where the job has one. Source: IBC 2021 Table 1806.2 and 1806.3.4; the factor for falling ground is Coulomb's (judgement to use it on S).
     *
     * @param halfInchDoesNoHarm never at a hinge post, and never under a load that stays
     */
    public static LateralSoil of(Soil soil, SoilTables tables, boolean halfInchDoesNoHarm) {
        double fall = FallingGround.factor(soil.slope(), SoilBand.FRICTION_FOR_FALL_DEG);
        double doubled = halfInchDoesNoHarm ? ISOLATED_POLE : 1;
        Pressure perFoot = soil.numbers()
                .lateralPerFoot()
                .or(tables.presumed(soil.ibcClass()).lateralPerFoot());
        return new LateralSoil(perFoot.times(fall * doubled), soil.deadTop());
    }
}
