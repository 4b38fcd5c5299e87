package plumbleaf.web.room;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;

/** Makes fields from a job: said values as they stand, assumed ones as such, and what was typed and refused as it was typed. */
final class FieldMaker {
    private final DocumentText text;
    private final Typed typed;
    private final DisplayUnits units;
    private final Map<String, Assumption> assumed = new LinkedHashMap<>();

    FieldMaker(DocumentText text, List<Assumption> assumptions, Typed typed) {
        this.text = text;
        this.units = text.units();
        this.typed = typed;
        for (Assumption assumption : assumptions) assumed.put(assumption.field(), assumption);
    }

    Field text(String path, String label, Unit unit, String of) {
        return choice(path, label, unit, of, List.of());
    }

    Field choice(String path, String label, Unit unit, String of, List<Choice> choices) {
        return choice(path, label, unit, of, choices, "nobody has said it yet");
    }

    /** @param ifOpen what an empty field means where nothing is assumed for it */
    Field choice(String path, String label, Unit unit, String of, List<Choice> choices, String ifOpen) {
        Unit in = unit.in(units);
        if (path.equals(typed.path()))
            return new Field(path, label, typed.value(), false, in, choices, of, "", typed.problem());
        if (text.value(path).isPresent())
            return new Field(path, label, unit.shown(text.value(path).get(), units), false, in, choices, of, "", "");
        Assumption taken = assumed.get(path);
        if (taken != null)
            return new Field(
                    path,
                    label,
                    unit.shown(taken.value(), units),
                    true,
                    in,
                    choices,
                    of,
                    "assumed: " + taken.why(),
                    "");
        return new Field(path, label, "", true, in, choices, of, ifOpen, "");
    }

    /** Whether something is assumed there. */
    boolean isAssumed(String path) {
        return assumed.containsKey(path);
    }
}
