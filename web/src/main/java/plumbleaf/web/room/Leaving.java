package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;

/** The last look before one leaves a site: what does not close or was not measured, and the open answers that move the price most. */
final class Leaving {
    static final String NAME = "Before you leave";

    private static final List<String> ASKED_AGAIN = List.of("ground", "draft", "swing", "line", "ticket", "dig");

    private Leaving() {}

    static WalkSteps.Step of(Opened opened, Bench bench) {
        List<Note> notes = new ArrayList<>();
        for (Finding finding : opened.findings()) {
            String area = finding.id().substring(0, Math.max(0, finding.id().indexOf('.')));
            if (finding.severity() != Severity.PASS && ASKED_AGAIN.contains(area)) notes.add(said(Notes.of(finding)));
        }
        List<Row> rows = new ArrayList<>();
        for (PriceMovers.Mover mover : bench.movers(opened))
            rows.add(new Row(
                    "mover." + mover.path(), mover.words(), mover.change().signedText(), "", ""));
        boolean priced = opened.design().isPresent()
                && !opened.design().get().layout().runs().isEmpty();
        if (rows.isEmpty() && priced)
            rows.add(new Row(
                    "mover.none", "Open answers", "none", "Nothing that is still assumed moves the price.", ""));
        if (rows.isEmpty())
            rows.add(new Row(
                    "mover.none",
                    "Open answers",
                    "cannot say",
                    "Nothing can be priced before a leg and its style are known.",
                    ""));
        return new WalkSteps.Step(
                NAME,
                "Answers nobody gave yet that move the price most, each tried once as it might turn out with the gates made as they"
                        + " are, worst first; and what asks to be measured again while one is here.",
                List.of(
                        Panel.of("Not said yet", "").withRows(rows),
                        Panel.of("To measure again, or to know", "").withNotes(notes)));
    }

    /** Remedies are pressed in the rooms; here one measures. */
    private static Note said(Note note) {
        return new Note(
                note.severity(), note.words(), note.part(), note.message(), note.basis(), note.ratio(), List.of());
    }
}
