package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** Where a run begins, and its legs: each in the form it was taken in, by turn, by a tape across the corner, by offsets, or as a curve. */
final class LegFields {
    private LegFields() {}

    static List<Field> start(Opened opened, String at, String id) {
        String start = at + ".start";
        boolean onRun = opened.text().value(start + ".run").isPresent();
        return onRun
                ? List.of(
                        opened.choice(start + ".run", "Begins on run", id, Choices.ids(opened.text(), "runs")),
                        opened.field(start + ".station", "At its station", Unit.FEET, id))
                : List.of(
                        opened.field(start + ".east", "Begins, east", Unit.FEET, id),
                        opened.field(start + ".north", "Begins, north", Unit.FEET, id));
    }

    static Panel.Strip of(Opened opened, String at, String id, int i) {
        String leg = at + ".legs[" + i + "]";
        String name = id + "." + (i + 1);
        List<Field> fields = new ArrayList<>();
        boolean curve = opened.text().count(leg + ".arc") > 0
                || opened.text().value(leg + ".arc.radius").isPresent();
        boolean offsets = opened.text().value(leg + ".off").isPresent();
        boolean triangle = opened.text().value(leg + ".diagonal").isPresent();
        if (!curve && !offsets) fields.add(opened.field(leg + ".length", "Length", Unit.FEET, name));
        if (i == 0) fields.add(opened.field(leg + ".bearing", "Bearing", Unit.DEGREES, name));
        else if (triangle) fields.add(opened.field(leg + ".diagonal", "Tape across", Unit.WORDS, name));
        else if (!offsets)
            fields.add(opened.fields().choice(leg + ".turn", "Turn", Unit.WORDS, name, List.of(), "straight on"));
        if (curve) {
            fields.add(opened.field(leg + ".arc.radius", "Radius", Unit.FEET, name));
            fields.add(opened.field(leg + ".arc.turn", "Turns in all", Unit.WORDS, name));
            fields.add(opened.field(leg + ".arc.sagitta", "Chord off the curve", Unit.INCHES, name));
        } else if (offsets) {
            fields.add(opened.field(leg + ".along", "Straight on", Unit.FEET, name));
            fields.add(opened.field(leg + ".off", "Square off", Unit.WORDS, name));
        } else {
            fields.add(opened.choice(leg + ".taped", "Taped", name, Choices.TAPED));
            fields.add(LegCurve.field(opened, leg, name));
        }
        return new Panel.Strip(name, leg, words(curve, triangle, offsets), fields);
    }

    private static String words(boolean curve, boolean triangle, boolean offsets) {
        if (curve) return "a curve, fenced by chords";
        if (triangle) return "corner by three tapes";
        return offsets ? "corner by offsets" : "";
    }
}
