package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.EndsTurn;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.Sticks;
import plumbleaf.engine.gate.Weld;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** What a leaf needs: tube, welds, infill, hardware. */
public final class GateNeeds {
    /** Steel, 490 pcf. */
    private static final double STEEL_LB_PER_IN3 = 490 / 1728.0;

    /** Share of the wire that ends in the bead; the rest is spatter, stub and tack. Judgement. */
    private static final double WIRE_IN_BEAD = 0.85;

    /** Width of bare or burnt zinc along a bead that is painted over, both sides together. Judgement. */
    private static final double REPAIR_BAND_IN = 3;

    private GateNeeds() {}

    public static Needs leaf(Leaf leaf, GateParts parts) {
        List<Need> loose = new ArrayList<>();
        List<BarNeed> bars = new ArrayList<>();
        for (Member member : leaf.members())
            if (member.role() == MemberRole.ROD) bars.addAll(SteelNeeds.rod(leaf, member));
            else bars.addAll(tubes(leaf, member));
        for (HingePin pin : leaf.pins())
            loose.add(Need.pieces(parts.hinge().id(), parts.hinge().name(), PartGroup.HARDWARE, 1, pin.id()));
        if (hasLatch(leaf))
            loose.add(Need.pieces(parts.latch().id(), parts.latch().name(), PartGroup.HARDWARE, 1, leaf.id()));
        for (Weld weld : leaf.welds()) weld(weld, parts.frame(), loose);
        for (BoltItem bolts : BoltItem.of(leaf, parts)) loose.addAll(bolts.needs(leaf.id()));
        LagItem.of(leaf, parts).ifPresent(lags -> loose.add(lags.need(leaf.id())));
        Needs frame = new Needs(loose, bars);
        Needs whole = frame.plus(SteelNeeds.fittings(leaf));
        return parts.cladding()
                .match(
                        open -> whole,
                        wood -> whole.plus(infill(leaf, wood)),
                        pickets -> whole.plus(SteelNeeds.pickets(leaf, pickets)),
                        mesh -> whole.plus(SteelNeeds.mesh(leaf, mesh)),
                        sheet -> whole.plus(SteelNeeds.sheet(leaf, sheet)));
    }

    /** Of a pair, only the leaf that opens first has the latch. */
    public static boolean hasLatch(Leaf leaf) {
        return leaf.fittings().stream().anyMatch(fitting -> fitting.what().equals("latch"));
    }

    /** What holds the open leaf, where it is a thing to buy. */
    public static Needs holdOpen(Gate gate) {
        return gate.kind()
                .match(
                        swing -> holdOpen(gate.id(), swing.holdOpen(), 1, 1),
                        pair -> holdOpen(
                                gate.id(), pair.holdOpen(), 2 - pair.meeting().rods(), 2),
                        slide -> Needs.none(),
                        flagged -> Needs.none());
    }

    /** @param bolts leaves whose drop rod does not serve for it */
    private static Needs holdOpen(String gate, HoldOpen how, int bolts, int leaves) {
        return how.match(
                free -> Needs.none(),
                caneBolt -> new Needs(
                        bolts == 0
                                ? List.of()
                                : List.of(Need.pieces("cane-bolt", "cane bolt", PartGroup.HARDWARE, bolts, gate)),
                        List.of()),
                stop -> new Needs(
                        List.of(Need.pieces(
                                "gate-stop", "stop post for the open gate", PartGroup.HARDWARE, leaves, gate)),
                        List.of()),
                hingeLock -> Needs.none());
    }

