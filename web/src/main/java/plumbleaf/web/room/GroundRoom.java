package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What was measured: every shot, and what the ground between them is taken to be. */
final class GroundRoom {
    private GroundRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel.Strip> strips = new ArrayList<>();
        int shots = opened.text().count("ground.shots");
        for (int i = 0; i < shots; i++) {
            String at = "ground.shots[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            String note = opened.text().value(at + ".note").orElse("");
            strips.add(new Panel.Strip(id, at, note, shotFields(opened, at, id)));
        }
        List<Note> notes = Notes.inAreas(opened.findings(), List.of("ground"));
        return List.of(
                Panel.of("Shots", "ground").withNotes(notes).withStrips(strips).withPresses(presses(opened)));
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
