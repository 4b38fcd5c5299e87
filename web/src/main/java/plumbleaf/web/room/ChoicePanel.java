package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.offer.BuildEdits;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** What the search for a gate's build found: the cheapest that passes, what comes next, and why what costs less fails. */
final class ChoicePanel {
    private ChoicePanel() {}

    static Panel of(GateChoice choice, Design design, PickedWords words) {
        Gate gate = design.job().gates().stream()
                .filter(each -> each.id().equals(choice.gate()))
                .findFirst()
                .orElseThrow();
        FoundBuilds found = FoundBuilds.of(gate, choice);
        List<Note> notes = new ArrayList<>();
        for (Finding finding : design.findings())
            if (finding.id().equals("gate.build") && finding.part().equals(choice.gate())) {
                Note note = Notes.of(finding);
                notes.add(new Note(
                        note.severity(),
                        note.words(),
                        note.part(),
                        note.message(),
                        note.basis(),
                        note.ratio(),
                        takes(found, "", words)));
            }
        return Panel.of("Choice of a build for " + choice.gate(), choice.gate())
                .withNotes(notes)
                .withRows(rows(found))
                .withTables(proof(found, words));
    }

    /** How many there are, and how many cheaper ones fail. */
    static List<Row> rows(FoundBuilds found) {
        String key = "choice." + found.gate().id();
        return List.of(
                Row.of(key + ".all", "Builds in all", DecimalText.whole(found.all())),
                Row.of(
                        key + ".failed",
                        found.passing().isEmpty() ? "That fail" : "Cheaper ones that fail",
                        DecimalText.whole(found.failed())));
    }

    /** What passes, in order of price, and what each cheaper one fails: each kind of reason once, then those nearest in price. */
    static List<Table> proof(FoundBuilds found, PickedWords words) {
        List<Table> tables = new ArrayList<>();
        String gate = found.gate().id();
        List<Table.Line> builds = new ArrayList<>();
        for (Candidate<PickedGate> each : found.passing())
            builds.add(new Table.Line(
                    gate,
                    List.of(
                            words.of(each.build()),
                            each.price().text(),
                            "+"
                                    + each.price()
                                            .minus(found.passing().get(0).price())
                                            .text())));
        if (!builds.isEmpty())
            tables.add(new Table("Passes, the cheapest first", List.of("Build", "Price", "More"), builds));
        List<Table.Line> reasons = new ArrayList<>();
        for (FoundBuilds.Reason each : found.reasons())
            reasons.add(new Table.Line(
                    gate,
                    List.of(
                            DecimalText.whole(each.builds()),
                            each.last().because().message(),
                            each.last().id())));
        if (!reasons.isEmpty())
            tables.add(new Table(
                    "Why the cheaper ones fail, each kind of reason once",
                    List.of("Builds", "Because", "The dearest of them, by its parts"),
                    reasons));
        List<Table.Line> fails = new ArrayList<>();
        for (Rejected each : found.dearest())
            fails.add(new Table.Line(
                    gate, List.of(each.id(), each.price().text(), each.because().message())));
        if (!fails.isEmpty())
            tables.add(new Table(
                    "Costs less and fails, the dearest first", List.of("By its parts", "Price", "Because"), fails));
        return tables;
    }

    /**
     * One press writes a build into the job.
     *
     * @param first what goes before it: an edit that takes out what was pinned
     */
    static List<Note.Press> takes(FoundBuilds found, String first, PickedWords words) {
        List<Note.Press> presses = new ArrayList<>();
        for (int i = 0; i < found.passing().size(); i++) {
            Candidate<PickedGate> each = found.passing().get(i);
            String what = i == 0 ? "Keep: " : "Take: ";
            presses.add(new Note.Press(
                    what + words.of(each.build()), each.price().text(), first + edit(found.gate(), each)));
        }
        return presses;
    }

    static String edit(Gate gate, Candidate<PickedGate> each) {
        return String.join(
                Remedy.AND_THEN,
                BuildEdits.of(gate, each.build()).stream().map(JobEdit::text).toList());
    }
}
