package plumbleaf.engine.quantity;

/** A length of zero or more, held in inches. Signed distances are {@link Offset}s. */
public record Length(double inches) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);

    public Length {
        if (!(inches >= 0 && inches < 1e7))
            throw new IllegalArgumentException("Length must be 0 to 1e7 in, was " + DecimalText.shortest(inches));
        inches = inches + 0.0;
    }

    public static Length inches(double value) {
        return new Length(value);
    }

    public static Length feet(double value) {
        return new Length(value * 12);
    }

    /** A whole number of nanometres, which is how lengths are read: 25,400,000 to the inch, exactly. */
    public static Length nanometres(long value) {
        return new Length(value / 25_400_000.0);
    }

    public double inFeet() {
        return inches / 12;
    }

    /** The nearest whole nanometre; exact for a length that was read as one. */
    public long nanometres() {
        return Math.round(inches * 25_400_000.0);
    }

    public Offset asOffset() {
        return new Offset(inches);
    }

    public Length plus(Length other) {
        return new Length(inches + other.inches);
    }

    public Length minus(Length other) {
        return new Length(inches - other.inches);
    }

    public Length times(double factor) {
        return new Length(inches * factor);
    }

    public boolean isZero() {
        return inches == 0;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(inches, other.inches);
    }
}