    /** One piece as a rule; a rail longer than a stick is spliced of pieces with square ends where they meet. */
    private static List<BarNeed> tubes(Leaf leaf, Member member) {
        List<Length> pieces = Sticks.pieces(member);
        if (pieces.size() == 1) return List.of(tube(leaf, member));
        List<BarNeed> bars = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = new Piece(
                    member.id() + "." + (i + 1),
                    leaf.id(),
                    pieces.get(i).nanometres(),
                    i == 0 ? member.firstEnd().fromSquare() : Angle.ZERO,
                    i == pieces.size() - 1 ? member.lastEnd().fromSquare() : Angle.ZERO,
                    Piece.Ends.PARALLEL,
                    0);
            bars.add(new BarNeed(
                    member.section().id(), member.section().name(), PartGroup.GATE, BarNeed.Saw.STEEL, piece));
        }
        return bars;
    }

    private static BarNeed tube(Leaf leaf, Member member) {
        Piece piece = new Piece(
                member.id(),
                leaf.id(),
                member.longPoint().nanometres(),
                member.firstEnd().fromSquare(),
                member.lastEnd().fromSquare(),
                member.ends() == EndsTurn.PARALLEL ? Piece.Ends.PARALLEL : Piece.Ends.OPPOSED,
                across(member));
        return new BarNeed(member.section().id(), member.section().name(), PartGroup.GATE, BarNeed.Saw.STEEL, piece);
    }

    /** Depth of the tube in the plane of the leaf, where both ends are one plain cut each; a cope or a pointed brace shares no cut. */
    private static long across(Member member) {
        boolean plain = member.firstEnd().cuts().size() == 1
                && member.lastEnd().cuts().size() == 1
                && !member.firstEnd().coped()
                && !member.lastEnd().coped();
        return plain ? member.section().depth().nanometres() : 0;
    }

    /** Wire by the bead's volume, a fillet with legs of the wall; zinc paint by its length. */
    private static void weld(Weld weld, Section tube, List<Need> loose) {
        loose.add(wire(tube, weld.length().inches(), weld.joint()));
        loose.add(zinc(weld.length().inches(), weld.joint()));
    }

    /** Wire by the bead's volume, a fillet with legs of the wall. */
    static Need wire(Section tube, double beadIn, String cause) {
        double legIn = tube.nominalWall().inches();
        double beadLb = legIn * legIn / 2 * beadIn * STEEL_LB_PER_IN3;
        return new Need(
                "weld-wire", "welding wire", PartGroup.CONSUMABLES, NetUnit.POUNDS, beadLb / WIRE_IN_BEAD, cause);
    }

    /** Zinc paint by the bead's length. */
    static Need zinc(double beadIn, String cause) {
        return new Need(
                "zinc-paint",
                "zinc-rich paint",
                PartGroup.FINISH,
                NetUnit.SQUARE_FEET,
                beadIn * REPAIR_BAND_IN / 144,
                cause);
    }

    private static Needs infill(Leaf leaf, Cladding.Wood wood) {
        Boarding style = wood.style();
        List<Need> loose = new ArrayList<>();
        List<BarNeed> bars = new ArrayList<>();
        int upright = 0;
        for (Nailer nailer : leaf.nailers()) {
            if (nailer.upright()) upright++;
            Piece piece = new Piece(
                    nailer.upright() ? leaf.id() + ".u" + upright : nailer.rail() + ".nailer",
                    leaf.id(),
                    nailer.longPoint().nanometres(),
                    nailer.endFromSquare(),
                    nailer.endFromSquare(),
                    Piece.Ends.PARALLEL);
            bars.add(new BarNeed(WoodItem.rail(style), "nailer", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        int count = 0;
        for (Picket picket : leaf.pickets()) {
            count++;
            Angle top = picket.topFromSquare();
            Angle bottom = picket.bottomFromSquare();
            Piece piece = new Piece(
                    leaf.id() + ".k" + count,
                    leaf.id(),
                    picket.longPoint().nanometres(),
                    bottom,
                    top,
                    Piece.Ends.PARALLEL);
            String item = picket.lying() ? WoodItem.of("board", style.board()) : WoodItem.picket(style);
            bars.add(new BarNeed(item, picket.lying() ? "board" : "picket", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        for (LeafTrim board : leaf.trim()) {
            Piece piece = new Piece(
                    leaf.id() + "." + board.use(),
                    leaf.id(),
                    board.longPoint().nanometres(),
                    board.endFromSquare(),
                    board.endFromSquare(),
                    Piece.Ends.PARALLEL);
            bars.add(new BarNeed(
                    WoodItem.of(board.use(), board.board()),
                    TrimNeeds.words(board.use()),
                    PartGroup.FENCE,
                    BarNeed.Saw.WOOD,
                    piece));
            loose.add(Need.pieces("trim-screw", "trim screw", PartGroup.HARDWARE, board.screws(), leaf.id()));
        }
        int crossings = count * (style.lying() ? upright : leaf.rails().size());
        loose.add(Need.pieces(
                style.lying() ? "picket-screw-2.5" : "picket-screw",
                style.lying() ? "board screw, 2-1/2 in." : "picket screw",
                PartGroup.HARDWARE,
                crossings * style.fastenersPerCrossing(),
                leaf.id()));
        return new Needs(loose, bars);
    }
}
