package plumbleaf.web.page;

import java.util.List;

/**
 * A heading with what belongs under it. Anything may be empty.
 *
 * @param of the thing the panel is about
 */
public record Panel(
        String heading,
        String of,
        List<Note> notes,
        List<Field> fields,
        List<Bar> bars,
        List<Row> rows,
        List<Table> tables) {
    public Panel {
        notes = List.copyOf(notes);
        fields = List.copyOf(fields);
        bars = List.copyOf(bars);
        rows = List.copyOf(rows);
        tables = List.copyOf(tables);
    }

    public static Panel of(String heading, String of) {
        return new Panel(heading, of, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public Panel withNotes(List<Note> more) {
        return new Panel(heading, of, more, fields, bars, rows, tables);
    }

    public Panel withFields(List<Field> more) {
        return new Panel(heading, of, notes, more, bars, rows, tables);
    }

    public Panel withBars(List<Bar> more) {
        return new Panel(heading, of, notes, fields, more, rows, tables);
    }

    public Panel withRows(List<Row> more) {
        return new Panel(heading, of, notes, fields, bars, more, tables);
    }

    public Panel withTables(List<Table> more) {
        return new Panel(heading, of, notes, fields, bars, rows, more);
    }
}
