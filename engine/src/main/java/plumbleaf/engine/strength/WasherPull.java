package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** A thin wall pulled over the washer of a bolt. */
public final class WasherPull {
    /** Omega of pull-over. Source: AISI S100-16 J4.4.2. */
    public static final double SAFETY = 3.0;

    /** Wider washers count no more. Source: AISI S100-16 J4.4.2. */
    private static final double WIDEST_IN = 0.75;

    private WasherPull() {}

    /** How much of a washer counts. */
    static double counted(Length over) {
        return Math.min(WIDEST_IN, over.inches());
    }

    /**
     * {@code 1.5 t dw Fu / 3}, dw 3/4 in. at most. The standard writes it for screws in sheet to 3/16 in.; a bolt with its nut is no weaker (judgement).
     * Source: AISI S100-16 Equation J4.4.2-1, from memory. Check: WasherPullTest.
     *
     * @param over dw, outside of the washer
     */
    public static Force allowable(Section wall, Length over) {
        double dw = counted(over);
        return Force.pounds(
                1.5 * wall.designWall().inches() * dw * wall.ultimateStress().psi() / SAFETY);
    }
}
