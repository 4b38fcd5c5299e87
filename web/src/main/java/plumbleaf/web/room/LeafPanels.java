package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.section.Section;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** How a gate's leaf is shaped, filled and kept square: each kind with the fields that belong to it. */
final class LeafPanels {
    private static final List<Choice> TOPS = List.of(
            new Choice("straight", "straight"),
            new Choice("arched", "arched, pickets follow"),
            new Choice("scalloped", "scalloped, pickets follow"));
    private static final List<Choice> FILLS = List.of(
            new Choice("as-fence", "as the fence"),
            new Choice("style", "another style of boards"),
            new Choice("metal-pickets", "steel pickets"),
            new Choice("mesh", "wire mesh"),
            new Choice("sheet", "steel sheet"),
            new Choice("none", "nothing"));
    static final List<Choice> BRACES = List.of(
            new Choice("none", "its corners alone"),
            new Choice("one", "one brace"),
            new Choice("two", "two braces"),
            new Choice("x", "two braces that cross"),
            new Choice("rod", "tension rod with turnbuckle"));
    private static final List<Choice> RUNS = List.of(
            new Choice(RodRuns.FROM_TOP_HINGE.key(), "upper hinge to lower latch corner"),
            new Choice(RodRuns.FROM_LOW_HINGE.key(), "lower hinge to upper latch corner"),
            new Choice(RodRuns.BOTH.key(), "one each way"));
    private static final List<Choice> EDGES = List.of(
            new Choice(MeshEdge.ANGLE.key(), "stitched to an angle"),
            new Choice(MeshEdge.FLAT_BAR.key(), "clamped under a flat bar"),
            new Choice(MeshEdge.DIRECT.key(), "straight to the frame"));
    private static final String UNSAID = "not said";
    private static final String AS_LEFT = "as the left leaf";
    private static final List<Choice> YES_NO = List.of(new Choice("true", "yes"), new Choice("false", "no"));

    private final Opened opened;
    private final String id;

    private LeafPanels(Opened opened, String id) {
        this.opened = opened;
        this.id = id;
    }

    static List<Panel> of(Opened opened, String gate, String id) {
        LeafPanels panels = new LeafPanels(opened, id);
        List<Panel> all = new ArrayList<>(List.of(
                Panel.of("Leaf", id).withFields(panels.leaf(gate + ".leaf")),
                Panel.of("Frame of the leaf", id).withFields(panels.frame("builds." + id))));
        if (panels.kind(gate + ".kind", "").equals("pair"))
            all.add(Panel.of("Right leaf, where it is not as the left one", id)
                    .withFields(panels.right("builds." + id + ".rightLeaf")));
        return all;
    }

    private List<Field> right(String at) {
        List<Field> fields = new ArrayList<>();
        fields.add(asLeft(at + ".frame", "Its tube", Choices.tubes(opened.catalogue())));
        if (opened.text().has(at + ".frame")) fields.add(yes(at + ".flat", "Tube lies flat"));
        fields.add(asLeft(at + ".joint", "Its corners", Choices.JOINTS));
        fields.addAll(keptSquare(at, AS_LEFT));
        fields.add(asLeft(at + ".hinge", "Its hinges", Choices.hinges(opened.catalogue())));
        String fill = kind(at + ".fill", "");
        fields.add(pick(at + ".fill", "Filled with", fill, FILLS, AS_LEFT));
        fields.addAll(fill(at + ".fill", fill));
        return fields;
    }

    private Field asLeft(String path, String label, List<Choice> choices) {
        return opened.fields().choice(path, label, Unit.WORDS, id, choices, AS_LEFT);
    }

    /** How it is filled and topped, as it is asked on site. */
    static List<Field> filling(Opened opened, String gate, String id) {
        LeafPanels panels = new LeafPanels(opened, id);
        String at = gate + ".leaf";
        String fill = panels.kind(at + ".fill", "as-fence");
        List<Field> fields = new ArrayList<>();
        fields.add(panels.pick(at + ".fill", "Filled with", fill, FILLS));
        fields.addAll(panels.fill(at + ".fill", fill));
        fields.add(panels.pick(at + ".top", "Top", panels.kind(at + ".top", "straight"), TOPS));
        fields.add(opened.choice(at + ".shape", "Frame", id, Choices.SHAPES));
        return fields;
    }

