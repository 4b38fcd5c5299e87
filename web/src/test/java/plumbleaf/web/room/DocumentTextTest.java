package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** One value changes, the rest of the text stays as it was written. */
class DocumentTextTest {
    private static final String TEXT = """
            { "title": "Yard",  "version": 1,
              "gates": [
                { "id": "G1", "opening": "4'", "leaf": { "gap": "3\\"" } },
                { "id": "G2", "opening": "3'" } ],
              "notes": [] }
            """;

    private static DocumentText text() {
        return DocumentText.of(TEXT);
    }

    @Test
    void readsAValueByPlaceAndById() {
        assertThat(text().value("gates[0].leaf.gap")).contains("3\"");
        assertThat(text().value("gates[G2].opening")).contains("3'");
        assertThat(text().value("version")).contains("1");
        assertThat(text().value("gates[7].opening")).isEmpty();
    }

    @Test
    void replacesOneValueAndNothingElse() {
        String changed = text().with("gates[G1].opening", "\"4' 6\\\"\"").text();
        assertThat(changed).isEqualTo(TEXT.replace("\"opening\": \"4'\"", "\"opening\": \"4' 6\\\"\""));
    }

    @Test
    void addsAMissingValueBesideItsNeighbours() {
        assertThat(text().with("gates[0].leaf.rise", "\"1\\\"\"").text())
                .isEqualTo(TEXT.replace("{ \"gap\": \"3\\\"\" }", "{ \"gap\": \"3\\\"\", \"rise\": \"1\\\"\" }"));
        assertThat(text().with("builds.G1.depth", "\"36\\\"\"").text())
                .isEqualTo(TEXT.replace(
                        "\"notes\": []", "\"notes\": [],\n  \"builds\": { \"G1\": { \"depth\": \"36\\\"\" } }"));
    }

    @Test
    void takesAValueOutWithItsComma() {
        assertThat(text().without("gates[0].opening").text()).isEqualTo(TEXT.replace(", \"opening\": \"4'\"", ""));
        assertThat(text().without("title").text()).isEqualTo(TEXT.replace("\"title\": \"Yard\",  ", ""));
        assertThat(text().without("gates[1]").text())
                .isEqualTo(TEXT.replace(",\n    { \"id\": \"G2\", \"opening\": \"3'\" }", ""));
        assertThat(text().without("nothing.here").text()).isEqualTo(TEXT);
    }

    @Test
    void appendsToAList() {
        assertThat(text().appended("gates", "{ \"id\": \"G3\" }").value("gates[2].id"))
                .contains("G3");
        assertThat(text().appended("notes", "\"Keep the maple.\"").value("notes[0]"))
                .contains("Keep the maple.");
    }

    @Test
    void refusesAPathThatIsNone() {
        assertThatThrownBy(() -> text().with("gates[9].opening", "1")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> text().value("gates[")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> text().value("")).isInstanceOf(IllegalArgumentException.class);
    }
}
