package plumbleaf.web.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;
import plumbleaf.web.room.DocumentText;

/** A fence as one arrives at it: a draft with one run of one leg, of which everything may still be open. */
final class NewFence {
    private static final String DISPLAY = "display";
    private static final String LENGTH = "runs[0].legs[0].length";
    private static final String STYLE = "runs[0].style";
    private static final String HEIGHT = "runs[0].infill";
    private static final List<String> WORDS =
            List.of("title", DISPLAY, "site.customer", "site.phone", "site.address", STYLE);

    private final Map<String, String> typed;
    private final List<Choice> styles;

    NewFence(Map<String, String> typed, List<Choice> styles) {
        this.typed = new LinkedHashMap<>(typed);
        this.styles = List.copyOf(styles);
    }

    List<Field> fields(List<InputError> errors) {
        List<Choice> units = List.of(new Choice("us", "feet and inches"), new Choice("metric", "millimeters"));
        return List.of(
                field("title", "Name of the job", Unit.WORDS, List.of(), "", errors),
                field(DISPLAY, "Measured in", Unit.WORDS, units, "empty: feet and inches", errors),
                field("site.customer", "Customer", Unit.WORDS, List.of(), "", errors),
                field("site.phone", "Phone", Unit.WORDS, List.of(), "", errors),
                field("site.address", "Address", Unit.WORDS, List.of(), "", errors),
                field(
                        LENGTH,
                        "First leg, long",
                        Unit.FEET,
                        List.of(),
                        "from the first post to the first corner",
                        errors),
                field(STYLE, "Style", Unit.WORDS, styles, "", errors),
                field(HEIGHT, "Height", Unit.INCHES, List.of(), "empty: 6 ft", errors));
    }

    /** The job file that these answers make. */
    String document() {
        DocumentText text =
                DocumentText.of("{\n  \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"New fence\","
                        + " \"display\": \"us\", \"draft\": true,\n"
                        + "  \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\","
                        + " \"note\": \"where the fence begins\" } ] },\n"
                        + "  \"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"bearing\": \"90 deg\" } ] } ]\n}\n");
        for (String path : WORDS) if (!said(path).isEmpty()) text = text.with(path, DocumentText.quoted(said(path)));
        for (String path : List.of(LENGTH, HEIGHT)) {
            Unit unit = path.equals(LENGTH) ? Unit.FEET : Unit.INCHES;
            if (!said(path).isEmpty())
                text = text.with(path, DocumentText.quoted(unit.in(units()).complete(said(path))));
        }
        return text.text();
    }

    private DisplayUnits units() {
        return said(DISPLAY).equals("metric") ? DisplayUnits.METRIC : DisplayUnits.US;
    }

    private Field field(
            String path, String label, Unit unit, List<Choice> choices, String note, List<InputError> errors) {
        String problem = errors.stream()
                .filter(error -> error.field().equals(path))
                .map(error -> error.problem() + (error.cure().isEmpty() ? "." : "; " + error.cure() + "."))
                .findFirst()
                .orElse("");
        return new Field(path, label, said(path), false, unit, choices, "", note, problem);
    }

    private String said(String path) {
        return typed.getOrDefault(path, "").strip();
    }
}
