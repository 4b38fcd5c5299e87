package plumbleaf.engine.quantity;

/**
 * What one US unit is in the metric one that people read. Each is made of three exact factors: the inch is 0.0254 m, the pound 0.45359237 kg,
 * standard gravity 9.80665 m/s squared. Source: NIST SP 811 (2008), Appendix B.8 and footnotes, from memory.
 */
public final class MetricFactor {
    public static final double KG_PER_LB = 0.45359237;
    public static final double NEWTON_PER_LB = 4.4482216152605;
    public static final double NM_PER_LB_IN = NEWTON_PER_LB * 0.0254;
    public static final double MPA_PER_PSI = NEWTON_PER_LB / (25.4 * 25.4);
    public static final double KPA_PER_PSF = NEWTON_PER_LB / (0.3048 * 0.3048) / 1000;
    public static final double MN_M3_PER_LB_IN3 = NEWTON_PER_LB / (0.0254 * 0.0254 * 0.0254) / 1e6;
    public static final double METRES_A_SECOND_PER_MPH = 0.44704;

    private MetricFactor() {}
}
