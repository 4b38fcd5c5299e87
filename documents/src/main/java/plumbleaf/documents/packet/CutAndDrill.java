package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.CutBars;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.design.FrameWelds;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.takeoff.BoltItem;
import plumbleaf.engine.takeoff.LagItem;

/** What the saw and the drill do for one gate's frame: bar by bar in sawing order, angles from square, long points, holes from one end. */
public final class CutAndDrill {
    private static final double NM_PER_INCH = 25_400_000.0;
    /** A vice holds no less. Common practice, no source. */
    private static final double VICE_IN = 6;

    private CutAndDrill() {}

    public static Paper of(PacketSubject subject, GatePaper gate) {
        boolean released = isReleased(subject, gate);
        Paper.Builder paper = Paper.titled("Cut and drill list, gate " + gate.id(), subject.running())
                .flag(release(subject, gate))
                .say(gate.subject().plan().sentence()
                        + ". Lengths are over the long points: set the stop to them, and check the cut piece by its short"
                        + " point. Saw angles are from square, 0\u00b0 a square cut. Cut long to short.");
        if (!released)
            paper.add(
                    new Block.Caution(
                            "Hold for field size",
                            List.of(
                                    "Cut nothing until the posts are set, the opening is measured at top, middle and bottom, and this sheet says RELEASED.")));
        for (GatePaper each : gate.leaves()) {
            if (gate.isPair()) {
                paper.heading("Leaf " + each.mark());
                paper.say(each.subject().sentence()
                        + ". The leaves are of opposite hand: build this one as drawn, do not turn the other over.");
            }
            leaf(paper, subject, each, each.leaf());
        }
        return paper.paper();
    }

    private static boolean isReleased(PacketSubject subject, GatePaper gate) {
        return gate.asked().release().match(priced -> false, hold -> false, is -> true) && !subject.mustFix();
    }

    /** What every page that the shop builds from says in its box. */
    static String release(PacketSubject subject, GatePaper gate) {
        return isReleased(subject, gate) ? "RELEASED" : subject.mustFix() ? "HOLD, MUST FIX: see findings" : "HOLD";
    }

    private static void leaf(Paper.Builder paper, PacketSubject subject, GatePaper gate, Leaf leaf) {
        boolean planned = false;
        for (var takeoff : subject.takeoff())
            for (CutPlan plan : takeoff.cutPlans())
                if (cuts(plan, leaf)) {
                    bars(paper, subject, plan, leaf);
                    planned = true;
                }
        if (!planned) plain(paper, subject, leaf);
        drill(paper, subject, leaf);
        LeafShop.copes(paper, subject, leaf);
        LeafShop.panels(paper, subject, leaf);
        LeafShop.rods(paper, subject, leaf);
        bolts(paper, subject, gate, leaf);
        welds(paper, subject, gate, leaf);
        LeafShop.galvanizing(paper, subject, leaf);
    }

    private static boolean cuts(CutPlan plan, Leaf leaf) {
        return plan.bars().stream()
                .flatMap(bar -> bar.cuts().stream())
                .anyMatch(cut -> leaf.member(cut.piece()).isPresent() || isSteelPart(cut, leaf));
    }

    /** Half a rod, or a steel picket. */
    private static boolean isSteelPart(Cut cut, Leaf leaf) {
        if (!cut.group().equals(leaf.id())) return false;
        String piece = cut.piece();
        boolean half = leaf.of(MemberRole.ROD).stream()
                .anyMatch(rod -> piece.equals(rod.id() + "a") || piece.equals(rod.id() + "b"));
        return half || (leaf.nailers().isEmpty() && piece.startsWith(leaf.id() + ".k"));
    }

    private static String part(Cut cut, Leaf leaf) {
        return leaf.member(cut.piece())
                .map(is -> is.role().words())
                .orElse(
                        !isSteelPart(cut, leaf)
                                ? "for " + cut.group()
                                : cut.piece().startsWith(leaf.id() + ".k")
                                        ? "picket"
                                        : "half of the rod, " + TURNBUCKLE_WORDS);
    }

    private static final String TURNBUCKLE_WORDS = "thread the inner end";

    /** The section as the leaf knows it, else as it is sold. */
    private static String stockName(PacketSubject subject, CutPlan plan, Leaf leaf) {
        return leaf.members().stream()
                .map(Member::section)
                .filter(section -> section.id().equals(plan.stock()))
                .map(section -> section.name())
                .findFirst()
                .orElseGet(() -> subject.takeoff().stream()
                        .map(takeoff -> takeoff.nameOf(plan))
                        .findFirst()
                        .orElse(plan.stock()));
    }

