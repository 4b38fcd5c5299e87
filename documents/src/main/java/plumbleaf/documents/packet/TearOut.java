package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Overnight;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PlugFate;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.takeoff.TornOut;

/** What comes out, whose it is, what it weighs, where it goes, and what must stay shut while it is down. */
public final class TearOut {
    private TearOut() {}

    /** Only a job with an old fence or old concrete in its line has one. */
    public static boolean isFor(PacketSubject subject) {
        return !subject.job().existing().fences().isEmpty()
                || !subject.job().existing().plugs().isEmpty();
    }

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Tear-out ticket", subject.running()).flag(subject.flag());
        paper.say(subject.job().site().customer() + ", " + subject.job().site().address() + ".");
        paper.add(new Block.Caution("Before the first board comes off", before(subject)));
        fences(paper, subject);
        plugs(paper, subject);
        for (Finding finding : subject.findings()) if (finding.id().equals("haul.loads")) paper.say(finding.message());
        for (Labour labour : subject.labour()) {
            double hours = labour.hours(Phase.TEAR_OUT);
            if (hours > 0.05) paper.say("Planned: " + DecimalText.fixed(hours, 1) + " man-hours. Used: ________");
        }
        shut(paper, subject);
        paper.heading("Where it goes");
        Table.Builder out = Table.with(
                Column.words("What"), Column.words("To"), Column.left("Weight or yards"), Column.left("Dump ticket"));
        for (String what : List.of("Boards, rails, posts", "Wire, steel", "Concrete, soil", "Treated, painted wood"))
            out.row(what, "________________", "__________", "__________");
        paper.add(out.table());
        paper.heading("Agreed")
                .add(new Block.TickList(
                        List.of(
                                "The fence is the owner's own, or the neighbor who shares it has agreed in writing",
                                "Kept for the owner: ______________________________________",
                                "Photographs of fence, ground and plants before anything is touched"),
                        false));
        paper.add(new Block.Blank(List.of("Owner", "Date", "Foreman", "Done on"), 0.35));
        return paper.paper();
    }

    private static List<String> before(PacketSubject subject) {
        List<String> words = new ArrayList<>();
        words.add("Whose fence is it? Pull nothing that a neighbor may own before the line below is signed.");
        words.addAll(subject.digging());
        words.add("Pulling a post is digging: the marks must be down. Cut wires only when they are slack; gloves,"
                + " glasses, boots.");
        words.add("Paint from before 1978 may hold lead: no sanding, no burning; sheet the ground, bag the chips (from"
                + " memory). Treated wood is never burned.");
        return words;
    }

    private static void fences(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.tick("Out"),
                Column.words("Fence"),
                Column.right("Length"),
                Column.right("Posts every"),
                Column.right("Posts, about"),
                Column.left("In concrete"));
        for (OldFence fence : subject.job().existing().fences())
            table.row(
                    "\u2610",
                    fence.kind(),
                    subject.length(fence.length().inches()),
                    fence.pitch().isZero()
                            ? "\u2013"
                            : subject.length(fence.pitch().inches()),
                    fence.pitch().isZero() ? "\u2013" : Integer.toString(fence.posts()),
                    fence.concrete() ? (fence.pulled() > 0 ? "yes, pulled" : "yes, stays") : "no");
        if (table.isEmpty()) return;
        paper.heading("Old fence").add(table.table());
        paper.note("Posts follow from length and pitch: count them. Fill each hole, tread it firm, the same day.");
    }

    private static void plugs(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.tick("Out"),
                Column.left("Run"),
                Column.right("At station"),
                Column.right("Wide"),
                Column.right("Deep"),
                Column.right("Weighs, about"),
                Column.left("What becomes of it"));
        for (Plug plug : subject.job().existing().plugs())
            table.row(
                    "\u2610",
                    plug.run(),
                    subject.length(plug.station().inches()),
                    subject.inches(plug.diameter().inches()),
                    subject.inches(plug.depth().inches()),
                    DecimalText.whole(TornOut.weight(plug.diameter(), plug.depth())
                                    .pounds()) + " lb",
                    plug.fate() == PlugFate.PULL ? "pulled" : "stays");
        if (table.isEmpty()) return;
        paper.heading("Old concrete in the new line").add(table.table());
        paper.note("A cylinder at " + DecimalText.whole(Concrete.DENSITY.pcf())
                + " lb a cubic foot. Lift with a jack and chain, nobody over the hole; leave a plug that no"
                + " new hole meets.");
    }

    private static void shut(Paper.Builder paper, PacketSubject subject) {
        List<Overnight> kept = subject.job().rules().overnight();
        paper.heading("Shut tonight");
        for (Overnight each : kept)
            paper.say("Keep in, or out: " + each.what() + "; temporary fence "
                    + subject.length(each.temporaryFence().inches()) + ".");
        if (kept.isEmpty())
            paper.say("Nothing is named. Ask: dogs, children, a pool. Take down only what can be closed again the same"
                    + " day.");
    }
}
