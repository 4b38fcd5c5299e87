package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Use;

/** The walk round with the customer on the last day: what was looked at together, what is left to do, two signatures. No prices. */
public final class HandOver {
    private HandOver() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Hand-over", subject.running()).flag(subject.flag());
        paper.say("For " + subject.job().site().customer() + ", "
                + subject.job().site().address()
                + ". Walked together on ______________ by ______________ and ______________.");
        Table.Builder built =
                Table.with(Column.tick("Seen"), Column.words("What was built"), Column.words("Looked at"));
        for (Run run : subject.job().runs())
            if (!run.isLoneGate())
                built.rowAbout(
                        run.id(),
                        "\u2610",
                        "Run " + run.id() + ", "
                                + subject.length(subject.layout()
                                        .run(run.id())
                                        .line()
                                        .line()
                                        .length()
                                        .inches())
                                + " of fence",
                        "line and top true to the eye, posts firm when pushed, good side " + side(run));
        for (GatePaper gate : subject.gates())
            built.rowAbout(
                    gate.id(),
                    "\u2610",
                    "Gate " + gate.id() + ", "
                            + subject.length(
                                    gate.subject().plan().opening().clear().inches()) + " clear",
                    "hinge side and swing as initialed; opens all the way and shuts without a lift");
        for (SlidePaper gate : subject.slides())
            built.rowAbout(
                    gate.id(),
                    "\u2610",
                    "Gate " + gate.id() + ", "
                            + subject.length(
                                    gate.subject().plan().shape().opening().inches()) + " clear, a slide",
                    "side it opens to as initialed; one hand moves it its whole way");
        for (Change change : subject.job().log().changes())
            if (change.accepted()) built.row("\u2610", "Change " + change.id(), change.what());
        paper.add(built.table());
        for (GatePaper gate : subject.gates()) gate(paper, subject, gate);
        for (SlidePaper gate : subject.slides()) SlideRecords.handOver(paper, subject, gate);
        paper.heading("Handed over").add(new Block.TickList(handed(subject), false));
        paper.heading("Left to do");
        Table.Builder left =
                Table.with(Column.left("No."), Column.words("What"), Column.left("By"), Column.tick("Done"));
        for (int i = 1; i <= (subject.gates().size() > 1 ? 3 : 5); i++)
            left.row(Integer.toString(i), "", "____________", "\u2610");
        paper.add(left.table());
        paper.say(
                "With the list above done, the work is complete as agreed. The promise on workmanship runs from this day; what is normal"
                        + " and what voids the promise stands on the care card and in the proposal.");
        paper.add(new Block.Blank(List.of("Customer", "Date"), 0.45));
        paper.add(
                new Block.Blank(List.of("For " + subject.options().contractor().get(0), "Date"), 0.45));
        paper.note("Signing takes nothing from the customer's rights under local law.");
        return paper.paper();
    }

    private static String side(Run run) {
        return switch (run.finishedFace()) {
            case IN -> "in";
            case OUT -> "out";
            case BOTH -> "both ways";
        };
    }

    private static void gate(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        Table.Builder table = Table.with(
                Column.tick("Good"), Column.words("Gate " + gate.id()), Column.right("Planned"), Column.right("Today"));
        String line = "________";
        table.row(
                "\u2610",
                gate.isPair() ? "gap between the leaves" : "gap at the latch, middle",
                subject.inches(gate.asked().leaf().latchGap().inches()),
                line);
        for (GatePaper leaf : gate.leaves())
            table.row(
                    "\u2610",
                    "least room under " + (gate.isPair() ? leaf.mark() : "the leaf") + " as it opens",
                    subject.room(leaf.subject().swing().running().clear().inches()),
                    line);
        table.row("\u2610", "latch goes in by itself, five times out of five", "5", line);
        if (subject.job().site().uses().contains(Use.POOL)) {
            table.row("\u2610", "let go from wide open: shuts and latches by itself", "yes", line);
            table.row("\u2610", "let go 6 in. open: shuts and latches by itself", "yes", line);
        }
        paper.add(table.table());
    }

    private static List<String> handed(PacketSubject subject) {
        List<String> handed = new ArrayList<>();
        handed.add("Care card, its first column filled in");
        if (!subject.gates().isEmpty()) handed.add("Keys, codes and the wrench for the hinges: ______");
        if (!subject.slides().isEmpty()) handed.add("Keys, codes and the wrench for the rollers: ______");
        handed.add("As-built record, or the date it follows: ______________");
        handed.add("Permit closed, or the inspection that is left: ______________");
        handed.add("Yard raked, leftovers and nails taken away, sprinklers tried");
        return handed;
    }
}
