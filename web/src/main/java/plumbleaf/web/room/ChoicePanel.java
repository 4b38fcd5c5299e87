package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Choice;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** What the search for a gate's build found: the cheapest that passes, what comes next, and why what costs less fails. */
final class ChoicePanel {
    /** The dearest of those that fail are the ones somebody asks after. */
    private static final int SHOWN = 12;

    private ChoicePanel() {}

    static Panel of(GateChoice choice, Design design) {
        Choice<PickedGate> found = choice.choice();
        List<Note> notes = new ArrayList<>();
        for (Finding finding : design.findings())
            if (finding.id().equals("gate.build") && finding.part().equals(choice.gate()))
                notes.add(withPresses(Notes.of(finding), choice));
        List<Candidate<PickedGate>> passing = new ArrayList<>(found.best());
        passing.addAll(found.next());
        List<Table.Line> builds = new ArrayList<>();
        for (Candidate<PickedGate> each : passing)
            builds.add(new Table.Line(
                    choice.gate(),
                    List.of(
                            each.id(),
                            each.price().text(),
                            "+" + each.price().minus(passing.get(0).price()).text())));
        List<Table> tables = new ArrayList<>();
        if (!builds.isEmpty())
            tables.add(new Table("Passes, the cheapest first", List.of("Build", "Price", "More"), builds));
        List<Rejected> failed = found.rejected();
        List<Table.Line> fails = new ArrayList<>();
        for (int i = failed.size() - 1; i >= Math.max(0, failed.size() - SHOWN); i--)
            fails.add(new Table.Line(
                    choice.gate(),
                    List.of(
                            failed.get(i).id(),
                            failed.get(i).price().text(),
                            failed.get(i).because().message())));
        if (!fails.isEmpty())
            tables.add(new Table(
                    "Costs less and fails, the dearest first; the command line lists them all",
                    List.of("Build", "Price", "Because"),
                    fails));
        return Panel.of("Choice of a build for " + choice.gate(), choice.gate())
                .withNotes(notes)
                .withRows(reasons(choice))
                .withTables(tables);
    }

    /** How many fail by what. */
    private static List<Row> reasons(GateChoice choice) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Rejected each : choice.choice().rejected())
            counts.merge(each.because().id(), 1, Integer::sum);
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(
                "choice." + choice.gate() + ".all",
                "Builds in all",
                String.valueOf(choice.choice().all())));
        counts.forEach((reason, count) -> rows.add(Row.of(
                "choice." + choice.gate() + "." + reason, "Cheaper ones that fail " + reason, String.valueOf(count))));
        return rows;
    }

    /** One press writes a build into the job. */
    private static Note withPresses(Note note, GateChoice choice) {
        List<Note.Press> presses = new ArrayList<>();
        for (Candidate<PickedGate> each : choice.choice().best()) presses.add(press("Keep ", each, choice.gate()));
        for (Candidate<PickedGate> each : choice.choice().next()) presses.add(press("Take ", each, choice.gate()));
        return new Note(
                note.severity(), note.words(), note.part(), note.message(), note.basis(), note.ratio(), presses);
    }

    private static Note.Press press(String what, Candidate<PickedGate> each, String gate) {
        PickedGate build = each.build();
        String at = "builds." + gate + ".";
        return new Note.Press(
                what + each.id(),
                each.price().text(),
                String.join(
                        Remedy.AND_THEN,
                        at + "frame=" + build.frame().id(),
                        at + "braces=" + build.bracing().key(),
                        at + "joint=" + build.joint().key(),
                        at + "hingePost=" + build.hingePost().id(),
                        at + "latchPost=" + build.latchPost().id(),
                        at + "hole=" + LengthText.exact(build.hole().diameter().inches()),
                        at + "depth=" + LengthText.exact(build.hole().depth().inches())));
    }
}
