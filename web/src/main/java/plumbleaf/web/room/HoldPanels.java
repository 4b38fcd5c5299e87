package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Unit;

/** What holds each post of a gate: picked, measured, and for a post that stands already pulled by hand. */
final class HoldPanels {
    private static final String FIRST = "hingePost";
    private static final String LAST = "latchPost";
    private static final String REAR = "rearPost";

    private static final List<Choice> KINDS = List.of(
            new Choice("new-footing", "a new footing"),
            new Choice("driven", "driven into the ground"),
            new Choice("slab-plate", "a plate on a slab"),
            new Choice("core-socket", "a socket cored in concrete"),
            new Choice("wall-anchor", "anchors in a wall"),
            new Choice("existing", "a post that stands already"));

    private static final List<Choice> YES_NO = List.of(new Choice("false", "no"), new Choice("true", "yes"));

    private final Opened opened;
    private final String id;

    private HoldPanels(Opened opened, String id) {
        this.opened = opened;
        this.id = id;
    }

    static List<Panel> of(Opened opened, String gate, String id) {
        HoldPanels panels = new HoldPanels(opened, id);
        String kind = opened.text().value(gate + ".kind").orElse("swing");
        return switch (kind) {
            case "pair" ->
                List.of(
                        panels.post(gate + ".hingePost.support", FIRST, "What holds the left post"),
                        panels.post(gate + ".latchPost.support", LAST, "What holds the right post"));
            case "slide" ->
                List.of(
                        panels.post(gate + ".hingePost.support", FIRST, "What holds the front roller post"),
                        panels.post(gate + ".slide.rearPost.support", REAR, "What holds the rear roller post"),
                        panels.post(gate + ".latchPost.support", LAST, "What holds the receiver post"));
            default ->
                List.of(
                        panels.post(gate + ".hingePost.support", FIRST, "What holds the hinge post"),
                        panels.post(gate + ".latchPost.support", LAST, "What holds the latch post"));
        };
    }

    private Panel post(String at, String which, String heading) {
        String kind = opened.text()
                .value(at + ".kind")
                .or(() -> opened.text().value(at))
                .orElse("new-footing");
        List<Field> fields = new ArrayList<>();
        String problem = opened.typed().path().equals(at) ? opened.typed().problem() : "";
        boolean assumed = opened.text().value(at).isEmpty()
                && opened.text().value(at + ".kind").isEmpty();
        fields.add(new Field(at, "Held by", kind, assumed, Unit.WORDS, KINDS, id, assumed ? "assumed" : "", problem));
        fields.addAll(fields(at, kind));
        Panel panel =
                Panel.of(heading, id).withFields(fields).withNotes(notes(which)).withRows(rows(which));
        return kind.equals("existing") ? pulls(panel, at, which) : panel;
    }

    private List<Field> fields(String at, String kind) {
        List<Field> fields = new ArrayList<>();
        switch (kind) {
            case "driven" -> fields.add(size(at, "depth", "Driven"));
            case "slab-plate" -> {
                slab(at, fields);
                fields.add(size(at, "plate", "Base plate, side"));
                fields.add(size(at, "plateThickness", "Plate thickness"));
                fields.add(size(at, "anchorInset", "Anchor to plate edge"));
                anchors(at, fields);
            }
            case "core-socket" -> {
                fields.add(size(at, "depth", "Socket depth"));
                slab(at, fields);
            }
            case "wall-anchor" -> {
                fields.add(opened.choice(at + ".of", "Wall of", id, Choices.WALLS));
                fields.add(opened.field(at + ".perHinge", "Anchors a hinge", Unit.COUNT, id));
                anchors(at, fields);
                fields.add(size(at, "edgeDistance", "Anchors to the wall's edge"));
            }
            case "existing" -> {
                fields.add(opened.choice(at + ".feel", "Shaken, it", id, Choices.FEELS));
                fields.add(size(at, "girth", "Girth by tape"));
                fields.add(size(at, "depth", "Stands deep, if known"));
                fields.add(size(at, "plug", "Concrete wide, if known"));
            }
            default -> {
                fields.add(size(at, "bell.diameter", "Bell, across its foot"));
                fields.add(size(at, "bell.height", "Bell, height"));
                fields.add(yes(at + ".sleeve", "Sleeve in the frost zone"));
                fields.add(yes(at + ".slabAtGrade", "A slab holds it at grade"));
            }
        }
        return fields;
    }

