package plumbleaf.engine.material;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** How much a board grows and shrinks with its moisture. */
public final class WoodMovement {
    private WoodMovement() {}

    /**
     * Change of width between two moistures of normal service: {@code w C (M2 - M1)}, negative when the board shrinks.
     * Holds from 6 to 14 % moisture only. Source: USDA Wood Handbook FPL-GTR-190, equation 13-1. Check: WoodMovementCheck.
     *
     * @param width the board's width at {@code from}
     * @param perPct C_T for a flat-sawn face, C_R for a quarter-sawn one, per per cent
     */
    public static Offset inService(Length width, double perPct, Moisture from, Moisture to) {
        return Offset.inches(width.inches() * perPct * (to.percent() - from.percent()));
    }

    /**
     * Change of width between any two moistures: {@code w (M2 - M1) / (100 fsp / S - fsp + M1)}, both moistures held at fibre saturation
     * first; negative when the board shrinks. Source: USDA Wood Handbook FPL-GTR-190, equation 13-2 (from memory). Check: WoodMovementCheck.
     *
     * @param width the board's width at {@code from}
     * @param shrinkPct S, green to oven-dry, per cent
     * @param fibreSaturation fsp, above which nothing moves
     */
    public static Offset overall(Length width, double shrinkPct, Moisture fibreSaturation, Moisture from, Moisture to) {
        double fsp = fibreSaturation.percent();
        double m1 = from.atMost(fibreSaturation).percent();
        double m2 = to.atMost(fibreSaturation).percent();
        return Offset.inches(width.inches() * (m2 - m1) / (100 * fsp / shrinkPct - fsp + m1));
    }

    /**
     * Coefficient of change from the whole shrinkage, on the size at 10 % moisture: {@code (S/100/fsp) / (1 - (S/100)(fsp - 10)/fsp)}.
     * Source: derived from Wood Handbook Tables 4-3 and 13-5, which it reproduces. Check: WoodMovementCheck.
     */
    public static double perPct(double shrinkPct, Moisture fibreSaturation) {
        double fsp = fibreSaturation.percent();
        double share = shrinkPct / 100;
        return share / fsp / (1 - share * (fsp - 10) / fsp);
    }
}
