package plumbleaf.documents.packet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.gate.Clearance;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.quantity.DecimalText;

/** One side for the customer: what was measured on the day it was hung, what may change, what to do and when. */
public final class CareCard {
    private CareCard() {}

    public static Paper of(PacketSubject subject) {
        boolean gates = !subject.job().gates().isEmpty();
        Paper.Builder paper = Paper.titled("Care card", subject.running()).flag(subject.flag());
        paper.say((gates ? "Keep this by the gate. " : "Keep this. ")
                + "It tells you what is normal, what to check, and when to call us.");
        if (isPool(subject))
            paper.add(Block.Paragraph.bold("This fence guards a pool: "
                    + (gates ? "never prop a gate open; " : "")
                    + "nothing near it that a child can climb. Local code governs."));
        Set<String> hinges = new LinkedHashSet<>();
        for (GatePaper gate : subject.gates()) {
            gate(paper, subject, gate);
            HingeModel hinge = gate.subject().parts().hinge();
            if (hinges.add(hinge.name())) paper.say(adjusting(subject, hinge));
        }
        for (SlidePaper gate : subject.slides()) SlideRecords.care(paper, subject, gate);
        when(paper, subject);
        paper.heading("Normal, and not");
        paper.say((WoodParts.anywhere(subject)
                        ? "Normal: boards crack along the grain, turn gray, open gaps in summer. "
                        : "")
                + "Not normal: a post that moves when you push it, "
                + (gates ? "a gate that drags or does not latch, " : "")
                + "rust at a weld.");
        paper.say("It voids our promise to "
                + (gates ? "hang loads on the gate, to swing on it, to " : "")
                + "fasten screens or solid panels to the fence, or to dig within 2 ft of a post.");
        paper.add(new Block.Blank(
                List.of("Call us: " + String.join(" \u00b7 ", subject.options().contractor())), 0.6));
        return paper.paper();
    }

    private static void gate(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        paper.heading("Gate " + gate.id() + ": measured on the day it was hung");
        Table.Builder table = Table.with(
                Column.words("Where"),
                Column.right("Planned"),
                Column.right("Hung"),
                Column.right("Spring"),
                Column.right("Fall"));
        String line = "________";
        table.row(
                gate.isPair() ? "Gap between the leaves" : "Gap at the latch",
                subject.inches(gate.asked().leaf().latchGap().inches()),
                line,
                line,
                line);
        for (GatePaper leaf : gate.leaves()) {
            String under = "Least room under " + (gate.isPair() ? leaf.mark() : "the leaf");
            List<Clearance> curve = leaf.subject().swing().curve();
            for (Clearance each : List.of(curve.get(0), curve.get(curve.size() - 1)))
                table.row(under + ", " + at(each), subject.room(each.clear().inches()), line, line, line);
            table.row(
                    under + " as it swings, once settled",
                    subject.room(leaf.subject().swing().running().clear().inches()),
                    line,
                    line,
                    line);
        }
        if (gate.isPair()) table.row("Tops of both leaves where they meet", "level", line, line, line);
        table.row("Hinge post plumb, both ways", "plumb", line, line, line);
        paper.add(table.table());
        for (GatePaper leaf : gate.leaves())
            for (GatePaper.Hangs hangs : leaf.hangs())
                paper.say("The latch corner" + (gate.isPair() ? " of " + leaf.mark() : "") + " may come down about "
                        + subject.inches(Math.max(
                                1 / 16.0,
                                hangs.sag().byTime().afterHanging().total().inches()))
                        + " as hinges and ground settle over the years. Twice that: call us.");
        gate.pair()
                .ifPresent(pair -> paper.say(
                        "In wind the rod holds both leaves at the foot: keep it dropped whenever the gate is shut,"
                                + " and fasten both leaves back when it stands open. Keep the sleeve clear of soil and ice. Open the "
                                + pair.active().key() + " leaf first and close it last."));
    }

    private static void when(Paper.Builder paper, PacketSubject subject) {
        boolean gates = !subject.job().gates().isEmpty();
        boolean slides = !subject.slides().isEmpty();
        boolean hinged = subject.job().gates().size() > subject.slides().size();
        paper.heading("When");
        Table.Builder when = Table.with(Column.tick("Done"), Column.left("When"), Column.words("What"));
        if (hinged)
            when.row(
                    "\u2610",
                    "after 1 month",
                    (isNutted(subject) ? "Tighten hinge nuts and latch screws" : "Tighten latch screws")
                            + (WoodParts.inLeaves(subject) ? "; wood has shrunk under them." : "."));
        if (slides)
            when.row(
                    "\u2610",
                    "after 1 month",
                    "Look at roller, stop and receiver bolts; one that turns by hand: call us.");
        if (isPool(subject) && gates)
            when.row(
                    "\u2610",
                    "every month",
                    "Let each gate go from wide open, then from 6 in. open: it must shut and latch by itself (ISPSC 305.3, from memory; each"
                            + " month is common practice, no source). If one does not, keep children from the water and call us that day.");
        if (WoodParts.anywhere(subject)) stain(when, subject);
        when.row(
                "\u2610",
                "spring and fall",
                "Look along the fence, "
                        + (gates
                                ? "open the gate slowly all the way, listen, write the gaps above."
                                : "push each post by hand."));
        String greased = hinged
                ? slides ? "Oil the hinges, grease the rollers; touch" : "Oil the hinges; touch"
                : slides ? "Grease the rollers; touch" : "Touch";
        when.row(
                "\u2610",
                "every year",
                greased + " up bare steel with zinc-rich paint; clear soil and mulch from under the "
                        + (gates ? "gate." : "fence."));
        paper.add(when.table());
    }

    private static boolean isPool(PacketSubject subject) {
        return subject.job().site().uses().contains(Use.POOL);
    }

    /** A weld-on hinge has nothing to tighten. */
    private static boolean isNutted(PacketSubject subject) {
        return subject.gates().stream()
                .anyMatch(gate -> !gate.subject().parts().hinge().adjusts().isZero());
    }

    /** Said once for all gates that hang on it. */
    private static String adjusting(PacketSubject subject, HingeModel hinge) {
        return "Hinges: " + hinge.name() + ". "
                + (hinge.adjusts().isZero()
                        ? "They do not adjust; a leaf that drops needs us."
                        : "They adjust by up to "
                                + subject.inches(hinge.adjusts().inches())
                                + ": loosen the jam nut, turn the rod in or out on the upper hinge half a turn at a time, tighten again. A wrench that fits the nut snugly.");
    }

    private static String at(Clearance each) {
        double degrees = each.atAngle().inDegrees();
        return degrees < 0.5 ? "closed" : DecimalText.whole(degrees) + "\u00b0 open";
    }

    /** When the wood wants its finish: by what is on it. */
    private static void stain(Table.Builder when, PacketSubject subject) {
        int coats = subject.job().runs().stream()
                .mapToInt(run -> run.stain().coats())
                .max()
                .orElse(0);
        when.row(
                "\u2610",
                coats > 0 ? "stain" : "dry wood, first season",
                (coats > 0
                                ? "Stained by us, " + coats + (coats == 1 ? " coat" : " coats")
                                        + ", on ______________; again"
                                : "Stain or seal once a drop of water soaks in; again")
                        + " when drops soak in: clear sealer every 1 to 2 years, stain that shows the grain every 2 to 4,"
                        + " stain that hides it every 4 to 6 (common practice, no source; the can governs). Next due ____________");
    }
}
