package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.WhiteLines;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.PrivateLine;

/** What the one-call center asks on the phone, answered; what is painted white on the ground; who has marked and who has not. */
public final class LocateRequest {
    private static final double SKETCH_HIGH_IN = 3.6;

    private LocateRequest() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Locate request", subject.running()).flag(subject.flag());
        paper.say(
                "Call the one-call center (811 in the United States) before anyone digs, drives or pulls a post. Local law says how many"
                        + " days ahead, and how wide to dig by hand.");
        Table.Builder answers = Table.with(Column.words("They ask"), Column.words("Say"));
        answers.row("Who digs", String.join(", ", subject.options().contractor()));
        answers.row("For whom", or(subject.job().site().customer()));
        answers.row("Where", or(subject.job().site().address()));
        answers.row("Nearest crossing street", "______________________");
        answers.row("What for", "fence and gate posts; by hand and power auger, no boring, no blasting");
        answers.row("How much", digging(subject));
        answers.row("Where on the lot", strip(subject));
        answers.row("Painted white", "\u2610 yes, on ______________");
        answers.row("When, and how long", "start ______________, ________ working days");
        answers.row("Reach us", "______________________");
        paper.heading("What they ask").add(answers.table());
        paper.heading("Paint this white");
        Drawing sketch = Scale.fitted(
                subject.units(),
                scale -> WhiteLines.of(subject.job(), subject.layout().runs(), scale),
                Pages.columnWidth(subject.options().size()),
                SKETCH_HIGH_IN);
        paper.add(new Block.Picture(
                sketch,
                "Scale " + sketch.scale().words() + ". Strip to be marked "
                        + subject.length(WhiteLines.HALF_STRIP_IN)
                        + " each side of the fence (common practice, no source); circles are holes."));
        paper.add(new Block.PageBreak());
        tickets(paper, subject);
        owners(paper, subject);
        return paper.paper();
    }

    private static String or(String words) {
        return words.isEmpty() ? "______________________" : words;
    }

    private static String digging(PacketSubject subject) {
        List<PostDetail> dug =
                subject.posts().stream().filter(PostDetail::isDug).toList();
        double deepest =
                dug.stream().mapToDouble(post -> post.depth().inches()).max().orElse(0);
        double widest =
                dug.stream().mapToDouble(post -> post.hole().inches()).max().orElse(0);
        return dug.isEmpty()
                ? "nothing is dug; posts stand on what is there"
                : dug.size() + (dug.size() == 1 ? " hole" : " holes") + ", up to " + subject.inches(widest)
                        + " wide and " + subject.inches(deepest) + " deep";
    }

    private static String strip(PacketSubject subject) {
        double all = subject.layout().runs().stream()
                .mapToDouble(run -> run.line().line().length().inches())
                .sum();
        return subject.length(WhiteLines.HALF_STRIP_IN) + " each side of " + subject.length(all) + " of fence line in "
                + subject.layout().runs().size() + (subject.layout().runs().size() == 1 ? " run" : " runs")
                + ", as painted and as drawn below";
    }

    private static void tickets(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Ticket");
        Table.Builder table = Table.with(
                Column.left("Number"), Column.left("Dig from"), Column.left("Holds through"), Column.words("Renewed"));
        for (LocateTicket ticket : subject.job().existing().tickets())
            table.row(
                    ticket.number(),
                    ticket.digFrom().toString(),
                    ticket.validThrough().toString(),
                    "____________");
        if (table.isEmpty()) table.row("____________", "____________", "____________", "____________");
        paper.add(table.table());
        Table.Builder who = Table.with(
                Column.words("Utility"),
                Column.tick("Marked"),
                Column.tick("Clear"),
                Column.left("On"),
                Column.words("Crosses at"));
        for (String utility : List.of(
                "electric (red)", "gas, oil (yellow)", "phone, cable (orange)", "water (blue)", "sewer, drain (green)"))
            who.row(utility, "\u2610", "\u2610", "________", "________________");
        paper.add(who.table());
        paper.note(
                "Colors: APWA uniform color code, from memory; white is what we mean to dig. Dig nothing until every row is ticked, and"
                        + " photograph the marks before the first hole.");
    }

    private static void owners(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Lines no locator marks");
        Table.Builder table = Table.with(
                Column.words("What"), Column.left("Run"), Column.right("At station"), Column.right("By hand within"));
        for (PrivateLine line : subject.job().existing().lines())
            table.row(
                    line.kind(),
                    line.run(),
                    subject.length(line.station().inches()),
                    subject.length(line.byHand().inches()) + " each side");
        if (!table.isEmpty()) paper.add(table.table());
        paper.say((table.isEmpty() ? "None was named. " : "")
                + "Ask the owner: irrigation, lighting, pool lines, septic, propane, dog wire, a gas line to a grill.");
        paper.add(new Block.Blank(List.of("The owner has shown all lines of his own: signed", "Date"), 0.4));
    }
}
