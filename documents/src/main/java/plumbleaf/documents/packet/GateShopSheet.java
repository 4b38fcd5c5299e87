package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.GatePlanDetail;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.engine.gate.AsSetFit;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.ByTime;
import plumbleaf.engine.section.Section;

/** The shop drawing of one leaf: its frame with every size, the plan at the lower hinge, and what a drawing cannot show. */
final class GateShopSheet {
    private GateShopSheet() {}

    static Sheet of(PacketSubject subject, GatePaper gate) {
        Box room = Sheet.room(subject.options().sheets(), true);
        Drawing elevation = GateSheets.shopDrawing(subject, gate);
        double split = room.minX() + room.width() * (1 - GateSheets.NOTES_SHARE);
        Box left = new Box(room.minX(), room.minY(), split - 0.1, room.maxY());
        double wide = room.maxX() - split - 0.1;
        List<Block> blocks = subject.said().blocks(notes(subject, gate));
        plumbleaf.documents.typeset.Column notes = plumbleaf.documents.typeset.Column.of(blocks, wide);
        double over = room.height() - notes.highIn() - Viewport.TITLE_IN - 0.2;
        Drawing plan = Scale.fitted(
                subject.units(), scale -> GatePlanDetail.of(gate.subject(), scale), wide, Math.max(over, 2.1));
        Box top = new Box(
                split + 0.1, room.maxY() - plan.paperHeightIn() - Viewport.TITLE_IN - 0.05, room.maxX(), room.maxY());
        List<Mark> loose = new ArrayList<>(notes.at(new Point(split + 0.1, top.minY() - 0.05)));
        return new Sheet(
                GateSheets.named(gate) + ", shop drawing",
                subject.options().sheets(),
                true,
                subject.block(gate, "Gate shop drawing", elevation.scale().words(), cautions(subject, gate)),
                List.of(
                        Viewport.centred(elevation, left, "Frame from outside"),
                        Viewport.centred(plan, top, "Plan at the lower hinge")),
                loose);
    }

    static String lifting(PacketSubject subject, Leaf leaf) {
        return "The leaf weighs " + weight(subject, leaf) + ": "
                + (leaf.weight().takesTwo() ? "two people or a hoist lift it." : "keep hands out of the hinge gap.");
    }

    static List<String> cautions(PacketSubject subject, GatePaper gate) {
        List<String> cautions = new ArrayList<>();
        cautions.add(lifting(subject, gate.leaf()));
        cautions.add("No sealed tube into a zinc bath: it bursts. Drill vents and drains first, hinges stay out of the"
                + " bath.");
        cautions.add("Grind zinc off before welding; its fume makes you ill. Fresh air.");
        return cautions;
    }

    /** What the drawing cannot show: pieces, checks, weights, welds. */
    static List<Block> notes(PacketSubject subject, GatePaper gate) {
        GateSubject view = gate.subject();
        Leaf leaf = view.plan().leaves().get(0);
        Section tube = view.parts().frame();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(
                2,
                "Frame: " + tube.name() + ", wall "
                        + DecimalText.fixed(tube.nominalWall().inches(), 3) + " in., "
                        + view.parts().joint().key() + " corners"));
        blocks.add(new Block.Note(
                "Steel Fy " + DecimalText.fixed(tube.yieldStress().inKsi(), 0) + " ksi, " + tube.yieldConfidence()
                        + "; seam inside where the coil allows."));
        Table.Builder pieces = Table.with(
                Column.left("Mark"),
                Column.words("Piece"),
                Column.right("Long point"),
                Column.right("Short point"),
                Column.right("Ends from square"),
                Column.left("Ends lie"));
        for (Member member : leaf.members())
            pieces.rowAbout(
                    member.id(),
                    GateSheets.tail(member.id()),
                    member.role().words(),
                    subject.inches(member.longPoint().inches()),
                    GateSheets.shortPoint(subject, member),
                    GateSheets.saw(member.firstEnd().fromSquare()) + " / "
                            + GateSheets.saw(member.lastEnd().fromSquare()),
                    GateSheets.lie(member));
        blocks.add(pieces.table());
        List<Length> diagonals = leaf.outline().diagonals();
        Table.Builder checks =
                Table.with(Column.words("Check before welding out"), Column.right("Size"), Column.left("Within"));
        checks.row("diagonal A to C", subject.length(diagonals.get(0).inches()), subject.within(2));
        checks.row("diagonal B to D", subject.length(diagonals.get(1).inches()), subject.within(2));
        checks.row("out to out", subject.length(leaf.width().inches()), subject.within(1));
        checks.row("flat, corner to corner", subject.inches(0), subject.within(2));
        blocks.add(checks.table());
        double cog = leaf.weight().centreOfGravity().r().inches()
                - leaf.outline().corners().get(0).r().inches();
        double cogUp = leaf.weight().centreOfGravity().z().inches()
                - leaf.outline().corners().get(0).z().inches();
        blocks.add(Block.Paragraph.of("Weight " + weight(subject, leaf) + ". Center of gravity "
                + subject.length(cog)
                + " from the hinge edge, " + subject.length(cogUp) + " above the lower hinge corner."));
        if (leaf.outline().crest().isCurved())
            blocks.add(Block.Paragraph.of(LeafShop.curve(leaf, inches -> subject.length(inches))));
        for (GatePaper.Hangs hangs : gate.hangs())
            blocks.add(Block.Paragraph.of(camber(subject, hangs.sag().byTime()) + " Hang it blocked "
                    + subject.length(hangs.sag().hangAllowance().inches())
                    + " high; it comes down that much when the blocks go."));
        blocks.add(
                Block.Paragraph.of(
                        "Heights are from the lower hinge corner of the outline, A. Sizes within " + subject.within(1)
                                + " (common practice, no source). Finish: as the order says; keep zinc and paint off hinge bores and threads."));
        if (gate.asked().asSet().isEmpty())
            blocks.add(new Block.Blank(List.of("Opening: top", "middle", "bottom", "by, date"), 0.30));
        for (AsSetFit fit : gate.subject().plan().fits())
            blocks.add(Block.Paragraph.of(
                    "Fitted plumb: " + subject.length(fit.clear().inches())
                            + " between the posts' plumb lines; latch gap "
                            + subject.inches(fit.latchGaps().get(0).inches()) + " at the bottom, "
                            + subject.inches(fit.latchGaps().get(1).inches()) + " in the middle, "
                            + subject.inches(fit.latchGaps().get(2).inches())
                            + " at the top. Packers under the hinges: see the crew sheet."));
        for (AsSet set : gate.asked().asSet())
            blocks.add(Block.Paragraph.bold("Opening as set " + set.date() + ": top "
                    + subject.length(set.top().inches()) + ", middle "
                    + subject.length(set.middle().inches()) + ", bottom "
                    + subject.length(set.bottom().inches()) + "."));
        return blocks;
    }

    private static String camber(PacketSubject subject, ByTime drop) {
        return drop.isCambered()
                ? "Build the jig with the latch corner high by "
                        + subject.length(drop.camber().inches()) + ", the leaf's own sag."
                : "The jig needs no camber: the leaf alone sags less than "
                        + (subject.units() == DisplayUnits.US ? "1/32\"." : "1 mm.");
    }

    /** Wood weighs more wet; a leaf of steel weighs one thing, said once. */
    static String weight(PacketSubject subject, Leaf leaf) {
        String wet = subject.units().weight(leaf.weight().wet().pounds());
        String dry = subject.units().weight(leaf.weight().dry().pounds());
        return wet.equals(dry) ? wet : wet + " wet, " + dry + " dry";
    }
}