    private static void bars(Paper.Builder paper, PacketSubject subject, CutPlan plan, Leaf leaf) {
        paper.heading(stockName(subject, plan, leaf));
        Table.Builder table = Table.with(
                Column.tick("Cut"),
                Column.left("Mark"),
                Column.words("Piece"),
                Column.right("Long point"),
                Column.right("in inches"),
                Column.right("Short point"),
                Column.right("First end"),
                Column.right("Last end"),
                Column.left("Ends lie"),
                Column.left("Turn"));
        int number = 0;
        for (CutBar bar : plan.bars()) {
            number++;
            table.group((bar.fromOffcut() ? "Offcut " : "Bar ") + number + ", "
                    + subject.length(bar.lengthNm() / NM_PER_INCH)
                    + (bar.trimNm() > 0
                            ? ", trim " + subject.inches(bar.trimNm() / NM_PER_INCH) + " off the mill end first"
                            : "")
                    + "; left over " + subject.length(bar.offcutNm() / NM_PER_INCH)
                    + (bar.offcutUsable() ? ", mark and keep" : ""));
            for (Cut cut : bar.cuts()) {
                double inches = cut.longPointNm() / NM_PER_INCH;
                Optional<Member> member = leaf.member(cut.piece()).or(() -> elsewhere(subject, cut));
                table.rowAbout(
                        cut.piece(),
                        "\u2610",
                        leaf.member(cut.piece()).isPresent() || isSteelPart(cut, leaf)
                                ? GateSheets.tail(cut.piece())
                                : cut.piece(),
                        part(cut, leaf),
                        subject.length(inches),
                        LengthText.inchesOnly(inches),
                        member.map(is -> GateSheets.shortPoint(subject, is)).orElse(""),
                        member.map(is -> GateSheets.saw(is.firstEnd().fromSquare()))
                                .orElse(""),
                        member.map(is -> GateSheets.saw(is.lastEnd().fromSquare()))
                                .orElse(""),
                        member.map(GateSheets::lie).orElse(""),
                        cut.flip() ? "flip" : "");
            }
        }
        paper.add(table.table());
        Drawing bars = CutBars.of(plan, Pages.columnWidth(subject.options().size()) - 0.2, subject.units());
        paper.add(new Block.Picture(
                bars,
                plan.proven()
                        ? "No plan costs less: proven. Kerf "
                                + subject.inches(plan.saw().kerfNm() / NM_PER_INCH) + " a cut."
                        : "Best plan found; at most " + plan.gap().text() + " above the least possible."));
        boolean shortPiece = plan.bars().stream()
                .flatMap(bar -> bar.cuts().stream())
                .anyMatch(cut -> cut.longPointNm() / NM_PER_INCH < VICE_IN);
        if (shortPiece)
            paper.note(
                    "A piece is shorter than a vice holds (6 in., common practice, no source): cut it before the bar gets short.");
    }

