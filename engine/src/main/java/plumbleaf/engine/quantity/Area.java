package plumbleaf.engine.quantity;

/** An area, held in square inches. */
public record Area(double squareInches) implements Comparable<Area> {
    public static final Area ZERO = new Area(0);

    public Area {
        if (!(squareInches >= 0 && squareInches < 1e12))
            throw new IllegalArgumentException("Area must be 0 to 1e12 in2, was " + DecimalText.shortest(squareInches));
        squareInches = squareInches + 0.0;
    }

    public static Area squareInches(double value) {
        return new Area(value);
    }

    public static Area squareFeet(double value) {
        return new Area(value * 144);
    }

    public double inSquareFeet() {
        return squareInches / 144;
    }

    public Area plus(Area other) {
        return new Area(squareInches + other.squareInches);
    }

    public Area minus(Area other) {
        return new Area(squareInches - other.squareInches);
    }

    public Area times(double factor) {
        return new Area(squareInches * factor);
    }

    public boolean isZero() {
        return squareInches == 0;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareInches, other.squareInches);
    }
}
