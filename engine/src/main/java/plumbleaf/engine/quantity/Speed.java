package plumbleaf.engine.quantity;

/** A wind speed: three-second gust, held in miles per hour. */
public record Speed(double mph) implements Comparable<Speed> {
    public static final Speed ZERO = new Speed(0);

    public Speed {
        if (!(mph >= 0 && mph < 1000))
            throw new IllegalArgumentException("Speed must be 0 to 1000 mph, was " + DecimalText.shortest(mph));
        mph = mph + 0.0;
    }

    public static Speed mph(double value) {
        return new Speed(value);
    }

    public Speed plus(Speed other) {
        return new Speed(mph + other.mph);
    }

    public Speed minus(Speed other) {
        return new Speed(mph - other.mph);
    }

    public Speed times(double factor) {
        return new Speed(mph * factor);
    }

    public boolean isZero() {
        return mph == 0;
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(mph, other.mph);
    }
}
