package plumbleaf.documents.drawing;

import java.util.Arrays;

/** The contractor's own mark: a picture on white, as the bytes of a PNG that was made here from what was brought. */
public final class Emblem {
    private final byte[] png;
    private final int wide;
    private final int high;

    /**
     * @param wide pixels across
     * @param high pixels down
     */
    public Emblem(byte[] png, int wide, int high) {
        if (wide < 1 || high < 1) throw new IllegalArgumentException("A mark has pixels, was " + wide + " by " + high);
        this.png = png.clone();
        this.wide = wide;
        this.high = high;
    }

    public byte[] png() {
        return png.clone();
    }

    /** How much wider it is than high. */
    public double shape() {
        return (double) wide / high;
    }

    /** The largest box of its own shape in the upper left of a room. */
    public Box within(double minX, double maxY, double wideIn, double highIn) {
        double across = Math.min(wideIn, highIn * shape());
        double down = across / shape();
        return new Box(minX, maxY - down, minX + across, maxY);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Emblem same && Arrays.equals(png, same.png);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(png);
    }
}
