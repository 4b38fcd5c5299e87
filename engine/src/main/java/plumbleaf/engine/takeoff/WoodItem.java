package plumbleaf.engine.takeoff;

import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.quantity.DecimalText;

/** What the yard calls a board: {@code rail-2x4/western_redcedar}. Nominal sizes by the dressed ones, PS 20 (from memory). */
final class WoodItem {
    private WoodItem() {}

    static String picket(Boarding style) {
        return of("picket", style.board());
    }

    static String rail(Boarding style) {
        return of("rail", style.rail());
    }

    /** {@code cap-2x6/western_redcedar}. */
    static String of(String use, Board board) {
        return use + "-" + size(board.thickness().inches(), board.width().inches()) + "/" + board.species();
    }

    private static String size(double thickIn, double wideIn) {
        return nominal(thickIn) + "x" + nominal(wideIn);
    }

    /** A board under an inch is a 1, under 1-1/4 a 5/4; 1-1/2 is a 2, 3-1/2 a 4, 5-1/2 a 6, 7-1/4 an 8. */
    private static String nominal(double dressedIn) {
        if (dressedIn < 1) return "1";
        if (dressedIn < 1.25) return "5/4";
        double up = Math.ceil(dressedIn);
        return DecimalText.upTo(up, 0);
    }

    /** Thickness and width of a dressed board, read back from its name; 0 for what is no board. PS 20 (from memory). */
    static double[] dressedIn(String item) {
        int from = item.indexOf('-') + 1;
        int to = item.indexOf('/', item.indexOf('x', from));
        int by = item.indexOf('x', from);
        if (from <= 0 || by < 0 || to < by) return new double[] {0, 0};
        return new double[] {dressed(item.substring(from, by), true), dressed(item.substring(by + 1, to), false)};
    }

    private static double dressed(String nominal, boolean thickness) {
        if (nominal.equals("5/4")) return 1;
        double up = Double.parseDouble(nominal);
        if (up == 1) return 0.75;
        if (up >= 8 && !thickness) return up - 0.75;
        return up - 0.5;
    }
}
