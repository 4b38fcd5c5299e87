package plumbleaf.engine.material;

import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Stress;

/** Steel: what does not differ from grade to grade. */
public final class Steel {
    /** E. Source: AISC 360-22 Symbols. */
    public static final Stress ELASTIC_MODULUS = Stress.ksi(29_000);
    /** G. Source: AISC 360-22 Symbols. */
    public static final Stress SHEAR_MODULUS = Stress.ksi(11_200);
    /** Source: AISC Steel Construction Manual, 16th ed., Part 17, Table 17-12. From memory. */
    public static final Density DENSITY = Density.pcf(490);

    private Steel() {}
}