    private List<Field> leaf(String at) {
        List<Field> fields = new ArrayList<>();
        fields.add(opened.choice(at + ".shape", "Frame", id, Choices.SHAPES));
        fields.add(opened.field(at + ".infill", "Height of the infill", Unit.INCHES, id));
        fields.add(opened.field(at + ".bottomGap", "Gap under the leaf", Unit.INCHES, id));
        String top = kind(at + ".top", "straight");
        fields.add(pick(at + ".top", "Top", top, TOPS));
        if (top.equals("arched")) fields.add(size(at, "top.rise", "Rise in the middle"));
        if (top.equals("scalloped")) fields.add(size(at, "top.dip", "Dip in the middle"));
        fields.add(size(at, "infillAboveFrame", "Infill above the frame"));
        fields.add(opened.field(at + ".midRails", "Mid rails", Unit.COUNT, id));
        String fill = kind(at + ".fill", "as-fence");
        fields.add(pick(at + ".fill", "Filled with", fill, FILLS));
        fields.addAll(fill(at + ".fill", fill));
        return fields;
    }

    private List<Field> fill(String at, String kind) {
        return switch (kind) {
            case "style" -> List.of(opened.choice(at + ".style", "Style", id, Choices.styles(opened.catalogue())));
            case "metal-pickets" ->
                List.of(
                        opened.choice(at + ".section", "Picket", id, pickets(opened.catalogue())),
                        size(at, "gap", "Most between two"),
                        yes(at + ".punched", "Through punched rails"));
            case "mesh" ->
                List.of(
                        yes(at + ".woven", "Woven, not welded"),
                        size(at, "wire", "Wire"),
                        size(at, "pitch", "Wire to wire"),
                        opened.choice(at + ".edge", "Edge", id, EDGES));
            case "sheet" -> List.of(size(at, "thickness", "Thickness"), opened.choice(at + ".edge", "Edge", id, EDGES));
            default -> List.of();
        };
    }

    private List<Field> frame(String build) {
        List<Field> fields = new ArrayList<>();
        fields.add(opened.pinned(build + ".frame", "Frame tube", id, Choices.tubes(opened.catalogue())));
        fields.add(yes(build + ".flat", "Tube lies flat"));
        fields.add(opened.pinned(build + ".joint", "Frame corners", id, Choices.JOINTS));
        if (isBracketed(build) || isBracketed(build + ".rightLeaf")) {
            fields.add(opened.field(build + ".bracket.play", "A bracket's play", Unit.DEGREES, id));
            fields.add(opened.field(build + ".bracket.momentPerDegree", "Turns a degree under", Unit.POUND_FEET, id));
            fields.add(opened.field(build + ".bracket.capacity", "May carry, maker's sheet", Unit.POUND_FEET, id));
        }
        fields.addAll(keptSquare(build, UNSAID));
        return fields;
    }

    private boolean isBracketed(String leaf) {
        return opened.text().value(leaf + ".joint").equals(Optional.of(Joint.BRACKETED.key()));
    }

    private List<Field> keptSquare(String leaf, String unsaid) {
        List<Field> fields = new ArrayList<>();
        String braces = braces(leaf + ".braces");
        fields.add(pick(leaf + ".braces", "Kept square by", braces, BRACES, unsaid));
        if (braces.equals("rod")) {
            fields.add(size(leaf, "braces.diameter", "Rod"));
            fields.add(opened.field(leaf + ".braces.pretension", "Drawn up to", Unit.POUNDS, id));
            fields.add(opened.choice(leaf + ".braces.runs", "It runs from", id, RUNS));
        }
        return fields;
    }

    /** A number of tubes is shown by its word. */
    private String braces(String at) {
        return switch (kind(at, "")) {
            case "0" -> "none";
            case "1" -> "one";
            case "2" -> "two";
            default -> kind(at, "");
        };
    }

    private String kind(String at, String instead) {
        return opened.text()
                .value(at + ".kind")
                .or(() -> opened.text().value(at))
                .orElse(instead);
    }

    private Field pick(String at, String label, String kind, List<Choice> kinds) {
        return pick(at, label, kind, kinds, UNSAID);
    }

    private Field pick(String at, String label, String kind, List<Choice> kinds, String unsaid) {
        String problem = opened.typed().path().equals(at) ? opened.typed().problem() : "";
        boolean assumed = opened.text().value(at).isEmpty()
                && opened.text().value(at + ".kind").isEmpty();
        return new Field(at, label, kind, assumed, Unit.WORDS, kinds, id, assumed ? unsaid : "", problem);
    }

    private Field size(String at, String key, String label) {
        return opened.field(at + "." + key, label, Unit.INCHES, id);
    }

    private Field yes(String path, String label) {
        return opened.fields().choice(path, label, Unit.COUNT, id, YES_NO, "no");
    }

    private static List<Choice> pickets(Catalogue catalogue) {
        List<Choice> choices = new ArrayList<>();
        for (Section section : catalogue.sections())
            if (section.family().equals("picket") || section.depth().inches() <= 1)
                choices.add(new Choice(section.id(), section.name()));
        return choices;
    }
}
