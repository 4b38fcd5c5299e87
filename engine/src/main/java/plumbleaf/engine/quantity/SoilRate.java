package plumbleaf.engine.quantity;

/** How fast the stiffness of the ground grows with depth (n_h), held in pounds per cubic inch. */
public record SoilRate(double poundsPerCubicInch) implements Comparable<SoilRate> {
    public static final SoilRate ZERO = new SoilRate(0);

    public SoilRate {
        if (!(poundsPerCubicInch >= 0 && poundsPerCubicInch < 1e5))
            throw new IllegalArgumentException(
                    "SoilRate must be 0 to 1e5 lb/in3, was " + DecimalText.shortest(poundsPerCubicInch));
        poundsPerCubicInch = poundsPerCubicInch + 0.0;
    }

    public static SoilRate poundsPerCubicInch(double value) {
        return new SoilRate(value);
    }

    public SoilRate plus(SoilRate other) {
        return new SoilRate(poundsPerCubicInch + other.poundsPerCubicInch);
    }

    public SoilRate minus(SoilRate other) {
        return new SoilRate(poundsPerCubicInch - other.poundsPerCubicInch);
    }

    public SoilRate times(double factor) {
        return new SoilRate(poundsPerCubicInch * factor);
    }

    public boolean isZero() {
        return poundsPerCubicInch == 0;
    }

    @Override
    public int compareTo(SoilRate other) {
        return Double.compare(poundsPerCubicInch, other.poundsPerCubicInch);
    }
}
