package plumbleaf.documents.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.HeightRule;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DecimalText;

/**
 * What a building office or an owners' association asks for before a fence: where it runs, how high, of what, which way gates swing, who
 * vouches for the lot line, and how each limit that the job names is met. It is an application's attachment, never an approval.
 */
public final class PermitSheet {
    private static final List<String> RULES = List.of(
            "line.height", "height.", "line.setback", "line.certified", "sight.", "barrier.", "access.", "near.");

    private PermitSheet() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper =
                Paper.titled("Permit and association sheet", subject.running()).flag(subject.flag());
        paper.say("Owner " + named(subject.job().site().customer()) + ", "
                + named(subject.job().site().address())
                + ". Contractor "
                + String.join(", ", subject.options().contractor()) + ".");
        paper.add(new Block.Blank(List.of("Parcel or lot", "Zone or tract", "Permit number", "Filed, date"), 0.32));
        plan(paper, subject);
        fences(paper, subject);
        gates(paper, subject);
        line(paper, subject);
        rules(paper, subject);
        paper.heading("Goes with it")
                .add(new Block.TickList(
                        List.of(
                                "Site plan and unrolled profile, full sheets",
                                "Shop drawing of each gate",
                                "Plat or survey of the lot, where the office asks for one",
                                "Calculation book, where the office asks for one; a licensed engineer reviews it where one is required"),
                        false));
        paper.heading("Association or neighbor");
        paper.add(new Block.Blank(List.of("Association or neighbor", "Approved by", "Date"), 0.42));
        paper.add(new Block.Blank(List.of("Conditions"), 0.75));
        paper.note(
                "Local code governs. This sheet states what is meant to be built; it is no approval, and nothing on it"
                        + " says that a design was approved.");
        return paper.paper();
    }

    private static void plan(Paper.Builder paper, PacketSubject subject) {
        Drawing plan = PlanPicture.of(subject);
        paper.heading("Where it stands");
        paper.add(new Block.Picture(
                plan,
                "Scale " + plan.scale().words() + ", north up. Each gate is drawn closed, with the way it opens."));
    }

    private static String named(String words) {
        return words.isEmpty() ? "____________" : words;
    }

    private static void fences(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.left("Run"),
                Column.words("Fence"),
                Column.right("Length"),
                Column.right("Infill high"),
                Column.right("Highest over ground"),
                Column.left("In bay"),
                Column.left("Good side"));
        for (Run run : subject.job().runs()) {
            if (run.isLoneGate()) continue;
            RunLayout layout = subject.layout().run(run.id());
            Optional<Bay> high = highest(layout);
            table.rowAbout(
                    run.id(),
                    run.id(),
                    layout.style().map(FenceStyle::words).orElse(run.style().replace('-', ' ')),
                    subject.length(layout.line().line().length().inches()),
                    subject.length(run.infill().inches()),
                    high.map(bay -> subject.length(bay.heightMax().inches())).orElse("\u2013"),
                    high.map(Bay::id).orElse("\u2013"),
                    switch (run.finishedFace()) {
                        case IN -> "inside";
                        case OUT -> "outside";
                        case BOTH -> "both";
                    });
        }
        if (table.isEmpty()) return;
        paper.heading("Fence").add(table.table());
        double deepest = subject.posts().stream()
                .mapToDouble(post -> post.depth().inches())
                .max()
                .orElse(0);
        long dug = subject.posts().stream().filter(post -> post.isDug()).count();
        paper.say(dug + " holes, the deepest " + subject.inches(deepest) + "; the ground freezes to "
                + subject.inches(subject.job().site().frost().depth().inches())
                + (subject.job().site().frost().source().isEmpty()
                        ? " here, source not given"
                        : " here (" + subject.job().site().frost().source() + ")")
                + ". Wind: "
                + DecimalText.whole(subject.job().site().wind().speed().mph()) + " mph basic speed, exposure "
                + subject.job().site().wind().exposure().name() + ". " + String.join(" ", subject.gusts()));
    }

    private static Optional<Bay> highest(RunLayout layout) {
        return layout.bays().stream()
                .max(Comparator.comparingDouble(bay -> bay.heightMax().inches()));
    }

    private static void gates(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.left("Gate"),
                Column.right("Clear"),
                Column.words("Opens"),
                Column.right("Latch over ground"),
                Column.words("Swings over"));
        for (GatePaper gate : subject.gates())
            table.rowAbout(
                    gate.id(),
                    gate.id(),
                    subject.length(gate.subject().plan().opening().clear().inches()),
                    gate.subject().plan().sentence(),
                    subject.length(gate.subject().latchHeight().inches()),
                    over(subject, gate));
        for (SlidePaper gate : subject.slides())
            table.rowAbout(
                    gate.id(),
                    gate.id(),
                    subject.length(gate.subject().plan().shape().opening().inches()),
                    gate.sentence(),
                    subject.length(gate.asked().latch().height().inches()),
                    SlideRecords.over(subject, gate));
        if (table.isEmpty()) return;
        paper.heading("Gates").add(table.table());
    }

    /** Which side the open leaf stands over, in words that a plan checker can hold against the plan. */
    private static String over(PacketSubject subject, GatePaper gate) {
        boolean in = gate.leaf().hand().swing().key().equals("in");
        String outside = subject.job().run(gate.asked().run()).outside().key();
        return in
                ? "the inside, the owner's own ground"
                : "the outside (" + outside + " of the run): check walk and road";
    }

    private static void line(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Lot line");
        List<PropertyLine> lines = subject.job().rules().propertyLines();
        for (PropertyLine line : lines)
            paper.say(capital(line.what()) + ": fence face at least "
                    + subject.length(line.setback().inches()) + " off it; the line is vouched for by "
                    + line.certifiedBy().value().orElse("nobody yet") + ".");
        if (lines.isEmpty())
            paper.say(
                    "No lot line is entered in this job. The owner shows the pins and stands for them; nothing here is a survey.");
    }

    private static void rules(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.left("Part"),
                Column.words("Limit and how it is met"),
                Column.words("Basis"),
                Column.left("State"));
        for (Finding finding : subject.findings())
            if (isRule(finding))
                table.rowAbout(
                        finding.part(),
                        finding.part(),
                        finding.message(),
                        finding.basis().words(),
                        finding.severity().words());
        paper.heading("Limits looked at");
        for (HeightRule rule : subject.job().rules().heights())
            paper.say("Height limit here: " + subject.length(rule.limit().inches()) + ", measured from the "
                    + rule.from().key().replace('-', ' ') + ".");
        if (table.isEmpty())
            paper.say(
                    "No limit beyond the above is entered in this job, so none was held against it: ask the office for height,"
                            + " setback, sight triangle, pool and material rules.");
        else paper.add(table.table());
    }

    private static boolean isRule(Finding finding) {
        return (finding.severity() != Severity.PASS || finding.measure().isPresent())
                && RULES.stream().anyMatch(finding.id()::startsWith);
    }

    private static String capital(String words) {
        return words.isEmpty() ? "Line" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
