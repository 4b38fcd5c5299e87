package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** How a gate hangs, what keeps it shut and open, and what acts on it. */
final class HangingPanel {
    private static final String STOP = "stop";
    private static final String LOCK = "hinge-lock";
    private static final List<Choice> HOLDS = List.of(
            new Choice("free", "nothing: it swings"),
            new Choice("cane-bolt", "a cane bolt in the ground"),
            new Choice(STOP, "a stop against the bottom rail"),
            new Choice(LOCK, "its hinge, or a strap at the post"));

    private HangingPanel() {}

    static Panel of(Opened opened, String at, String id) {
        boolean slides =
                opened.text().value(at + ".kind").filter("slide"::equals).isPresent();
        return slides ? slide(opened, at, id) : hung(opened, at, id);
    }

    /** A slide has no hinge, and stays open where it is left. */
    private static Panel slide(Opened opened, String at, String id) {
        String loads = at + ".loads";
        return Panel.of("Latch and loads", id)
                .withFields(List.of(
                        opened.choice(at + ".latch.model", "Latch", id, Choices.latches(opened.catalogue())),
                        opened.field(at + ".latch.height", "Latch above ground", Unit.INCHES, id),
                        opened.field(loads + ".person", "Person on the nose", Unit.POUNDS, id),
                        opened.field(loads + ".ice", "Ice, thickness", Unit.INCHES, id),
                        opened.field(loads + ".serviceGust", "Still moved in a gust of", Unit.MPH, id),
                        opened.field(loads + ".slamSpeed", "Runs into its stop with", Unit.MPH, id),
                        opened.field(loads + ".laterRise", "Ground rises later by", Unit.INCHES, id),
                        opened.field(loads + ".shotError", "Shots are good to", Unit.INCHES, id)));
    }

    /** What holds the gate open, as it is asked on site. */
    static Field holdOpen(Opened opened, String at, String id) {
        return holds(opened, at + ".holdOpen", kind(opened, at + ".holdOpen"), id);
    }

    private static Panel hung(Opened opened, String at, String id) {
        List<Field> fields = new ArrayList<>(List.of(
                opened.field(at + ".hinges.count", "Hinges", Unit.COUNT, id),
                opened.field(at + ".hinges.fromTop", "Top hinge below the top", Unit.INCHES, id),
                opened.field(at + ".hinges.fromBottom", "Low hinge above the bottom", Unit.INCHES, id),
                opened.field(at + ".hinges.weightOn", "Hinge that bears, from below", Unit.COUNT, id),
                opened.choice(at + ".latch.model", "Latch", id, Choices.latches(opened.catalogue())),
                opened.field(at + ".latch.height", "Latch above ground", Unit.INCHES, id)));
        String hold = at + ".holdOpen";
        String kind = kind(opened, hold);
        fields.add(holds(opened, hold, kind, id));
        if (kind.equals(STOP)) fields.add(opened.field(hold + ".radius", "Stop from the pin", Unit.INCHES, id));
        if (kind.equals(LOCK)) fields.add(opened.field(hold + ".lever", "Strap's lever", Unit.INCHES, id));
        fields.add(opened.fields().choice(at + ".hinges.closer", "Closer", Unit.COUNT, id, Choices.TRUE_FALSE, "no"));
        String loads = at + ".loads";
        fields.addAll(List.of(
                opened.field(loads + ".person", "Person at the latch edge", Unit.POUNDS, id),
                opened.field(loads + ".ice", "Ice, thickness", Unit.INCHES, id),
                opened.field(loads + ".serviceGust", "Latch holds in a gust of", Unit.MPH, id),
                opened.field(loads + ".slamSpeed", "Edge slams with", Unit.MPH, id),
                opened.field(loads + ".laterRise", "Ground rises later by", Unit.INCHES, id),
                opened.field(loads + ".shotError", "Shots are good to", Unit.INCHES, id)));
        return Panel.of("Hanging, latch and loads", id).withFields(fields);
    }

    private static String kind(Opened opened, String at) {
        return opened.text()
                .value(at + ".kind")
                .or(() -> opened.text().value(at))
                .orElse("");
    }

    private static Field holds(Opened opened, String at, String kind, String id) {
        String problem = opened.typed().path().equals(at) ? opened.typed().problem() : "";
        boolean assumed = kind.isEmpty();
        return new Field(
                at,
                "Held open by",
                assumed ? "cane-bolt" : kind,
                assumed,
                Unit.WORDS,
                HOLDS,
                id,
                assumed ? "assumed" : "",
                problem);
    }
}
