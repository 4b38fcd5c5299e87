package plumbleaf.jobfile.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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

    /** What tells a job from another of its title. A yard counted by hand may leave the column out. */
    private static final String JOB_MARK = "job_mark";

    /** As the file is written. */
    public static final List<String> HEADINGS = List.copyOf(headings());

    private static final int MOST = 100_000;

    private YardFile() {}

    private static List<String> headings() {
        List<String> headings = new ArrayList<>(COLUMNS);
        headings.add(JOB_MARK);
        return headings;
    }

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
        YardRow.State state =
                row.oneOf("state", List.of("here", "out")).equals("out") ? YardRow.State.OUT : YardRow.State.HERE;
        Taker job = new Taker(row.text("job"), row.has(JOB_MARK) ? row.text(JOB_MARK) : "");
        if (state == YardRow.State.HERE && !marks.add(mark))
            row.error("mark", "two things in the yard have this mark", "mark one of them anew");
        if (state == YardRow.State.OUT && job.isNobody())
            row.error("job", "it is out, but not with which job", "name the job, or write here");
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
                job);
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
        SafeCsv csv = new SafeCsv()
                .remark(
                        "The yard: bars, offcuts and goods on hand, and what is out with jobs. kind bar, offcut or goods;"
                                + " state here or out.")
                .row(HEADINGS);
        for (YardRow row : yard.rows()) {
            if (row.count() == 0 && row.job().isNobody() && !isOut(yard, row.mark())) continue;
            boolean goods = row.kind() == YardRow.Kind.GOODS;
            csv.row(
                    row.mark(),
                    row.item(),
                    row.kind().key(),
                    goods ? "" : LengthText.exact(row.length().inches()),
                    Integer.toString(row.count()),
                    goods ? DecimalText.upTo(row.contents(), 4) : "",
                    goods ? row.of().key() : "",
                    row.state().key(),
                    row.job().title(),
                    row.job().mark());
        }
        return csv.text();
    }

    /** A row used up stays while a job may give it back. */
    private static boolean isOut(Yard yard, String mark) {
        return yard.rows().stream()
                .anyMatch(row -> row.state() == YardRow.State.OUT && row.mark().equals(mark));
    }
}
