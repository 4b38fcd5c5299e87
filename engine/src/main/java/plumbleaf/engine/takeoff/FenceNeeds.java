package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Volume;

/** What posts, holes and bays need. */
public final class FenceNeeds {
    /** Rail brackets of a rail on steel posts: one an end. */
    private static final int BRACKETS_A_RAIL = 2;

    /** Screws of a bracket into rail and post. Common practice, no source. */
    private static final int SCREWS_A_BRACKET = 4;

    private FenceNeeds() {}

    /** The post itself, its cap, concrete round it and gravel under it. */
    public static Needs post(PostTake post) {
        List<Need> loose = new ArrayList<>();
        String section = post.section().id();
        loose.add(Need.pieces(capItem(post), "cap for " + post.section().name(), PartGroup.HARDWARE, 1, post.id()));
        if (post.anchors() > 0)
            loose.add(Need.pieces("wall-anchor", "wedge anchor", PartGroup.HARDWARE, post.anchors(), post.id()));
        loose.addAll(HoldNeeds.of(post));
        if (post.isDug()) {
            loose.add(new Need(
                    "concrete",
                    "concrete",
                    PartGroup.FOOTINGS,
                    NetUnit.CUBIC_FEET,
                    concrete(post).cubicFeet(),
                    post.id()));
            double gravelFt3 = holeIn2(post) * post.gravel().inches() / 1728;
            loose.add(new Need("gravel", "drain gravel", PartGroup.FOOTINGS, NetUnit.CUBIC_FEET, gravelFt3, post.id()));
        }
        Piece piece = Piece.square(post.id(), post.run(), post.length().nanometres());
        BarNeed bar = new BarNeed(
                section,
                post.section().name(),
                PartGroup.POSTS,
                post.section().match(steel -> BarNeed.Saw.STEEL, wood -> BarNeed.Saw.WOOD),
                piece);
        return new Needs(loose, List.of(bar));
    }

    /** Caps go by outside size. */
    private static String capItem(PostTake post) {
        String depth = DecimalText.upTo(post.section().depth().inches(), 4);
        if (post.section().isRound()) return "post-cap-round-" + depth;
        return "post-cap-" + depth + "x"
                + DecimalText.upTo(post.section().width().inches(), 4);
    }

    private static Volume concrete(PostTake post) {
        return Pour.of(new HoleSize(post.hole(), post.depth()), post.outline()).volume();
    }

    private static double holeIn2(PostTake post) {
        double d = post.hole().inches();
        return Math.PI * d * d / 4;
    }

    /** Rails with brackets and screws, pickets with their screws. */
    public static Needs bay(Bay bay, FenceStyle style) {
        return style.boarding().map(boards -> boarded(bay, boards)).orElse(Needs.none());
    }

    private static Needs boarded(Bay bay, Boarding style) {
        List<BarNeed> bars = new ArrayList<>();
        List<Need> loose = new ArrayList<>();
        String railItem = WoodItem.rail(style);
        String picketItem = WoodItem.picket(style);
        for (int i = 0; i < bay.rails().size(); i++) {
            RailPiece rail = bay.rails().get(i);
            Piece piece = new Piece(
                    bay.id() + ".r" + (i + 1),
                    bay.id(),
                    rail.longPoint().nanometres(),
                    end(rail, 0),
                    end(rail, 1),
                    Piece.Ends.PARALLEL);
            bars.add(new BarNeed(railItem, "rail", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        int pickets = 0;
        for (FencePicket picket : bay.pickets().pickets()) {
            pickets++;
            Piece piece = Piece.square(
                    bay.id() + ".k" + pickets, bay.id(), picket.length().nanometres());
            bars.add(new BarNeed(picketItem, "picket", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        int rails = bay.rails().size();
        loose.add(Need.pieces("rail-bracket", "rail bracket", PartGroup.HARDWARE, BRACKETS_A_RAIL * rails, bay.id()));
        loose.add(Need.pieces(
                "bracket-screw",
                "bracket screw",
                PartGroup.HARDWARE,
                SCREWS_A_BRACKET * BRACKETS_A_RAIL * rails,
                bay.id()));
        loose.add(Need.pieces(
                "picket-screw",
                "picket screw",
                PartGroup.HARDWARE,
                pickets * rails * style.fastenersPerCrossing(),
                bay.id()));
        return new Needs(loose, bars);
    }

    private static Angle end(RailPiece rail, int index) {
        return rail.endsFromSquare().size() > index ? rail.endsFromSquare().get(index) : Angle.ZERO;
    }

    /**
     * Pickets over a straight stretch: {@code ceil((L + gap) / (w + gap))}. Geometry. Check: TakeoffCheck (MX15, MX16).
     */
    public static int picketsOver(double lengthIn, double widthIn, double gapIn) {
        return (int) Math.ceil((lengthIn + gapIn) / (widthIn + gapIn) - 1e-9);
    }
}
