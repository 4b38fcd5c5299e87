package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What may be written of a slide gate: the side it opens to, its tail, its rollers, its receiver. */
final class SlideFields {
    private SlideFields() {}

    /** @param at the gate in the text */
    static List<Field> of(Opened opened, String at, String id) {
        return List.of(
                opened.field(at + ".station", "Station", Unit.FEET, id),
                opened.field(at + ".opening", "Opening", Unit.INCHES, id),
                opened.choice(at + ".slides", "Slides to, from outside", id, Choices.SIDES),
                opened.choice(at + ".slide.beside", "Runs beside its posts", id, Choices.WAYS),
                opened.field(at + ".slide.tail", "Tail behind the opening", Unit.INCHES, id),
                opened.field(at + ".slide.spacing", "Between the roller posts", Unit.INCHES, id),
                opened.pinned(at + ".slide.rollers", "Rollers", id, rollers(opened.catalogue())),
                opened.field(at + ".slide.overlap", "Nose into the receiver", Unit.INCHES, id),
                opened.field(at + ".slide.mouthUp", "Mouth over and under", Unit.INCHES, id),
                opened.field(at + ".slide.mouthAcross", "Mouth to each side", Unit.INCHES, id),
                opened.field(at + ".slide.uprights", "Uprights at most apart", Unit.INCHES, id),
                GatesRoom.regrade(opened, at, id));
    }

    private static List<Choice> rollers(Catalogue catalogue) {
        List<Choice> choices = new ArrayList<>();
        for (RollerModel each : catalogue.rollers()) choices.add(new Choice(each.id(), each.name()));
        return choices;
    }

    /** What a gate may become with one press. */
    static Panel kinds(String kind, String id) {
        String gate = "gates[" + id + "].";
        List<Note.Press> presses = new ArrayList<>();
        if (!kind.equals("slide"))
            for (String side : List.of("left", "right"))
                presses.add(new Note.Press(
                        "make it a slide that opens to the " + side,
                        "",
                        joined(
                                gate,
                                "kind=slide",
                                "hinge=",
                                "swing=",
                                "opens=",
                                "holdOpen=",
                                "split=",
                                "active=",
                                "meeting=",
                                "slides=" + side)));
        if (kind.equals("slide"))
            presses.add(new Note.Press("hang it on hinges", "", joined(gate, "kind=swing", "slides=", "slide=")));
        return Panel.of("Kind of gate", id)
                .withNotes(List.of(new Note("pass", "Kind", id, "This gate " + words(kind) + ".", "", "", presses)));
    }

    private static String words(String kind) {
        return switch (kind) {
            case "pair" -> "is a pair";
            case "slide" -> "slides";
            case "flagged" -> "is priced by hand";
            default -> "swings";
        };
    }

    private static String joined(String gate, String... edits) {
        return String.join(
                Remedy.AND_THEN, Arrays.stream(edits).map(edit -> gate + edit).toList());
    }
}
