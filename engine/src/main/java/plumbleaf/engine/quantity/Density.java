package plumbleaf.engine.quantity;

/** A density, held in pounds per cubic foot. */
public record Density(double pcf) implements Comparable<Density> {
    public static final Density ZERO = new Density(0);

    public Density {
        if (!(pcf >= 0 && pcf < 5000))
            throw new IllegalArgumentException("Density must be 0 to 5000 pcf, was " + DecimalText.shortest(pcf));
        pcf = pcf + 0.0;
    }

    public static Density pcf(double value) {
        return new Density(value);
    }

    public double perCubicInch() {
        return pcf / 1728;
    }

    public Density plus(Density other) {
        return new Density(pcf + other.pcf);
    }

    public Density minus(Density other) {
        return new Density(pcf - other.pcf);
    }

    public Density times(double factor) {
        return new Density(pcf * factor);
    }

    public boolean isZero() {
        return pcf == 0;
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(pcf, other.pcf);
    }
}