    /** A piece of another gate that shares the bar: it is sawn with these, so its ends are said here too. */
    private static Optional<Member> elsewhere(PacketSubject subject, Cut cut) {
        return Stream.concat(
                        subject.gates().stream()
                                .flatMap(gate -> gate.leaves().stream())
                                .map(GatePaper::leaf),
                        subject.slides().stream().map(SlidePaper::leaf))
                .map(leaf -> leaf.member(cut.piece()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static void plain(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        Table.Builder table = Table.with(
                Column.tick("Cut"),
                Column.left("Mark"),
                Column.words("Piece"),
                Column.right("Long point"),
                Column.right("in inches"),
                Column.right("Short point"),
                Column.right("First end"),
                Column.right("Last end"),
                Column.left("Ends lie"));
        List<Member> longFirst = new ArrayList<>(leaf.members());
        longFirst.sort(java.util.Comparator.comparingDouble(
                        (Member member) -> -member.longPoint().inches())
                .thenComparing(Member::id));
        for (Member member : longFirst)
            table.rowAbout(
                    member.id(),
                    "\u2610",
                    GateSheets.tail(member.id()),
                    member.role().words(),
                    subject.length(member.longPoint().inches()),
                    LengthText.inchesOnly(member.longPoint().inches()),
                    GateSheets.shortPoint(subject, member),
                    GateSheets.saw(member.firstEnd().fromSquare()),
                    GateSheets.saw(member.lastEnd().fromSquare()),
                    GateSheets.lie(member));
        paper.heading(leaf.members().get(0).section().name()).add(table.table());
    }

    private static void bolts(Paper.Builder paper, PacketSubject subject, GatePaper gate, Leaf leaf) {
        Table.Builder table = Table.with(
                Column.tick("Have"),
                Column.right("Count"),
                Column.words("Bolt, for"),
                Column.right("Grip"),
                Column.right("Drill"),
                Column.right("Past the nut"),
                Column.right("Sleeve"));
        for (BoltItem bolt : BoltItem.of(leaf, gate.subject().parts()))
            table.rowAbout(
                    leaf.id(),
                    "\u2610",
                    DecimalText.whole(bolt.count()),
                    bolt.name() + ", " + bolt.where(),
                    subject.inches(bolt.stack().grip().inches()),
                    subject.inches(bolt.drill().inches()),
                    subject.inches(bolt.stack().stickOut().inches())
                            + (bolt.stack().needsCap() ? ", cap nut" : ""),
                    bolt.sleeve()
                            .map(sleeve -> LengthText.exact(sleeve.inches()))
                            .orElse("\u2013"));
        LagItem.of(leaf, gate.subject().parts())
                .ifPresent(lags -> table.rowAbout(
                        leaf.id(),
                        "\u2610",
                        DecimalText.whole(lags.count()),
                        lags.name() + ", hinges on the wood post, turned in, never driven",
                        "\u2013",
                        subject.inches(lags.lead().inches()),
                        "\u2013",
                        "\u2013"));
        if (table.isEmpty()) return;
        paper.heading("Bolts")
                .add(table.table())
                .note(
                        "Length: grip, two washers, nut and two threads, to the next in stock. Snug only: a tube without its"
                                + " sleeve is crushed. Wood shrinks under a bolt: tighten again after a month.");
    }

    private static void drill(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        Table.Builder table = Table.with(
                Column.tick("Drilled"),
                Column.left("Mark"),
                Column.words("Hole for"),
                Column.right("From the first end"),
                Column.right("in inches"),
                Column.right("Diameter"),
                Column.left("Walls"));
        for (Member member : leaf.members()) {
            if (member.holes().isEmpty()) continue;
            table.group("Mark " + GateSheets.tail(member.id()) + ", "
                    + member.role().words() + ": measure from the long point of its " + firstEnd(member) + " end");
            for (Hole hole : member.holes())
                table.rowAbout(
                        member.id(),
                        "\u2610",
                        GateSheets.tail(member.id()),
                        hole.what(),
                        subject.length(hole.fromDatum().inches()),
                        LengthText.inchesOnly(hole.fromDatum().inches()),
                        hole.diameter()
                                .value()
                                .map(size -> subject.inches(size.inches()))
                                .orElse("from the hinge"),
                        "both");
        }
        if (table.isEmpty()) return;
        paper.heading("Drill").add(table.table());
        paper.note(
                "Holes lie on the centerline. Drill through both walls; deburr. Zinc-coated frames: drill vents and drains before the bath.");
    }

    private static void welds(Paper.Builder paper, PacketSubject subject, GatePaper gate, Leaf leaf) {
        if (leaf.welds().isEmpty()) return;
        paper.heading("Weld").add(WeldTable.of(subject, leaf));
        paper.note("Fillets with legs of "
                + subject.inches(FrameWelds.leg(gate.subject().parts().frame()).inches())
                + ", 70 ksi filler, as the strength is worked out. Tack all corners, check both diagonals, then weld in turn across the frame."
                + " Grind flush only where the table says flush."
                + hinges(subject, gate.subject().parts().hinge().fixing()));
    }

    /** What the hinges are welded with: two fillets along their plates. */
    private static String hinges(PacketSubject subject, HingeFixing fixing) {
        String along = " along its " + subject.inches(fixing.plateHeight().inches()) + " plate.";
        return fixing.toLeaf()
                        .match(
                                weld -> " Each hinge to the leaf: two fillets of "
                                        + subject.inches(weld.leg().inches()) + along,
                                bolts -> "",
                                lags -> "")
                + fixing.toPost()
                        .match(
                                weld -> " Each hinge to its post: two fillets of "
                                        + subject.inches(weld.leg().inches()) + along,
                                bolts -> "",
                                lags -> "");
    }

    private static String firstEnd(Member member) {
        return switch (member.role()) {
            case HINGE_STILE, LATCH_STILE, TAIL_UPRIGHT, NOSE_UPRIGHT, UPRIGHT -> "lower";
            case BOTTOM_RAIL, MID_RAIL, TOP_RAIL, BRACE, ROD -> "hinge";
        };
    }
}
