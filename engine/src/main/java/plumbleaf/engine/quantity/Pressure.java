package plumbleaf.engine.quantity;

/** A pressure on a face or on soil, held in pounds per square foot. */
public record Pressure(double psf) implements Comparable<Pressure> {
    public static final Pressure ZERO = new Pressure(0);

    public Pressure {
        if (!(psf > -1e7 && psf < 1e7))
            throw new IllegalArgumentException("Pressure must be -1e7 to 1e7 psf, was " + DecimalText.shortest(psf));
        psf = psf + 0.0;
    }

    public static Pressure psf(double value) {
        return new Pressure(value);
    }

    public double inPsi() {
        return psf / 144;
    }

    public Pressure plus(Pressure other) {
        return new Pressure(psf + other.psf);
    }

    public Pressure minus(Pressure other) {
        return new Pressure(psf - other.psf);
    }

    public Pressure times(double factor) {
        return new Pressure(psf * factor);
    }

    public boolean isZero() {
        return psf == 0;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(psf, other.psf);
    }
}
