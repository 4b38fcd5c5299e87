package plumbleaf.engine.wind;

import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.WorkedLine;

/** The pressure that moving air brings, before the shape it meets. */
public final class VelocityPressure {
    /** ASCE 7-16 Table 26.6-1: solid freestanding walls, solid and open signs, lattice. */
    static final double DIRECTIONALITY = 0.85;
    /** ASCE 7-16 26.11.1: rigid structures, natural frequency of at least 1 Hz. */
    static final double GUST = 0.85;
    /** ASCE 7-16 26.10: below this height the wind is taken as at it. */
    private static final double FLOOR_FT = 15;

    private VelocityPressure() {}

    /**
     * {@code Kz = factor (max(z, 15 ft) / zg)^(2 / alpha)}: 2.01 in 7-16, 2.41 in 7-22. Nearly every fence sits on the 15 ft floor.
     * Source: ASCE 7-16 and 7-22 Table 26.10-1 notes. Check: VelocityPressureCheck (Kz, W5, W6).
     *
     * @param height z, top of the surface above ground
     */
    public static double exposureFactor(SiteWind site, Length height, WindTables tables) {
        ExposureRow row = tables.exposure(site.edition(), site.exposure());
        double zFt = Math.max(height.inFeet(), FLOOR_FT);
        return row.factor() * StrictMath.pow(zFt / row.gradientHeight().inFeet(), 2 / row.alpha());
    }

    /**
     * {@code q = 0.00256 Kz Kzt Kd Ke V2} in psf with V in mph. Kd counts once: 7-16 has it inside q, 7-22 in the force, and this q leaves it out there.
     * Source: ASCE 7-16 Equation 26.10-1; ASCE 7-22 Equation 26.10-1 (from memory). Check: VelocityPressureCheck (W5, W6).
     */
    public static Pressure at(SiteWind site, Length height, WindTables tables) {
        double inside = directionality(site);
        double speed = site.speed().mph();
        return Pressure.psf(0.00256
                * exposureFactor(site, height, tables)
                * site.topographic()
                * inside
                * site.elevation()
                * speed
                * speed);
    }

    /** {@link #at} as a line of the calculation book, {@code q}. */
    public static WorkedLine line(SiteWind site, Length height, WindTables tables) {
        boolean inForce = directionality(site) == 1;
        WorkedLine.Open line = WorkedLine.of(
                        "q",
                        "0.00256 \u00d7 Kz \u00d7 Kzt \u00d7 " + (inForce ? "" : "Kd \u00d7 ") + "Ke \u00d7 V\u00b2")
                .put("Kz", exposureFactor(site, height, tables))
                .put("Kzt", site.topographic())
                .put("Ke", site.elevation())
                .put("V", site.speed().mph(), "mph");
        if (!inForce) line.put("Kd", directionality(site));
        return line.gives(at(site, height, tables).psf(), "psf");
    }

    /** Kd as it stands inside q: 1 in the edition that has it in the force. */
    public static double directionality(SiteWind site) {
        return site.edition() == WindEdition.ASCE_7_16 ? DIRECTIONALITY : 1;
    }

    /** What multiplies q and the coefficient into a pressure: G, and Kd where q has none. */
    public static double gustAndDirection(SiteWind site) {
        return site.edition() == WindEdition.ASCE_7_16 ? GUST : GUST * DIRECTIONALITY;
    }

    /**
     * Ke for ground above the sea: {@code exp(-0.0000362 z)}, z in feet; 1 is always allowed.
     * Source: ASCE 7-16 Table 26.9-1. Check: VelocityPressureCheck (W5).
     */
    public static double elevationFactor(Length aboveSea) {
        return StrictMath.exp(-0.0000362 * aboveSea.inFeet());
    }
}
