package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;

/** What really stands there: every hole with the depth it reached, every opening as measured, every change that was signed, photographs by number. */
public final class AsBuilt {
    private static final String LINE = "_______";

    private AsBuilt() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("As-built record", subject.running()).flag(subject.flag());
        paper.say(
                "Write what is, not what was planned. A hole that stayed above its depth, or a post off its station by more than "
                        + subject.inches(1)
                        + ", is phoned in the same day: the checks were made for the planned ones.");
        for (RunLayout run : subject.layout().runs()) posts(paper, subject, run);
        for (GatePaper gate : subject.gates()) gate(paper, subject, gate);
        for (SlidePaper gate : subject.slides()) SlideRecords.asBuilt(paper, subject, gate);
        changes(paper, subject);
        paper.heading("Photographs").add(new Block.TickList(photographs(subject), false));
        paper.heading("Redlines");
        paper.add(new Block.Blank(List.of("Anything that differs from the drawings, with a sketch"), 1.6));
        paper.add(new Block.Blank(List.of("Foreman", "Date", "Checked in the office"), 0.4));
        return paper.paper();
    }

    private static List<String> photographs(PacketSubject subject) {
        List<String> wanted = new ArrayList<>();
        if (subject.posts().stream().anyMatch(PostDetail::isDug))
            wanted.addAll(List.of(
                    "Locate marks and white lines before the first hole: no. ______",
                    "Every hole with a tape in it: no. ______ to ______",
                    "What was found in the ground, rock, roots, old concrete: no. ______"));
        if (!subject.gates().isEmpty())
            wanted.add("Hinges, latch and rod from close by, gate shut and open: no. ______");
        if (!subject.slides().isEmpty())
            wanted.add("Rollers, stops and receiver from close by, slide shut and open: no. ______");
        wanted.add("The whole line from both ends: no. ______");
        return wanted;
    }

    private static void posts(Paper.Builder paper, PacketSubject subject, RunLayout run) {
        Table.Builder table = Table.with(
                Column.left("Post"),
                Column.right("Station"),
                Column.left("As set"),
                Column.right("Hole planned"),
                Column.left("As dug"),
                Column.left("Bags"),
                Column.left("Plumb"),
                Column.left("Top"),
                Column.left("Photo"));
        for (PostDetail post : subject.posts()) {
            if (!post.post().run().equals(run.run()) || post.post().role() == PostRole.WALL) continue;
            table.rowAbout(
                    post.post().id(),
                    post.post().id(),
                    subject.length(post.post().station().inches()),
                    LINE,
                    post.isDug()
                            ? subject.inches(post.hole().inches()) + " x "
                                    + subject.inches(post.depth().inches())
                            : "\u2013",
                    post.isDug() ? LINE : "\u2013",
                    post.isDug() ? "____" : "\u2013",
                    "____",
                    "_____",
                    "____");
        }
        if (table.isEmpty()) return;
        paper.heading("Run " + run.run()).add(table.table());
    }

    private static void gate(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        paper.heading("Gate " + gate.id());
        Table.Builder table = Table.with(
                Column.words("What"), Column.right("Planned"), Column.right("As set"), Column.left("As hung"));
        double clear = gate.asked().opening().inches();
        Optional<AsSet> set = gate.asked().lastSet();
        List<String> where = List.of("top", "middle", "bottom");
        for (int i = 0; i < where.size(); i++) {
            int at = i;
            String measured = set.map(is -> List.of(is.top(), is.middle(), is.bottom()))
                    .map(lengths -> subject.length(lengths.get(at).inches()))
                    .orElse(LINE);
            table.row("Clear opening, " + where.get(i), subject.length(clear), measured, LINE);
        }
        table.row(
                gate.isPair() ? "Gap between the leaves" : "Gap at the latch",
                subject.inches(gate.asked().leaf().latchGap().inches()),
                "\u2013",
                LINE);
        table.row(
                "Gap at the hinges",
                subject.inches(gate.asked().leaf().hingeGap().inches()),
                "\u2013",
                LINE);
        for (GatePaper leaf : gate.leaves()) {
            String of = gate.isPair() ? leaf.mark() + ": " : "";
            table.row(
                    of + "least room under the leaf",
                    subject.room(leaf.subject().swing().running().clear().inches()),
                    "\u2013",
                    LINE);
            for (GatePaper.Hangs hangs : leaf.hangs())
                table.row(
                        of + "drop when the blocks went",
                        subject.inches(hangs.sag().hangAllowance().inches()),
                        "\u2013",
                        LINE);
        }
        paper.add(table.table());
        set.ifPresent(is -> paper.note("The opening as set was measured on " + is.date() + "."));
    }

    private static void changes(Paper.Builder paper, PacketSubject subject) {
        List<Change> signed =
                subject.job().log().changes().stream().filter(Change::accepted).toList();
        paper.heading("Changes that were signed");
        if (signed.isEmpty()) {
            paper.say("None is entered.");
            return;
        }
        Table.Builder table =
                Table.with(Column.left("No."), Column.left("Signed"), Column.words("What"), Column.tick("Built"));
        for (Change change : signed) table.row(change.id(), change.date().toString(), change.what(), "\u2610");
        paper.add(table.table());
    }
}
