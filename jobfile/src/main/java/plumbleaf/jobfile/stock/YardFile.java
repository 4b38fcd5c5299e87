package plumbleaf.jobfile.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;
import plumbleaf.jobfile.table.SafeCsv;

/** The yard's file: one row for each mark, lengths as people write them. */
public final class YardFile {
    private static final List<String> COLUMNS =
            List.of("mark", "item", "kind", "length", "count", "contents", "of", "state", "job");

    /** What tells a job from another of its title. A yard counted by hand may leave the column out, and one without jobs has none. */
    private static final String JOB_MARK = "job_mark";

    /** The day a job needs what is kept for it; only where something is. */
    private static final String NEEDED_BY = "needed_by";

    private static final int MOST = 100_000;

    private YardFile() {}

    /**
     * A yard, or what is wrong with its file.
     *
     * @param yard without the bad rows
     */
    public record Answer(Yard yard, List<InputError> errors) {
        public Answer {
            errors = List.copyOf(errors);
        }
    }

    public static Answer read(String file, String text) {
        Set<String> marks = new LinkedHashSet<>();
        CsvTable<YardRow> table = CsvTable.read(file, text, COLUMNS, row -> row(row, marks));
        return new Answer(new Yard(table.rows()), table.errors());
    }

    private static YardRow row(CsvRow row, Set<String> marks) {
        String mark = row.needed("mark");
        YardRow.Kind kind = kind(row.oneOf("kind", List.of("bar", "offcut", "goods")));
        YardRow.State state = state(row.oneOf("state", List.of("here", "kept", "out")));
        Taker job = new Taker(row.text("job"), row.has(JOB_MARK) ? row.text(JOB_MARK) : "");
        if (state != YardRow.State.OUT && !marks.add(mark))
            row.error("mark", "two things in the yard have this mark", "mark one of them anew");
        if (state == YardRow.State.OUT && job.isNobody())
            row.error("job", "it is out, but not with which job", "name the job, or write here");
        if (state == YardRow.State.KEPT && job.isNobody())
            row.error("job", "it is kept, but not for which job", "name the job, or write here");
        boolean goods = kind == YardRow.Kind.GOODS;
        Length length = goods ? Length.ZERO : row.read("length", LengthText::length, Length.inches(1));
        if (!goods && length.isZero()) row.error("length", "a bar has a length", "write it like 6' 2\"");
        double count = row.number("count", 0, MOST);
        if (count != Math.rint(count)) row.error("count", "this is not a whole number", "write a whole number");
        return new YardRow(
                mark,
                row.needed("item"),
                kind,
                length,
                (int) Math.rint(count),
                goods ? row.number("contents", 0.0001, MOST) : 1,
                goods ? row.read("of", YardFile::unit, NetUnit.PIECES) : NetUnit.FEET,
                state,
                job,
                row.has(NEEDED_BY) ? row.text(NEEDED_BY) : "");
    }

    private static YardRow.State state(String key) {
        for (YardRow.State state : YardRow.State.values()) {
            if (state.key().equals(key)) return state;
        }
        return YardRow.State.HERE;
    }

    private static YardRow.Kind kind(String key) {
        for (YardRow.Kind kind : YardRow.Kind.values()) {
            if (kind.key().equals(key)) return kind;
        }
        return YardRow.Kind.BAR;
    }

    private static Parsed<NetUnit> unit(String text) {
        return NetUnit.of(text)
                .<Parsed<NetUnit>>map(Parsed.Read::new)
                .orElseGet(() ->
                        new Parsed.Refused<>("nothing is measured in this", "write pieces, ft, ft2, ft3, lb or gal"));
    }

    public static String write(Yard yard) {
        List<YardRow> rows =
                yard.rows().stream().filter(row -> isWorthARow(yard, row)).toList();
        boolean marked = rows.stream().anyMatch(row -> !row.job().mark().isEmpty());
        boolean dated = rows.stream().anyMatch(row -> !row.neededBy().isEmpty());
        List<String> headings = new ArrayList<>(COLUMNS);
        if (marked) headings.add(JOB_MARK);
        if (dated) headings.add(NEEDED_BY);
        SafeCsv csv = new SafeCsv()
                .remark(
                        "The yard: bars, offcuts and goods on hand, what is kept for a job, and what is out with one. kind"
                                + " bar, offcut or goods; state here, kept or out.")
                .row(headings);
        for (YardRow row : rows) {
            boolean goods = row.kind() == YardRow.Kind.GOODS;
            List<String> cells = new ArrayList<>(List.of(
                    row.mark(),
                    row.item(),
                    row.kind().key(),
                    goods ? "" : LengthText.exact(row.length().inches()),
                    Integer.toString(row.count()),
                    goods ? DecimalText.upTo(row.contents(), 4) : "",
                    goods ? row.of().key() : "",
                    row.state().key(),
                    row.job().title()));
            if (marked) cells.add(row.job().mark());
            if (dated) cells.add(row.neededBy());
            csv.row(cells);
        }
        return csv.text();
    }

    /** A row used up stays while a job may give it back. */
    private static boolean isWorthARow(Yard yard, YardRow row) {
        return row.count() > 0
                || isOffcutOfAJob(row)
                || yard.rows().stream()
                        .anyMatch(other -> other.isOut() && other.mark().equals(row.mark()));
    }

    /** One that is gone stands in the way of giving back. */
    private static boolean isOffcutOfAJob(YardRow row) {
        return row.kind() == YardRow.Kind.OFFCUT && !row.job().isNobody();
    }

    /**
     * A yard with one thing more.
     *
     * @param typed cells by their heading; what is left out is empty
     */
    public static Answer add(Yard yard, Map<String, String> typed) {
        String row = new SafeCsv()
                .row(COLUMNS)
                .row(COLUMNS.stream()
                        .map(column -> column.equals("state")
                                ? YardRow.State.HERE.key()
                                : typed.getOrDefault(column, "").strip())
                        .toList())
                .text();
        Set<String> marks = new LinkedHashSet<>();
        for (YardRow there : yard.rows()) {
            if (!there.isOut()) marks.add(there.mark());
        }
        CsvTable<YardRow> table = CsvTable.read("what is counted in", row, COLUMNS, cells -> row(cells, marks));
        List<YardRow> rows = new ArrayList<>(yard.rows());
        rows.addAll(table.rows());
        return new Answer(new Yard(rows), table.errors());
    }
}
