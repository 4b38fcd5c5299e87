package plumbleaf.engine.takeoff;

import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.quantity.DecimalText;

/** What the yard calls a board: {@code rail-2x4/western_redcedar}. Nominal sizes by the dressed ones, PS 20 (from memory). */
final class WoodItem {
    private WoodItem() {}

    static String picket(FenceStyle style) {
        return "picket-"
                + size(style.boardThickness().inches(), style.boardWidth().inches()) + "/" + style.species();
    }

    static String rail(FenceStyle style) {
        return "rail-" + size(style.railThickness().inches(), style.railWidth().inches()) + "/" + style.railSpecies();
    }

    private static String size(double thickIn, double wideIn) {
        return nominal(thickIn) + "x" + nominal(wideIn);
    }

    /** A board under an inch is a 1; 1-1/2 is a 2, 3-1/2 a 4, 5-1/2 a 6, 7-1/4 an 8. */
    private static String nominal(double dressedIn) {
        if (dressedIn < 1) return "1";
        double up = Math.ceil(dressedIn);
        return DecimalText.upTo(up, 0);
    }
}
