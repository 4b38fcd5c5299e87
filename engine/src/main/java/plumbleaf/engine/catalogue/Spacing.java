package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * How far apart boards of a row are set.
 *
 * @param gap wanted from the edge of one board to the next, as one looks square at the fence; negative where they lap
 * @param least least that may be chosen so that whole boards fit; the widest lap
 * @param greatest most that may be chosen; the narrowest lap
 * @param leastRip the narrowest board that may be ripped
 */
public record Spacing(Offset gap, Offset least, Offset greatest, Length leastRip) {
    public Spacing {
        if (least.compareTo(gap) > 0 || greatest.compareTo(gap) < 0)
            throw new IllegalArgumentException("A wanted gap lies between the least and the greatest");
    }

    /** Whether neighbouring boards lap: they lie in two layers. */
    public boolean laps() {
        return gap.inches() < 0;
    }
}
