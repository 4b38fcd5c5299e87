package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.TradeNames;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/**
 * The panels of a metric job with their words in metric: the same door as findings and papers go through. What somebody typed, what may
 * be picked, and names by which things are sold stay as they are.
 */
final class InMetric {
    private final MetricWords words;

    private InMetric(MetricWords words) {
        this.words = words;
    }

    static List<Panel> of(List<Panel> panels, Opened opened) {
        if (opened.job().map(Job::display).orElse(DisplayUnits.US) == DisplayUnits.US) return panels;
        MetricWords words = opened.design().map(TradeNames::metric).orElseGet(() -> MetricWords.keeping(List.of()));
        InMetric door = new InMetric(words);
        return panels.stream().map(door::panel).toList();
    }

    private Panel panel(Panel is) {
        return new Panel(
                words.of(is.heading()),
                is.of(),
                is.notes().stream().map(this::note).toList(),
                fields(is.fields()),
                is.strips().stream()
                        .map(strip -> new Panel.Strip(strip.of(), strip.path(), strip.note(), fields(strip.fields())))
                        .toList(),
                is.bars(),
                is.rows().stream().map(this::row).toList(),
                tables(is.tables()),
                is.presses().stream()
                        .map(press -> new Panel.Press(words.of(press.words()), press.address()))
                        .toList(),
                is.entries().stream().map(this::entry).toList(),
                is.folds().stream()
                        .map(fold -> new Panel.Fold(
                                fold.of(),
                                fold.key(),
                                words.of(fold.words()),
                                words.of(fold.value()),
                                words.of(fold.about()),
                                tables(fold.lines())))
                        .toList(),
                is.waiting());
    }

    private Note note(Note is) {
        List<Note.Press> presses = new ArrayList<>();
        for (Note.Press press : is.presses())
            presses.add(new Note.Press(words.of(press.words()), words.of(press.gain()), press.edit()));
        return new Note(
                is.severity(),
                is.words(),
                is.part(),
                words.of(is.message()),
                words.of(is.basis()),
                is.ratio(),
                presses);
    }

    private List<Field> fields(List<Field> fields) {
        return fields.stream()
                .map(is -> is.withLabel(words.of(is.label())).withNote(words.of(is.note())))
                .toList();
    }

    private Row row(Row is) {
        return new Row(is.key(), words.of(is.label()), words.of(is.value()), words.of(is.note()), is.of());
    }

    private List<Table> tables(List<Table> tables) {
        return tables.stream()
                .map(is -> new Table(
                        words.of(is.caption()),
                        is.heads().stream().map(words::of).toList(),
                        is.lines().stream()
                                .map(line -> new Table.Line(
                                        line.of(),
                                        line.cells().stream().map(words::of).toList()))
                                .toList()))
                .toList();
    }

    private Entry entry(Entry is) {
        return new Entry(
                is.list(),
                words.of(is.heading()),
                is.words(),
                is.blanks().stream()
                        .map(blank -> new Entry.Blank(
                                blank.key(),
                                words.of(blank.label()),
                                blank.kind(),
                                blank.value(),
                                words.of(blank.hint()),
                                blank.length(),
                                blank.choices()))
                        .toList(),
                is.asked(),
                is.hands(),
                is.problem());
    }
}
