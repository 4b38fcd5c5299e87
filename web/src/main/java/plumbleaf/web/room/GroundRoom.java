package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Unit;

/** What was measured: every shot, and what the ground between them is taken to be. */
final class GroundRoom {
    private GroundRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel.Strip> strips = strips(opened, "");
        List<Note> notes = Notes.inAreas(opened.findings(), List.of("ground"));
        return List.of(
                Panel.of("Shots", "ground")
                        .withNotes(notes)
                        .withStrips(strips)
                        .withPresses(presses(opened))
                        .withEntries(List.of(Ledger.SHOT.entry(opened), Ledger.POINT_FILE.entry(opened))),
                level(opened),
                between(opened));
    }

    /** @param run whose shots; empty for all */
    static List<Panel.Strip> strips(Opened opened, String run) {
        List<Panel.Strip> strips = new ArrayList<>();
        int shots = opened.text().count("ground.shots");
        for (int i = 0; i < shots; i++) {
            String at = "ground.shots[" + i + "]";
            if (!run.isEmpty() && !opened.text().value(at + ".run").orElse("").equals(run)) continue;
            String id = opened.text().value(at + ".id").orElse("");
            String note = opened.text().value(at + ".note").orElse("");
            strips.add(new Panel.Strip(id, at, note, shotFields(opened, at, id)));
        }
        return strips;
    }

    /** What the heights rest on, and how well the level's ways close. */
    private static Panel level(Opened opened) {
        return Panel.of("Benchmark, setups and closure", "ground")
                .withFields(List.of(
                        opened.fields()
                                .choice(
                                        "ground.benchmark.mark",
                                        "Benchmark",
                                        Unit.WORDS,
                                        "ground",
                                        List.of(),
                                        "the first shot"),
                        opened.field("ground.benchmark.elevation", "Its elevation", Unit.INCHES, "ground")))
                .withRows(closures(opened))
                .withEntries(List.of(Ledger.SETUP.entry(opened)))
                .withStrips(Listed.strips(opened, Ledger.SETUP, "ground.setups", "Setup"));
    }

    /** Every way of the level that came back to a known height, passed or not. */
    private static List<Row> closures(Opened opened) {
        List<Row> rows = new ArrayList<>();
        for (Finding finding : opened.findings())
            if (finding.id().equals("ground.closure"))
                rows.add(new Row(
                        "closure." + finding.part(),
                        "Closes at " + finding.part(),
                        finding.severity().words(),
                        finding.message(),
                        finding.part()));
        return rows.isEmpty()
                ? List.of(new Row(
                        "closure",
                        "Closure",
                        "not checked",
                        "From the last setup read the rod once more on the benchmark or on a shot you have.",
                        ""))
                : rows;
    }

    /** What the ground between and beside the shots is taken to be. */
    private static Panel between(Opened opened) {
        List<Field> slopes = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String id = opened.text().value("runs[" + i + "].id").orElse("");
            slopes.add(opened.fields()
                    .choice(
                            "runs[" + i + "].crossSlope",
                            "Cross slope at " + id + ", + up to the inside",
                            Unit.PERCENT,
                            id,
                            List.of(),
                            "assumed: level, where nothing was shot beside the run"));
        }
        List<Panel.Strip> strips = new ArrayList<>();
        strips.addAll(Listed.strips(opened, Ledger.BREAKLINE, "ground.breaklines", "Breakline"));
        strips.addAll(Listed.strips(opened, Ledger.LATER, "ground.later", "Rise"));
        return Panel.of("Between and beside the shots", "ground")
                .withFields(slopes)
                .withEntries(List.of(Ledger.BREAKLINE.entry(opened), Ledger.LATER.entry(opened)))
                .withStrips(strips);
    }

    private static List<Panel.Press> presses(Opened opened) {
        return NewShot.in(opened)
                .map(shot ->
                        List.of(new Panel.Press("Add a shot at " + shot.station() + " of " + shot.run(), "add-shot")))
                .orElse(List.of());
    }

    /** The keys a shot has, so that each is edited in the form it was taken in. */
    private static List<Field> shotFields(Opened opened, String at, String id) {
        List<Field> fields = new ArrayList<>();
        addWhereSaid(opened, fields, at + ".station", "Station", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".east", "East", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".north", "North", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".over", "Over", Unit.FEET, id);
        if (opened.text().has(at + ".over"))
            fields.add(opened.fields()
                    .choice(at + ".taped", "Taped", Unit.WORDS, id, Choices.TAPED, "level, nobody said"));
        addWhereSaid(opened, fields, at + ".tapes.from", "Taped from", Unit.WORDS, id);
        addWhereSaid(opened, fields, at + ".tapes.length", "The tape", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".tapes.and", "And from", Unit.WORDS, id);
        addWhereSaid(opened, fields, at + ".tapes.andLength", "That tape", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".tapes.side", "Side", Unit.WORDS, id);
        addWhereSaid(opened, fields, at + ".tapes.check", "Checked from", Unit.WORDS, id);
        addWhereSaid(opened, fields, at + ".tapes.checkLength", "Third tape", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".in", "In", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".out", "Out", Unit.FEET, id);
        addWhereSaid(opened, fields, at + ".rod", "Rod", Unit.INCHES, id);
        addWhereSaid(opened, fields, at + ".elevation", "Elevation", Unit.INCHES, id);
        addWhereSaid(opened, fields, at + ".falls", "Falls", Unit.INCHES, id);
        addWhereSaid(opened, fields, at + ".rises", "Rises", Unit.INCHES, id);
        return fields;
    }

    private static void addWhereSaid(
            Opened opened, List<Field> fields, String path, String label, Unit unit, String id) {
        boolean typed = opened.typed().path().equals(path);
        if (typed || opened.text().value(path).isPresent()) fields.add(opened.field(path, label, unit, id));
    }
}
