package plumbleaf.documents.packet;

import java.util.function.DoubleFunction;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.gate.Cope;
import plumbleaf.engine.gate.Crest;
import plumbleaf.engine.gate.Galvanizing;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.RodCut;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.quantity.DecimalText;

/** What the shop needs of a leaf beyond saw, drill and torch: copes, panels, rods, and holes for the zinc bath. */
final class LeafShop {
    private LeafShop() {}

    /** How to strike the curve of the infill's top, and how far the drawing leaves it. */
    static String curve(Leaf leaf, DoubleFunction<String> length) {
        Crest crest = leaf.outline().crest();
        double rise = crest.edge().curve().inches();
        return "Infill top " + crest.edge().key() + " " + length.apply(rise) + ", struck with a radius of "
                + length.apply(crest.radius(leaf.width()).inches()) + " (drawn in chords within "
                + length.apply(crest.sagitta(leaf.width()).inches()) + ").";
    }

    static void copes(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        Table.Builder table = Table.with(
                Column.left("Mark"), Column.words("End"), Column.right("From square"), Column.right("Cope deep"));
        for (Member member : leaf.members())
            for (Cope cope : Cope.of(member))
                table.rowAbout(
                        member.id(),
                        GateSheets.tail(member.id()),
                        cope.end() == 0 ? "first" : "last",
                        GateSheets.saw(cope.fromSquare()),
                        subject.inches(cope.depth().inches()));
        if (table.isEmpty()) return;
        paper.heading("Cope").add(table.table());
        paper.note("Saw to the long point, then cope both ears to it. Both saddles of a piece lie in one plane.");
    }

    static void panels(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        if (leaf.panels().isEmpty()) return;
        Table.Builder table = Table.with(
                Column.left("Mark"),
                Column.right("Wide"),
                Column.right("High"),
                Column.right("Hinge edge"),
                Column.right("Latch edge"),
                Column.right("Trim"),
                Column.right("Weight"));
        for (Panel panel : leaf.panels())
            table.rowAbout(
                    panel.id(),
                    GateSheets.tail(panel.id()),
                    subject.length(panel.width().inches()),
                    subject.length(panel.height().inches()),
                    subject.length(high(panel, 0, 3)),
                    subject.length(high(panel, 1, 2)),
                    subject.length(panel.edge().inches()),
                    DecimalText.whole(panel.weight().pounds()) + " lb");
        paper.heading("Panels").add(table.table());
        paper.note("Cut each piece from a rectangle as wide and high as stated; measure the opening first.");
    }

    private static double high(Panel panel, int low, int up) {
        return panel.corners().get(up).z().inches()
                - panel.corners().get(low).z().inches();
    }

    static void rods(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        for (Member rod : leaf.of(MemberRole.ROD)) {
            String pull = leaf.make()
                    .bracing()
                    .match(tubes -> "", cross -> "", some -> DecimalText.whole(pretension(some)) + " lb");
            paper.heading("Rod " + GateSheets.tail(rod.id()));
            paper.say("Eye to eye " + subject.length(rod.cutLength().inches()) + ", two pieces of "
                    + subject.length(RodCut.half(rod).inches()) + " with "
                    + subject.length(RodCut.TURNBUCKLE.inches())
                    + " between them in the turnbuckle. True the leaf on the bench with the rod drawn up to "
                    + pull + "; a rod that hangs loose does nothing.");
        }
    }

    private static double pretension(Bracing.Rod rod) {
        return rod.pretension().pounds();
    }

    static void galvanizing(Paper.Builder paper, PacketSubject subject, Leaf leaf) {
        Galvanizing dipped = Galvanizing.of(leaf);
        Table.Builder table = Table.with(
                Column.tick("Drilled"),
                Column.left("Mark"),
                Column.words("End"),
                Column.right("Holes"),
                Column.right("Diameter"),
                Column.words("Where"));
        for (int i = 0; i < dipped.vents().size(); i++) {
            Galvanizing.Vent vent = dipped.vents().get(i);
            boolean both = i + 1 < dipped.vents().size()
                    && isAlike(vent, dipped.vents().get(i + 1));
            table.rowAbout(
                    vent.member(),
                    "\u2610",
                    GateSheets.tail(vent.member()),
                    both ? "both" : vent.end() == 0 ? "first" : "last",
                    vent.count() == 0 ? "open" : vent.count() + (both ? " each" : ""),
                    vent.count() == 0 ? "" : subject.inches(up(vent.diameter().inches())),
                    vent.where());
            if (both) i++;
        }
        if (table.isEmpty()) return;
        paper.heading("If it goes into the zinc bath").add(table.table());
        double datum = leaf.outline().corners().get(0).r().inches();
        paper.note(
                "The steel weighs " + DecimalText.whole(dipped.steel().pounds()) + " lb, about "
                        + DecimalText.whole(
                                dipped.steel().pounds() + dipped.zinc().pounds())
                        + " lb zinc-coated. Hang it from the top rail at "
                        + subject.length(dipped.hangPoints().get(0).r().inches() - datum) + " and "
                        + subject.length(dipped.hangPoints().get(1).r().inches() - datum)
                        + " from the hinge edge, one corner low. A sealed tube bursts in the kettle: every hole is seen and open before the leaf"
                        + " leaves the shop. Hinges, rods and wood stay out of the bath; grind zinc off before any weld, its fume makes you ill.");
    }

    /** Both ends of one member, drilled the same: one line of the list. */
    private static boolean isAlike(Galvanizing.Vent first, Galvanizing.Vent last) {
        return first.member().equals(last.member())
                && first.count() == last.count()
                && first.diameter().equals(last.diameter())
                && first.where().equals(last.where());
    }

    /** A drill is bought by the sixteenth: the next one up. */
    private static double up(double inches) {
        return Math.ceil(inches * 16 - 1e-9) / 16;
    }
}
