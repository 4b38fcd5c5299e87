package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
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
        return post(post, true);
    }

    /** @param plainCap whether it takes a cap that closes it; a rail that passes over it has a cap of its own */
    static Needs post(PostTake post, boolean plainCap) {
        List<Need> loose = new ArrayList<>();
        String section = post.section().id();
        if (plainCap)
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

    /** Rails with brackets and screws, what fills the bay with its screws, and trim. */
    public static Needs bay(Assembly.StyledBay styled) {
        Bay bay = styled.bay();
        BayGoods goods = styled.goods();
        Needs filled = styled.style()
                .infill()
                .match(
                        up -> boarded(bay, styled.style().boarding(), goods),
                        both -> boarded(bay, styled.style().boarding(), goods),
                        lying -> lying(bay, lying, goods),
                        panel -> panel(bay, styled.style(), panel),
                        fabric -> Needs.none(),
                        mesh -> mesh(bay, mesh, goods));
        return filled.plus(TrimNeeds.of(bay, styled.style().trim(), goods));
    }

    private static Needs boarded(Bay bay, Optional<Boarding> boards, BayGoods goods) {
        return boards.map(style -> boarded(bay, style, goods)).orElse(Needs.none());
    }

    private static Needs boarded(Bay bay, Boarding style, BayGoods goods) {
        List<BarNeed> bars = new ArrayList<>(pieces(bay.rails(), "r", bay, WoodItem.rail(style), "rail"));
        List<Need> loose = new ArrayList<>();
        int back = 0;
        int front = 0;
        for (FencePicket picket : bay.pickets().pickets()) {
            Piece piece = Piece.square(
                    bay.id() + ".k" + (back + front + 1),
                    bay.id(),
                    picket.length().nanometres());
            bars.add(new BarNeed(WoodItem.picket(style), "picket", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
            if (picket.layer() == FencePicket.Layer.FRONT) front++;
            else back++;
        }
        int rails = bay.rails().size();
        if (goods.woodPosts())
            loose.add(Need.pieces("rail-screw", "rail screw", PartGroup.HARDWARE, 2 * 2 * rails, bay.id()));
        else {
            loose.add(
                    Need.pieces("rail-bracket", "rail bracket", PartGroup.HARDWARE, BRACKETS_A_RAIL * rails, bay.id()));
            loose.add(Need.pieces(
                    "bracket-screw",
                    "bracket screw",
                    PartGroup.HARDWARE,
                    SCREWS_A_BRACKET * BRACKETS_A_RAIL * rails,
                    bay.id()));
        }
        loose.add(screws(goods.back(), back * rails * style.fastenersPerCrossing(), bay));
        loose.add(screws(goods.front(), front * rails * style.fastenersPerCrossing(), bay));
        return new Needs(loose, bars);
    }

    private static Need screws(Screw screw, int count, Bay bay) {
        return Need.pieces(screw.id(), "picket screw", PartGroup.HARDWARE, count, bay.id());
    }

    private static List<BarNeed> pieces(List<RailPiece> rails, String mark, Bay bay, String item, String name) {
        List<BarNeed> bars = new ArrayList<>();
        for (int i = 0; i < rails.size(); i++) {
            RailPiece rail = rails.get(i);
            Piece piece = new Piece(
                    bay.id() + "." + mark + (i + 1),
                    bay.id(),
                    rail.longPoint().nanometres(),
                    end(rail, 0),
                    end(rail, 1),
                    Piece.Ends.PARALLEL);
            bars.add(new BarNeed(item, name, PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        return bars;
    }

    /** Boards spliced on their posts, screwed at both ends. */
    private static Needs lying(Bay bay, FenceInfill.Lying lying, BayGoods goods) {
        List<RailPiece> boards = bay.fill()
                .match(
                        open -> List.of(),
                        pickets -> List.of(),
                        BayFill.Lying::boards,
                        panel -> List.of(),
                        fabric -> List.of(),
                        mesh -> List.of());
        return new Needs(
                List.of(screws(goods.back(), 2 * lying.fasteners() * boards.size(), bay)),
                pieces(boards, "b", bay, WoodItem.of("board", lying.board()), "board"));
    }

    /** A whole panel a bay, cut where the bay is shorter, on a bracket at each end of each rail. */
    private static Needs panel(Bay bay, FenceStyle style, FenceInfill.Panel panel) {
        double high = bay.topFrom().inches() - bay.bottomFrom().inches();
        int brackets = 2 * bay.rails().size();
        String item = style.id() + "-" + DecimalText.upTo(high, 2) + "x"
                + DecimalText.upTo(panel.length().inches(), 2);
        return new Needs(
                List.of(
                        Need.pieces(item, "panel, " + style.name(), PartGroup.FENCE, 1, bay.id()),
                        Need.pieces("panel-bracket", "panel bracket", PartGroup.HARDWARE, brackets, bay.id()),
                        Need.pieces("bracket-screw", "bracket screw", PartGroup.HARDWARE, 4 * brackets, bay.id())),
                List.of());
    }

    /** Sheets by the area, clips a foot apart along rails and posts, rails coped to the posts and welded round. */
    private static Needs mesh(Bay bay, FenceInfill.Mesh mesh, BayGoods goods) {
        double high = bay.topFrom().inches() - bay.bottomFrom().inches();
        double ft2 = bay.slopeLength().inFeet() * high / 12;
        int clips = (int) Math.ceil(bay.slopeLength().inFeet() * bay.rails().size() + 2 * high / 12);
        List<Need> loose = new ArrayList<>();
        loose.add(new Need(
                "mesh-" + DecimalText.upTo(mesh.wire().inches(), 3) + "-"
                        + DecimalText.upTo(mesh.across().inches(), 2) + "x"
                        + DecimalText.upTo(mesh.upright().inches(), 2),
                "welded wire sheet",
                PartGroup.FENCE,
                NetUnit.SQUARE_FEET,
                ft2,
                bay.id()));
        loose.add(Need.pieces("mesh-clip", "mesh clip", PartGroup.HARDWARE, clips, bay.id()));
        List<BarNeed> bars = new ArrayList<>();
        goods.rail().ifPresent(section -> {
            for (int i = 0; i < bay.rails().size(); i++) {
                RailPiece rail = bay.rails().get(i);
                Piece piece = new Piece(
                        bay.id() + ".r" + (i + 1),
                        bay.id(),
                        rail.longPoint().nanometres(),
                        end(rail, 0),
                        end(rail, 1),
                        Piece.Ends.PARALLEL);
                bars.add(new BarNeed(section.id(), section.name(), PartGroup.FENCE, BarNeed.Saw.STEEL, piece));
                double beadIn = 2 * Math.PI * section.depth().inches();
                loose.add(GateNeeds.wire(section, beadIn, piece.id()));
                loose.add(GateNeeds.zinc(beadIn, piece.id()));
            }
        });
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
