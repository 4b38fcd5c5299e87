package plumbleaf.engine.material;

import plumbleaf.engine.quantity.Density;

/** Concrete as footings are weighed with. */
public final class Concrete {
    /** Normal weight. Source: ACI PRC-304 mass tables, from memory; common practice for plain footings. */
    public static final Density DENSITY = Density.pcf(150);

    private Concrete() {}
}