    private void slab(String at, List<Field> fields) {
        fields.add(size(at, "slabThickness", "Slab thickness"));
        fields.add(size(at, "edgeDistance", "Post to the slab's edge"));
        fields.add(opened.field(at + ".slabLength", "Slab length, joint to joint", Unit.FEET, id));
        fields.add(opened.field(at + ".slabWidth", "Slab width", Unit.FEET, id));
        fields.add(opened.field(at + ".concrete", "Concrete", Unit.PSI, id));
    }

    private void anchors(String at, List<Field> fields) {
        fields.add(size(at, "anchorDiameter", "Anchor diameter"));
        fields.add(size(at, "anchorDepth", "Anchor depth"));
        fields.add(opened.field(at + ".anchorPull", "Pull, maker's sheet", Unit.POUNDS, id));
        fields.add(opened.field(at + ".anchorPush", "Sideways, maker's sheet", Unit.POUNDS, id));
    }

    private Field size(String at, String key, String label) {
        return opened.field(at + "." + key, label, Unit.INCHES, id);
    }

    private Field yes(String path, String label) {
        return opened.fields().choice(path, label, Unit.COUNT, id, YES_NO, "no");
    }

    /** One line a pull, its readings in the order they are taken. */
    private Panel pulls(Panel panel, String at, String which) {
        List<Panel.Strip> strips = new ArrayList<>();
        for (int i = 0; i < opened.text().count(at + ".tests"); i++) {
            String test = at + ".tests[" + i + "]";
            strips.add(new Panel.Strip(
                    "Pull " + (i + 1),
                    test,
                    "",
                    List.of(
                            opened.field(test + ".force", "Pull", Unit.POUNDS, id),
                            opened.field(test + ".at", "At height", Unit.INCHES, id),
                            opened.field(test + ".low", "Read low at", Unit.INCHES, id),
                            opened.field(test + ".movedLow", "Moved there", Unit.INCHES, id),
                            opened.field(test + ".high", "Read high at", Unit.INCHES, id),
                            opened.field(test + ".movedHigh", "Moved there", Unit.INCHES, id),
                            opened.field(test + ".leftOver", "Left over", Unit.INCHES, id))));
        }
        return panel.withStrips(strips)
                .withPresses(List.of(new Panel.Press("Add a pull test", "add-pull?gate=" + id + "&post=" + which)));
    }

    private List<PostDesign> designed(String which) {
        return opened.design()
                .flatMap(design ->
                        design.gate(id).flatMap(gate -> named(gate, which).flatMap(design::post)))
                .map(List::of)
                .orElse(List.of());
    }

    private static Optional<String> named(GateDesign gate, String which) {
        return switch (which) {
            case FIRST -> Optional.of(gate.hingePost());
            case REAR -> gate.slide().map(SlideDesign::rearPost);
            default -> Optional.of(gate.latchPost());
        };
    }

    private List<Row> rows(String which) {
        List<Row> rows = new ArrayList<>();
        for (PostDesign post : designed(which))
            for (HeldPost.Fact fact : post.held().facts())
                rows.add(new Row(post.id() + "." + fact.key(), capital(fact.words()), value(fact), "", post.id()));
        return rows;
    }

    private static String capital(String words) {
        return words.startsWith("n_h") || words.startsWith("k D")
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private String value(HeldPost.Fact fact) {
        return switch (fact.unit()) {
            case "in" -> opened.figures().length(Offset.inches(fact.value()));
            case "lb-in" -> opened.figures().moment(fact.value());
            case "rad" -> DecimalText.fixed(StrictMath.toDegrees(fact.value()), 2) + "\u00b0";
            case "lb/in3" -> DecimalText.fixed(fact.value(), 1) + " lb/in\u00b3";
            default -> DecimalText.whole(fact.value()) + " " + fact.unit();
        };
    }

    private List<Note> notes(String which) {
        List<String> parts = designed(which).stream().map(PostDesign::id).toList();
        List<Finding> own = opened.findings().stream()
                .filter(finding -> parts.contains(finding.part()))
                .filter(finding -> AREAS.stream().anyMatch(finding.id()::startsWith))
                .toList();
        return Notes.about(own, parts);
    }

    private static final List<String> AREAS =
            List.of("plate.", "anchor.", "slab.", "socket.", "wall.", "existing.", "support.");
}
