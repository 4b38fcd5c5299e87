package plumbleaf.engine.quantity;

/** A signed angle, held in radians. */
public record Angle(double radians) implements Comparable<Angle> {
    public static final Angle ZERO = new Angle(0);

    public Angle {
        if (!(radians > -1e3 && radians < 1e3))
            throw new IllegalArgumentException("Angle must be -1000 to 1000 rad, was " + DecimalText.shortest(radians));
        radians = radians + 0.0;
    }

    public static Angle radians(double value) {
        return new Angle(value);
    }

    public static Angle degrees(double value) {
        return new Angle(value * (Math.PI / 180));
    }

    public double inDegrees() {
        return radians * (180 / Math.PI);
    }

    public Angle plus(Angle other) {
        return new Angle(radians + other.radians);
    }

    public Angle minus(Angle other) {
        return new Angle(radians - other.radians);
    }

    public Angle times(double factor) {
        return new Angle(radians * factor);
    }

    public boolean isZero() {
        return radians == 0;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }
}
