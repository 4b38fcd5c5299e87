package plumbleaf.documents.packet;

import java.util.List;
import java.util.stream.Collectors;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.FrameWelds;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberEnd;
import plumbleaf.engine.gate.Sticks;
import plumbleaf.engine.quantity.Length;

/** What the shop cuts, drills and welds for a slide leaf. */
public final class SlideShop {
    private SlideShop() {}

    public static Paper of(PacketSubject subject, SlidePaper gate) {
        Leaf leaf = gate.leaf();
        Paper.Builder paper = Paper.titled("Cut, drill and weld list, slide gate " + gate.id(), subject.running())
                .flag(subject.flag())
                .say(gate.sentence()
                        + ". Lengths are over the long points. Saw angles are from square; a pointed end is cut against the"
                        + " upright first, then against the rail.");
        boolean released =
                gate.asked().release().match(priced -> false, hold -> false, is -> true) && !subject.mustFix();
        if (!released)
            paper.add(
                    new Block.Caution(
                            "Hold for field size",
                            List.of(
                                    "Cut nothing until the posts are set, the opening is measured and this gate is released.")));
        paper.heading("Members, " + leaf.make().tube().name());
        Table.Builder cut = Table.with(
                Column.tick("Cut"),
                Column.left("Mark"),
                Column.words("Piece"),
                Column.right("Long point"),
                Column.right("in inches"),
                Column.right("Short point"),
                Column.left("First end"),
                Column.left("Last end"),
                Column.words("Made of"));
        for (Member member : leaf.members())
            cut.rowAbout(
                    member.id(),
                    "\u2610",
                    member.id(),
                    member.role().words(),
                    subject.length(member.longPoint().inches()),
                    subject.inches(member.longPoint().inches()),
                    GateSheets.shortPoint(subject, member),
                    end(member.firstEnd()),
                    end(member.lastEnd()),
                    pieces(subject, member));
        paper.add(cut.table());
        drill(paper, subject, leaf);
        paper.heading("Welds");
        paper.add(WeldTable.of(subject, leaf));
        paper.note("Fillets with legs of "
                + subject.inches(FrameWelds.leg(leaf.make().tube()).inches())
                + ", 70 ksi filler, as the strength is worked out. Joints are counted two to an upright from the end of the tail on, the lower first. Tack all corners, check both diagonals"
                + " and that both rails are straight, then weld in turn from the middle out.");
        LeafShop.panels(paper, subject, leaf);
        LeafShop.galvanizing(paper, subject, leaf);
        return paper.paper();
    }

    private static void drill(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        boolean any = leaf.members().stream().anyMatch(member -> !member.holes().isEmpty());
        if (!any) return;
        paper.heading("Holes, from the first end");
        Table.Builder drill = Table.with(Column.left("Mark"), Column.words("For"), Column.words("Centers"));
        for (Member member : leaf.members()) {
            if (member.holes().isEmpty()) continue;
            drill.row(
                    member.id(),
                    member.holes().get(0).what(),
                    member.holes().stream()
                            .map(Hole::fromDatum)
                            .map(at -> subject.inches(at.inches()))
                            .collect(Collectors.joining(", ")));
        }
        paper.add(drill.table());
    }

    private static String end(MemberEnd end) {
        if (end.cuts().size() < 2) return GateSheets.saw(end.fromSquare()) + (end.coped() ? ", coped" : "");
        return end.cuts().stream().map(cut -> GateSheets.saw(cut.fromSquare())).collect(Collectors.joining(" and "));
    }

    private static String pieces(PacketSubject subject, Member member) {
        List<Length> pieces = Sticks.pieces(member);
        if (pieces.size() == 1) return "one piece";
        return pieces.stream().map(each -> subject.length(each.inches())).collect(Collectors.joining(" + "))
                + ", spliced at full strength on a backing";
    }
}
