package plumbleaf.engine.quantity;

/** A signed distance or height, held in inches; which way is positive is said where it is used. */
public record Offset(double inches) implements Comparable<Offset> {
    public static final Offset ZERO = new Offset(0);

    public Offset {
        if (!(inches > -1e7 && inches < 1e7))
            throw new IllegalArgumentException("Offset must be -1e7 to 1e7 in, was " + DecimalText.shortest(inches));
        inches = inches + 0.0;
    }

    public static Offset inches(double value) {
        return new Offset(value);
    }

    public static Offset feet(double value) {
        return new Offset(value * 12);
    }

    public static Offset nanometres(long value) {
        return new Offset(value / 25_400_000.0);
    }

    public double inFeet() {
        return inches / 12;
    }

    public Length size() {
        return new Length(Math.abs(inches));
    }

    public Offset negated() {
        return new Offset(-inches);
    }

    public Offset plus(Offset other) {
        return new Offset(inches + other.inches);
    }

    public Offset minus(Offset other) {
        return new Offset(inches - other.inches);
    }

    public Offset times(double factor) {
        return new Offset(inches * factor);
    }

    public boolean isZero() {
        return inches == 0;
    }

    @Override
    public int compareTo(Offset other) {
        return Double.compare(inches, other.inches);
    }
}
