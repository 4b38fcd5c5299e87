package plumbleaf.engine.wind;

import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/**
 * What the wind meets: how much of the face is solid, and of what members.
 *
 * @param solidShare solid area over gross area, not the open share; 1 for boards, shadowbox and board-on-board
 * @param round whether the members of an open screen are round
 * @param memberSize their diameter; counts for round ones alone
 */
public record Screen(double solidShare, boolean round, Length memberSize) {
    /** ASCE 7-16 Figure 29.3-1 note: below this much solid it is an open sign. */
    private static final double LEAST_SOLID = 0.7;
    /** ASCE 7-16 Table 29.4-2: D sqrt(q) in ft and psf. */
    private static final double ROUND_STEP = 2.5;

    public Screen {
        if (!(solidShare > 0 && solidShare <= 1))
            throw new IllegalArgumentException("Solid share must be above 0, at most 1");
    }

    public static Screen flat(double solidShare) {
        return new Screen(solidShare, false, Length.ZERO);
    }

    /** Whether it counts as a wall: openings under 30 % of its face. */
    public boolean isWall() {
        return solidShare >= LEAST_SOLID;
    }

    /**
     * Factor of a wall with holes: {@code 1 - (1 - e)^1.5}, e the solid share.
     * Source: ASCE 7-16 Figure 29.3-1 note. Check: WallWindCheck.
     */
    public double openingsFactor() {
        double open = 1 - solidShare;
        return 1 - open * Math.sqrt(open);
    }

    /**
     * Coefficient of an open screen on its solid area. The table has real steps; on either side of one the load jumps.
     * Source: ASCE 7-16 Table 29.4-2. Check: WallWindCheck (W2).
     *
     * @param velocity q at its top
     */
    public double openCoefficient(Pressure velocity, WindTables tables) {
        OpenRow last = tables.open().get(tables.open().size() - 1);
        for (OpenRow row : tables.open()) {
            if (solidShare < row.solidBelow()) {
                last = row;
                break;
            }
        }
        if (!round) return last.flat();
        double step = memberSize.inFeet() * Math.sqrt(velocity.psf());
        return step <= ROUND_STEP ? last.roundSmall() : last.roundLarge();
    }

    /** What q G is multiplied by on the gross face of an open screen: {@code Cf e}. */
    double openOnGross(SiteWind site, Length top, WindTables tables) {
        return solidShare * openCoefficient(VelocityPressure.at(site, top, tables), tables);
    }

    /** Pressure on the gross face of an open screen: {@code q G Cf e}, and not less than 16 psf on the solid part. */
    Pressure openPressure(SiteWind site, Length top, WindTables tables) {
        double plain = openGust(site, top, tables).psf();
        return Pressure.psf(Math.max(plain, WallWind.LEAST_PSF * solidShare));
    }

    /** The same without the standard's floor: what a gust of the site's speed brings. */
    Pressure openGust(SiteWind site, Length top, WindTables tables) {
        Pressure velocity = VelocityPressure.at(site, top, tables);
        double onSolid = velocity.psf() * VelocityPressure.gustAndDirection(site) * openCoefficient(velocity, tables);
        return Pressure.psf(onSolid * solidShare);
    }
}
