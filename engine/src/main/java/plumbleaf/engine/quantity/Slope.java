package plumbleaf.engine.quantity;

/**
 * A grade: rise over run, positive upwards in the direction it is taken. Ground at a wall or a curb, or a slip of the rod, may stand nearly upright: that is
 * for findings to say, not for this.
 */
public record Slope(double ratio) implements Comparable<Slope> {
    public static final Slope ZERO = new Slope(0);

    public Slope {
        if (!(ratio > -1e12 && ratio < 1e12))
            throw new IllegalArgumentException(
                    "Slope must be -1e12 to 1e12 rise over run, was " + DecimalText.shortest(ratio));
        ratio = ratio + 0.0;
    }

    public static Slope ratio(double value) {
        return new Slope(value);
    }

    public static Slope percent(double value) {
        return new Slope(value / 100);
    }

    public double inPercent() {
        return ratio * 100;
    }

    public Angle angle() {
        return new Angle(StrictMath.atan(ratio));
    }

    public Slope plus(Slope other) {
        return new Slope(ratio + other.ratio);
    }

    public Slope minus(Slope other) {
        return new Slope(ratio - other.ratio);
    }

    public Slope times(double factor) {
        return new Slope(ratio * factor);
    }

    public boolean isZero() {
        return ratio == 0;
    }

    @Override
    public int compareTo(Slope other) {
        return Double.compare(ratio, other.ratio);
    }
}
