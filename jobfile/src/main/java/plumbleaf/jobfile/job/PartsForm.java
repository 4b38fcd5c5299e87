package plumbleaf.jobfile.job;

import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.jobfile.catalogue.OwnPartTables;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.TextKind;

/** Tables of the user's own parts within a job, row by row as they were given. */
final class PartsForm {
    private PartsForm() {}

    static OwnParts read(Fields root, Catalogue known) {
        OwnParts parts = OwnParts.NONE;
        for (Fields table : root.objects("parts")) {
            String file = table.needed("file", TextKind.WORDS, "parts.csv");
            List<String> rows = table.values("rows", TextKind.WORDS);
            OwnParts.Table given = new OwnParts.Table(file, rows);
            OwnPartTables.Answer answer = OwnPartTables.isStyles(given)
                    ? OwnPartTables.styles(given, known.with(parts))
                    : OwnPartTables.read(given);
            for (InputError error : answer.errors()) table.refuse("rows", inTable(file, error), error.cure());
            parts = parts.plus(answer.parts());
        }
        return parts;
    }

    private static String inTable(String file, InputError error) {
        String place = error.line() > 0 ? ", row " + error.line() : "";
        String cell = error.field().isEmpty() ? "" : ", " + error.field();
        String value = error.value().isEmpty() ? "" : " \"" + error.value() + "\"";
        return file + place + cell + value + ": " + error.problem();
    }

    static void write(OwnParts parts, Entries out) {
        out.objects(
                "parts",
                parts.tables(),
                (table, entries) -> entries.words("file", table.file()).values("rows", TextKind.WORDS, table.rows()));
    }
}
