package plumbleaf.engine.quantity;

/** A signed force, held in pounds-force; weights are forces. */
public record Force(double pounds) implements Comparable<Force> {
    public static final Force ZERO = new Force(0);

    public Force {
        if (!(pounds > -1e9 && pounds < 1e9))
            throw new IllegalArgumentException("Force must be -1e9 to 1e9 lbf, was " + DecimalText.shortest(pounds));
        pounds = pounds + 0.0;
    }

    public static Force pounds(double value) {
        return new Force(value);
    }

    public Force plus(Force other) {
        return new Force(pounds + other.pounds);
    }

    public Force minus(Force other) {
        return new Force(pounds - other.pounds);
    }

    public Force times(double factor) {
        return new Force(pounds * factor);
    }

    public boolean isZero() {
        return pounds == 0;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(pounds, other.pounds);
    }
}
