package plumbleaf.engine.quantity;

/** A signed moment, held in pound-inches. */
public record Moment(double poundInches) implements Comparable<Moment> {
    public static final Moment ZERO = new Moment(0);

    public Moment {
        if (!(poundInches > -1e12 && poundInches < 1e12))
            throw new IllegalArgumentException(
                    "Moment must be -1e12 to 1e12 lb-in, was " + DecimalText.shortest(poundInches));
        poundInches = poundInches + 0.0;
    }

    public static Moment poundInches(double value) {
        return new Moment(value);
    }

    public static Moment poundFeet(double value) {
        return new Moment(value * 12);
    }

    public double inPoundFeet() {
        return poundInches / 12;
    }

    public Moment plus(Moment other) {
        return new Moment(poundInches + other.poundInches);
    }

    public Moment minus(Moment other) {
        return new Moment(poundInches - other.poundInches);
    }

    public Moment times(double factor) {
        return new Moment(poundInches * factor);
    }

    public boolean isZero() {
        return poundInches == 0;
    }

    @Override
    public int compareTo(Moment other) {
        return Double.compare(poundInches, other.poundInches);
    }
}
