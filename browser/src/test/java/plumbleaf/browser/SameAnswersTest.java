package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.browser.PageDrawings.Shown;
import plumbleaf.browser.SeededJobs.Named;

/** The engine in a browser says what the engine on the server says, of every example and of two hundred jobs made from them. */
@Tag("browser")
class SameAnswersTest {
    private static final int SEEDED = 200;

    private static EnginePage page;

    /** A bench of the same kind on this side; another one for each job, so that nothing is remembered here while everything is there. */
    private static PageBench bench() {
        return Books.bench();
    }

    @BeforeAll
    static void open() throws IOException {
        page = EnginePage.open();
        assertThat(page.ask("stock", Books.kit(Books.OF_THE_EXAMPLES, Map.of())))
                .isEmpty();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    @Test
    void everyExampleHasTheSameResultDrawingsAndCrewSheet() throws IOException {
        List<String> differences = new ArrayList<>();
        for (Named job : SeededJobs.allExamples()) {
            PageBench here = bench();
            compare(job, "result", here.design(job.text()), page.ask("design", job.text()), differences);
            if (!here.crewSheet(job.text()).equals(page.ask("crewSheet", job.text())))
                differences.add(job.name() + ": the crew sheet");
            compare(
                    job,
                    "drawings",
                    unkeyed(here.drawings(job.text(), List.of(), Shown.NOTHING)),
                    unkeyed(page.ask("drawings", job.text(), "", "")),
                    differences);
            compare(
                    job,
                    "laid out",
                    unkeyed(here.laid(job.text(), List.of(), Shown.NOTHING)),
                    unkeyed(page.ask("laid", job.text(), "", "", "")),
                    differences);
        }
        assertThat(differences).isEmpty();
    }

    @Test
    void twoHundredSeededJobsHaveTheSameResult() throws IOException {
        List<String> differences = new ArrayList<>();
        int designed = 0;
        for (Named job : SeededJobs.seeded(SEEDED)) {
            String here = bench().design(job.text());
            if (here.contains("\"verdict\"")) designed++;
            compare(job, "result", here, page.ask("design", job.text()), differences);
        }
        assertThat(differences).isEmpty();
        assertThat(designed).as("jobs that were no jobs would prove nothing").isGreaterThan(SEEDED * 3 / 4);
    }

    @Test
    void aWrongFileIsRefusedInTheSameWords() {
        String wrong = "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rnus\": [], \"date\": \"tomorrow\" }";
        assertThat(page.ask("design", wrong)).isEqualTo(bench().design(wrong)).contains("\"errors\"", "rnus");
    }

    /** A drawing's key is told by hash codes, which are the machine's own. */
    private static String unkeyed(String json) {
        return json.replaceAll("\"key\": \"[^\"]*\"", "\"key\": \"\"");
    }

    private static void compare(Named job, String what, String here, String there, List<String> differences) {
        SameText.difference(here, there).ifPresent(words -> differences.add(job.name() + ", " + what + ": " + words));
    }
}
