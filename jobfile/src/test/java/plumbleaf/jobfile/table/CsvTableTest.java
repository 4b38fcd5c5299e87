package plumbleaf.jobfile.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;

class CsvTableTest {
    record Hinge(String id, double pinIn, boolean closes) {}

    private static CsvTable<Hinge> hinges(String text) {
        return CsvTable.read(
                "hinges.csv",
                text,
                List.of("id", "pin_in", "closes"),
                row -> new Hinge(row.needed("id"), row.number("pin_in", 0.25, 2), row.yes("closes")));
    }

    @Test
    void readsQuotedCellsRemarksAndAnyOrderOfColumns() {
        CsvTable<Hinge> table = hinges(
                "# made up\r\nclosed_by,pin_in,closes,id\r\n\"a \"\"spring\"\", steel\",0.625,yes,\"H,1\"\r\n\r\n");
        assertThat(table.errors()).isEmpty();
        assertThat(table.rows()).containsExactly(new Hinge("H,1", 0.625, true));
    }

    @Test
    void namesEveryBadCellAndKeepsTheGoodRows() {
        CsvTable<Hinge> table = hinges("id,pin_in,closes\nH1,9,maybe\nH2,0.75,no\n,x,yes\nH4,1\nH5,\"1,no\n");
        assertThat(table.rows()).containsExactly(new Hinge("H2", 0.75, false));
        assertThat(table.errors())
                .extracting(InputError::text)
                .containsExactly(
                        "hinges.csv:2: pin_in \"9\": this is not between 0.25 and 2; check the number and its unit",
                        "hinges.csv:2: closes \"maybe\": this is neither yes nor no; write yes or no",
                        "hinges.csv:4: id: this cell is empty; fill it in",
                        "hinges.csv:4: pin_in \"x\": this is not a number; write a plain number, like 2.375",
                        "hinges.csv:5: this row has 2 cells, and the heading 3; put text that holds a comma in quotes",
                        "hinges.csv:6: a quote is opened and never closed; close it");
    }

    @Test
    void aMissingHeadingIsNamedWithWhatItMayBe() {
        assertThat(hinges("id,pin_inch,closes\nH1,1,no\n").errors())
                .extracting(InputError::text)
                .containsExactly("hinges.csv:1: pin_in: this heading is missing; \"pin_inch\" may be it");
        assertThat(hinges("").errors())
                .extracting(InputError::text)
                .containsExactly("hinges.csv: the table is empty; start it with the headings id,pin_in,closes");
    }
}
