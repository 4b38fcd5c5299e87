package plumbleaf.jobfile.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SafeCsvTest {
    private static final List<String> FORMULAS =
            List.of("=1+1", "+rack", "-side", "@home", "\tx", "=HYPERLINK(\"x\",\"y\")", "-1+1", " =2", "+1", "-");

    @Test
    void aWordThatWouldBeAFormulaIsDisarmedAndReadBackAsItWas() {
        for (String word : FORMULAS) {
            assertThat(SafeCsv.disarmed(word)).isEqualTo("'" + word);
            if (word.charAt(0) != ' ')
                assertThat(SafeCsv.armed(SafeCsv.disarmed(word))).isEqualTo(word);
        }
    }

    @Test
    void numbersAndOtherWordsStay() {
        for (String word : List.of("-12.5", "0", "-.5", "3.", "", "2x2", "a=b", "'tis", "1-1"))
            assertThat(SafeCsv.disarmed(word)).isEqualTo(word);
    }

    @Test
    void everyRowIsDisarmedWhoeverWritesIt() {
        String line = CsvEdit.line(FORMULAS);
        assertThat(CsvLines.of(line).get(0).cells()).allMatch(cell -> cell.startsWith("'"));
        CsvTable<String> read =
                CsvTable.read("t", "mark\n" + CsvEdit.line(List.of("=1,2")), List.of("mark"), row -> row.text("mark"));
        assertThat(read.rows()).containsExactly("=1,2");
    }

    @Test
    void aTableOfOthersLeavesDisarmedAndOtherwiseAsItStood() {
        String table = "# kept, as it is\r\nitem,price\r\nT2,-1.50\r\n\"a, b\",\"say \"\"=x\"\"\"\r\n";
        assertThat(SafeCsv.leaving(table)).isEqualTo(table);
        assertThat(SafeCsv.leaving("# by,=1+1\nitem,price\n=2,-1.50\n\"=a,b\",\"x\n=y\"\n"))
                .isEqualTo("# by,'=1+1\nitem,price\n'=2,-1.50\n\"'=a,b\",\"x\n=y\"\n");
        assertThat(SafeCsv.leaving("a,\"=never closed\nb,=c\rd\r=e")).isEqualTo("a,\"'=never closed\nb,'=c\rd\r'=e");
        String once = SafeCsv.leaving("=1,\"+2+3\"\n");
        assertThat(SafeCsv.leaving(once)).isEqualTo(once).isEqualTo("'=1,\"'+2+3\"\n");
    }
}
