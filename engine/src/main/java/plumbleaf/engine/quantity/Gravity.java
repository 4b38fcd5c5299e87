package plumbleaf.engine.quantity;

/** Standard gravity: 9.80665 m/s2, which is 386.0886 in./s2. Source: ISO 80000-3, from memory. */
public final class Gravity {
    public static final double IN_PER_S2 = 386.0886;

    private Gravity() {}
}
