package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A point file pasted in the room Ground: what is wrong with it is told line by line, all of it, in the words of that page. */
class PointPasteTest {
    private static final DocumentText JOB = DocumentText.of(
            "{ \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\" } ] } }");

    private static String refused(String points) {
        return PointPaste.into(JOB, "Kiln yard", Map.of("text", points))
                .match(fine -> fine.what(), refused -> refused.problem());
    }

    @Test
    void everyBadLineIsToldAtOnce() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 60; i++) lines.add((100 + i) + ",50" + i + ",x" + i + ",100,g");
        String said = refused(String.join("\n", lines));
        for (int i = 0; i < 60; i++) assertThat(said).contains("Line " + (i + 1) + ": easting \"x" + i + "\"");
    }

    @Test
    void whatTheFileWasReadAsIsSaidInTheWordsOfThePage() {
        String said = refused("101,5000,1000,100\n102,5010,1000,\n");
        assertThat(said)
                .contains("where easting comes first write PENZ as the order of columns")
                .contains("where they are not say m, us-ft, in or mm")
                .doesNotContain("--");
    }

    @Test
    void namesThatAreTakenAreToldTogether() {
        String said = refused("1,5000,1000,100\n102,5010,1000,100.5\n");
        assertThat(said).contains("There are shots of these names already: S1. Give the points other numbers.");
    }
}
