package plumbleaf.engine.quantity;

/** A volume, held in cubic feet. */
public record Volume(double cubicFeet) implements Comparable<Volume> {
    public static final Volume ZERO = new Volume(0);

    public Volume {
        if (!(cubicFeet >= 0 && cubicFeet < 1e9))
            throw new IllegalArgumentException("Volume must be 0 to 1e9 ft3, was " + DecimalText.shortest(cubicFeet));
        cubicFeet = cubicFeet + 0.0;
    }

    public static Volume cubicFeet(double value) {
        return new Volume(value);
    }

    public static Volume cubicInches(double value) {
        return new Volume(value / 1728);
    }

    public double inCubicYards() {
        return cubicFeet / 27;
    }

    public Volume plus(Volume other) {
        return new Volume(cubicFeet + other.cubicFeet);
    }

    public Volume minus(Volume other) {
        return new Volume(cubicFeet - other.cubicFeet);
    }

    public Volume times(double factor) {
        return new Volume(cubicFeet * factor);
    }

    public boolean isZero() {
        return cubicFeet == 0;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicFeet, other.cubicFeet);
    }
}
