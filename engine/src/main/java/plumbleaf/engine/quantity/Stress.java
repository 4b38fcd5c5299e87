package plumbleaf.engine.quantity;

/** A stress or a modulus, held in pounds per square inch. */
public record Stress(double psi) implements Comparable<Stress> {
    public static final Stress ZERO = new Stress(0);

    public Stress {
        if (!(psi > -1e9 && psi < 1e9))
            throw new IllegalArgumentException("Stress must be -1e9 to 1e9 psi, was " + DecimalText.shortest(psi));
        psi = psi + 0.0;
    }

    public static Stress psi(double value) {
        return new Stress(value);
    }

    public static Stress ksi(double value) {
        return new Stress(value * 1000);
    }

    public double inKsi() {
        return psi / 1000;
    }

    public Stress plus(Stress other) {
        return new Stress(psi + other.psi);
    }

    public Stress minus(Stress other) {
        return new Stress(psi - other.psi);
    }

    public Stress times(double factor) {
        return new Stress(psi * factor);
    }

    public boolean isZero() {
        return psi == 0;
    }

    @Override
    public int compareTo(Stress other) {
        return Double.compare(psi, other.psi);
    }
}
