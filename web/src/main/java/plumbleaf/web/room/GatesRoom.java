package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** The gates: what is wrong first, then how each swings and sags, then what makes it so: opening, hand, leaf, posts. */
final class GatesRoom {
    private GatesRoom() {}

    static List<Panel> panels(Opened opened, GateSearches searches) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("gates"); i++) {
            String id = opened.text().value("gates[" + i + "].id").orElse("");
            List<Note> notes = Notes.about(opened.findings(), List.of(id, id + "a", id + "b"));
            String at = "gates[" + i + "]";
            Optional<GateDesign> design = opened.design().flatMap(made -> made.gate(id));
            List<Note> pressing = Notes.pressing(notes);
            if (!pressing.isEmpty()) panels.add(Panel.of("Gate " + id, id).withNotes(pressing));
            design.ifPresent(gate -> panels.addAll(GateNumbers.answers(gate, opened.figures())));
            panels.add(Panel.of("Opening and hand of " + id, id).withFields(gate(opened, at, id)));
            panels.add(SlideFields.kinds(opened.text().value(at + ".kind").orElse("swing"), id));
            panels.addAll(LeafPanels.of(opened, at, id));
            panels.add(Panel.of("Posts", id).withFields(build(opened, at, id)));
            panels.add(HangingPanel.of(opened, at, id));
            design.ifPresent(gate -> panels.add(SearchPanel.of(opened, gate.asked(), searches)));
            panels.addAll(HoldPanels.of(opened, at, id));
            panels.add(AsSetPanel.of(opened, at, id));
            List<Note> cautions = Notes.cautions(notes);
            if (!cautions.isEmpty()) panels.add(Panel.of("Cautions", id).withNotes(cautions));
            design.ifPresent(gate -> panels.addAll(GateNumbers.details(gate, opened.figures())));
        }
        return panels;
    }

    private static List<Field> gate(Opened opened, String at, String id) {
        String kind = opened.text().value(at + ".kind").orElse("swing");
        if (kind.equals("slide")) return SlideFields.of(opened, at, id);
        boolean pair = kind.equals("pair");
        List<Field> fields = new ArrayList<>();
        fields.add(opened.field(at + ".station", "Station", Unit.FEET, id));
        fields.add(opened.field(at + ".opening", "Opening", Unit.INCHES, id));
        if (pair) {
            fields.add(opened.field(at + ".split", "Left leaf's share", Unit.PERCENT, id));
            fields.add(opened.choice(at + ".active", "Opens first", id, Choices.SIDES));
        } else fields.add(opened.choice(at + ".hinge", "Hinge, from outside", id, Choices.SIDES));
        fields.addAll(List.of(
                opened.choice(at + ".swing", "Swings", id, Choices.WAYS),
                opened.field(at + ".opens", "Opens", Unit.DEGREES, id),
                opened.choice(at + ".hinges.model", "Hinges", id, Choices.hinges(opened.catalogue()))));
        fields.add(regrade(opened, at, id));
        fields.add(opened.fields()
                .choice(at + ".landing", "Level landing under it", Unit.COUNT, id, Choices.TRUE_FALSE, "no"));
        fields.add(opened.field(at + ".setBack", "Set back from the line", Unit.INCHES, id));
        if (pair)
            fields.addAll(List.of(
                    opened.field(at + ".leaf.latchGap", "Gap between the leaves", Unit.INCHES, id),
                    opened.pinned(at + ".meeting.rod", "Drop rod", id, Choices.rods(opened.catalogue())),
                    opened.field(at + ".meeting.rods", "Rods", Unit.COUNT, id),
                    opened.field(at + ".meeting.sleeveAbove", "Sleeve above ground", Unit.INCHES, id),
                    opened.field(at + ".meeting.sleeveDepth", "Sleeve's hole deep", Unit.INCHES, id),
                    opened.field(at + ".meeting.stop", "Center stop high", Unit.INCHES, id),
                    opened.field(at + ".meeting.strip", "Stop strip wide", Unit.INCHES, id)));
        return fields;
    }

    /** Whether the ground that the leaf would strike is shaved. */
    static Field regrade(Opened opened, String at, String id) {
        return opened.fields()
                .choice(at + ".regrade", "Ground shaved to clear", Unit.COUNT, id, Choices.TRUE_FALSE, "no");
    }

    private static List<Field> build(Opened opened, String at, String id) {
        String build = "builds." + id;
        String kind = opened.text().value(at + ".kind").orElse("swing");
        return List.of(
                opened.pinned(build + ".hingePost", first(kind), id, Choices.linePosts(opened.catalogue())),
                opened.pinned(build + ".latchPost", second(kind), id, Choices.linePosts(opened.catalogue())),
                opened.field(build + ".hole", "Hole", Unit.INCHES, id),
                opened.field(build + ".depth", "Footing depth", Unit.INCHES, id),
                opened.field(build + ".latchHole", second(kind) + "'s own hole", Unit.INCHES, id),
                opened.field(build + ".latchDepth", second(kind) + "'s own depth", Unit.INCHES, id));
    }

    private static String first(String kind) {
        return switch (kind) {
            case "pair" -> "Left post";
            case "slide" -> "Roller posts";
            default -> "Hinge post";
        };
    }

    private static String second(String kind) {
        return switch (kind) {
            case "pair" -> "Right post";
            case "slide" -> "Receiver post";
            default -> "Latch post";
        };
    }
}
