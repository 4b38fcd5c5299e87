package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/** Cap, fascia, kick boards and lattice of a bay: spliced on its posts, mitred where the line turns, run past its ends. */
final class TrimNeeds {
    /** How far a cap runs past an end post. Judgement. */
    private static final double OVERHANG_IN = 1;

    /** Screws along a board of trim: two every 16 in. and two at each end. Common practice, no source. */
    private static final double SCREW_SPACING_IN = 16;

    private final Bay bay;
    private final BayGoods goods;
    private final List<BarNeed> bars = new ArrayList<>();
    private final List<Need> loose = new ArrayList<>();

    private TrimNeeds(Bay bay, BayGoods goods) {
        this.bay = bay;
        this.goods = goods;
    }

    static Needs of(Bay bay, FenceTrim trim, BayGoods goods) {
        TrimNeeds needs = new TrimNeeds(bay, goods);
        trim.cap().ifPresent(board -> needs.board("cap", board, board.width(), true));
        trim.fascia().ifPresent(board -> needs.board("fascia", board, board.thickness(), true));
        trim.kick().ifPresent(board -> needs.board("kick", board, board.thickness(), false));
        trim.lattice().ifPresent(needs::lattice);
        return new Needs(needs.loose, needs.bars);
    }

    /**
     * Along the grade from post center to post center; at a turn by {@code t} mitred at half of it from square, which adds {@code b/2 tan(t/2)} to the long point;
     * at an end as far as the post's face, a cap an inch beyond. Geometry. Check: EveryStyleTest.
     *
     * @param across what lies across the mitre
     * @param over whether it passes over the posts; a kick board lies between them
     */
    private void board(String use, Board board, Length across, boolean over) {
        double inches = bay.slopeLength().inches()
                + past(goods.from(), use, across, over)
                + past(goods.to(), use, across, over);
        Piece piece = new Piece(
                bay.id() + "." + use,
                bay.id(),
                Length.inches(inches).nanometres(),
                mitre(goods.from()),
                mitre(goods.to()),
                Piece.Ends.OPPOSED);
        bars.add(new BarNeed(WoodItem.of(use, board), words(use), PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        int rows = (int) Math.ceil(bay.slopeLength().inches() / SCREW_SPACING_IN - 1e-9) + 1;
        loose.add(Need.pieces("trim-screw", "trim screw", PartGroup.HARDWARE, 2 * rows, bay.id()));
    }

    static String words(String use) {
        return use.equals("kick") ? "kick board" : use.equals("cap") ? "cap board" : "fascia board";
    }

    private static double past(BayGoods.End end, String use, Length across, boolean over) {
        double half = end.post().inches() / 2;
        if (!over) return -half;
        if (end.role() == PostRole.CORNER)
            return across.inches() / 2 * StrictMath.tan(end.turn().radians() / 2);
        if (end.role() == PostRole.LINE) return 0;
        return half + (use.equals("cap") && end.role() == PostRole.END ? OVERHANG_IN : 0);
    }

    private static Angle mitre(BayGoods.End end) {
        return end.role() == PostRole.CORNER ? new Angle(end.turn().radians() / 2) : Angle.ZERO;
    }

    private void lattice(FenceTrim.Lattice lattice) {
        double ft2 = bay.slopeLength().inFeet() * lattice.height().inFeet();
        loose.add(new Need(
                "lattice/" + lattice.species(), "lattice", PartGroup.FENCE, NetUnit.SQUARE_FEET, ft2, bay.id()));
    }
}
