package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** How far a gate is cleared for the shop, and the opening it was measured to: leaf, gaps and packers are fitted to the last readings. */
final class AsSetPanel {
    private static final Choice RELEASED = new Choice("released", "released for the shop");
    private static final List<Choice> BEFORE = List.of(
            new Choice("priced", "priced from the plan, not for the shop"),
            new Choice("hold", "on hold until its opening is measured"));

    private AsSetPanel() {}

    /** Opening and plumb of both posts, measured between them once they stand, and what comes of them. */
    static Panel of(Opened opened, String at, String id) {
        String posts = opened.text()
                .value(at + ".kind")
                .map(kind -> switch (kind) {
                    case "pair" -> "; hinge post: the left one, latch post: the right one";
                    case "slide" -> "; hinge post: the front roller post, latch post: the receiver post";
                    default -> "";
                })
                .orElse("");
        return Panel.of("As set: opening of " + id + " between its posts" + posts, id)
                .withFields(status(opened, at + ".release", id))
                .withStrips(Listed.strips(opened, Ledger.AS_SET, at + ".asSet", "Readings"))
                .withEntries(List.of(
                        Ledger.AS_SET.entry(opened, at + ".asSet"), Ledger.RELEASE.entry(opened, at + ".release")));
    }

    /** The state, and of a release its revision, day and name; it is made by its own form, since it needs all of them at once. */
    private static List<Field> status(Opened opened, String at, String id) {
        boolean released =
                opened.text().value(at + ".kind").filter("released"::equals).isPresent();
        if (!released) return List.of(opened.choice(at, "Status", id, BEFORE));
        List<Choice> states = new ArrayList<>(BEFORE);
        states.add(RELEASED);
        String problem = opened.typed().path().equals(at) ? opened.typed().problem() : "";
        return List.of(
                new Field(at, "Status", RELEASED.value(), false, Unit.WORDS, states, id, "", problem),
                opened.field(at + ".revision", "Revision", Unit.WORDS, id),
                opened.field(at + ".date", "Released on", Unit.WORDS, id),
                opened.field(at + ".by", "Released by", Unit.WORDS, id));
    }
}
