package plumbleaf.web.page;

import java.util.List;

/**
 * A heading with what belongs under it. Anything may be empty.
 *
 * @param of the thing the panel is about
 * @param waiting how far something is that is worked out behind the page: the page looks again by itself; empty where nothing is
 */
public record Panel(
        String heading,
        String of,
        List<Note> notes,
        List<Field> fields,
        List<Strip> strips,
        List<Bar> bars,
        List<Row> rows,
        List<Table> tables,
        List<Press> presses,
        List<Entry> entries,
        List<Fold> folds,
        String waiting) {
    public Panel {
        entries = List.copyOf(entries);
        folds = List.copyOf(folds);
        notes = List.copyOf(notes);
        fields = List.copyOf(fields);
        strips = List.copyOf(strips);
        bars = List.copyOf(bars);
        rows = List.copyOf(rows);
        tables = List.copyOf(tables);
        presses = List.copyOf(presses);
    }

    public static Panel of(String heading, String of) {
        return new Panel(
                heading, of, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), "");
    }

    public Panel withNotes(List<Note> more) {
        return new Panel(heading, of, more, fields, strips, bars, rows, tables, presses, entries, folds, waiting);
    }

    public Panel withFields(List<Field> more) {
        return new Panel(heading, of, notes, more, strips, bars, rows, tables, presses, entries, folds, waiting);
    }

    public Panel withStrips(List<Strip> more) {
        return new Panel(heading, of, notes, fields, more, bars, rows, tables, presses, entries, folds, waiting);
    }

    public Panel withBars(List<Bar> more) {
        return new Panel(heading, of, notes, fields, strips, more, rows, tables, presses, entries, folds, waiting);
    }

    public Panel withRows(List<Row> more) {
        return new Panel(heading, of, notes, fields, strips, bars, more, tables, presses, entries, folds, waiting);
    }

    public Panel withTables(List<Table> more) {
        return new Panel(heading, of, notes, fields, strips, bars, rows, more, presses, entries, folds, waiting);
    }

    public Panel withPresses(List<Press> more) {
        return new Panel(heading, of, notes, fields, strips, bars, rows, tables, more, entries, folds, waiting);
    }

    public Panel withEntries(List<Entry> more) {
        return new Panel(heading, of, notes, fields, strips, bars, rows, tables, presses, more, folds, waiting);
    }

    public Panel withWaiting(String more) {
        return new Panel(heading, of, notes, fields, strips, bars, rows, tables, presses, entries, folds, more);
    }

    public Panel withFolds(List<Fold> more) {
        return new Panel(heading, of, notes, fields, strips, bars, rows, tables, presses, entries, more, waiting);
    }

    /**
     * A number that opens into what it is made of.
     *
     * @param of    what the picture rings with it
     * @param key   names the number for as long as the page lives
     * @param about how it is come by; may be empty
     * @param lines what it is made of; empty for a number that is one step
     */
    public record Fold(String of, String key, String words, String value, String about, List<Table> lines) {
        public Fold {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Something that one press does.
     *
     * @param address below the room's own: {@code add-shot}
     */
    public record Press(String words, String address) {}

    /**
     * Several small fields of one thing on one line.
     *
     * @param of   the thing: {@code S4}
     * @param path of the whole thing in the job, for taking it out
     * @param note what else is to be said of it; may be empty
     */
    public record Strip(String of, String path, String note, List<Field> fields) {
        private static final int SHORT_NAME = 4;
        private static final int ON_ONE_LINE = 3;

        public Strip {
            fields = List.copyOf(fields);
        }

        /** Whether its name and fields need more than one line. */
        public boolean isTall() {
            return of.length() > SHORT_NAME || fields.size() > ON_ONE_LINE;
        }
    }
}
