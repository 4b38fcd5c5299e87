package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Volume;

/**
 * Ground shaped so that a leaf clears it: shaved, or made a level landing.
 *
 * @param part the gate, or a leaf of a pair
 * @param soil that is cut, as it lies, undug
 * @param deepest cut
 * @param fill that is brought in, as it lies, compacted; none where ground is only shaved
 * @param highest fill
 */
public record Regrade(String part, Volume soil, Length deepest, Volume fill, Length highest) {
    /** {@code 1.57 cu ft of fill, up to 3-7/8", and 0.12 cu ft of soil to cut, up to 1-3/8"}. */
    String words(DisplayUnits display) {
        String filled = part(display, fill, "of fill", highest);
        String cut = part(display, soil, "of soil to cut", deepest);
        if (fill.isZero()) return cut;
        return soil.isZero() ? filled : filled + ", and " + cut;
    }

    private static String part(DisplayUnits display, Volume volume, String what, Length most) {
        return DecimalText.upTo(volume.cubicFeet(), 2) + " cu ft " + what + ", up to " + display.length(most);
    }

    /** Ground that is only shaved. */
    static Regrade shaved(String part, Volume soil, Length deepest) {
        return new Regrade(part, soil, deepest, Volume.ZERO, Length.ZERO);
    }
}
