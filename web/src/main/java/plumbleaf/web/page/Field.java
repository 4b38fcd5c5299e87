package plumbleaf.web.page;

import java.util.List;

/**
 * Something one can change.
 *
 * @param path    where it stands in the job file: {@code gates[G1].opening}
 * @param label   a noun the crew says aloud
 * @param value   what the file says, or what is assumed, or what was typed and refused
 * @param assumed nobody has said it yet
 * @param choices what it may be; empty for a text
 * @param of      the thing it belongs to: {@code G1}; may be empty
 * @param note    what it rests on, or what an empty field means; may be empty
 * @param problem why what was typed was refused, and the cure; empty when it stands
 */
public record Field(
        String path,
        String label,
        String value,
        boolean assumed,
        Unit unit,
        List<Choice> choices,
        String of,
        String note,
        String problem) {
    public Field {
        choices = List.copyOf(choices);
    }

    /** Unique on a page, and usable as an HTML id. */
    public String key() {
        return HtmlId.of("f", path);
    }

    /** Whether the value is none of the choices, so that the list needs one more line for it. */
    public boolean unlisted() {
        return choices.stream().noneMatch(choice -> choice.value().equals(value));
    }

    public Field withNote(String words) {
        return new Field(path, label, value, assumed, unit, choices, of, words, problem);
    }

    public Field withLabel(String words) {
        return new Field(path, words, value, assumed, unit, choices, of, note, problem);
    }
}
