package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;

/** Makes fields from a job's text: said values as they stand, the rest empty, and what was typed and refused as it was typed. */
final class FieldMaker {
    private final DocumentText text;
    private final Typed typed;

    FieldMaker(DocumentText text, Typed typed) {
        this.text = text;
        this.typed = typed;
    }

    Field text(String path, String label, Unit unit, String of) {
        return choice(path, label, unit, of, List.of());
    }

    Field choice(String path, String label, Unit unit, String of, List<Choice> choices) {
        if (path.equals(typed.path()))
            return new Field(path, label, typed.value(), false, unit, choices, of, "", typed.problem());
        return text.value(path)
                .map(said -> new Field(path, label, said, false, unit, choices, of, "", ""))
                .orElseGet(() -> new Field(path, label, "", true, unit, choices, of, "", ""));
    }
}
