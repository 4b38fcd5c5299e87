package plumbleaf.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.ResultFile;

/** Over walks of edits of every example, what is worked out again only where an edit touches it is, letter for letter, what comes of working out everything. Seeded. */
@Tag("slow")
class RedesignTest {
    private static final Standards STANDARDS = StandardTables.load().standards();

    /** A mile takes a minute an edit where everything is worked out anew. */
    private static final String LONG = "thornmere-mile.json";

    private static final int EDITS = 8;

    @ParameterizedTest
    @CsvSource({"kiln-yard.json, 60", "nursery-lane-settled.json, 25", "gannet-spit.json, 20", "heron-walk.json, 20"})
    void aLongWalkIsTheDesign(String example, int edits) {
        redesigned(example, edits);
    }

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json") && !name.equals(LONG))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsTheDesign(String example) {
        redesigned(example, EDITS);
    }

    private static void redesigned(String example, int edits) {
        Redesigner redesigner = new Redesigner(Yards.CATALOGUE, STANDARDS, new ProvenCutPlanner());
        Edits walk = new Edits(Path.of("..", "examples", example), 11);
        for (int i = 0; i < edits; i++) {
            Job job = walk.next();
            PriceBook book = PriceBooks.of(job).orElseThrow();
            Design again = redesigner.of(job, book);
            Design whole = Designs.of(job, Yards.CATALOGUE, STANDARDS, book, new ProvenCutPlanner());
            assertThat(ResultFile.write(again)).as("edit " + i).isEqualTo(ResultFile.write(whole));
            assertThat(asRead(again.findings())).isEqualTo(asRead(whole.findings()));
            assertThat(again.posts()).isEqualTo(whole.posts());
        }
    }

    /** Whatever says it: a metric job's findings are said again in other units. */
    private static List<List<Object>> asRead(List<Finding> findings) {
        return findings.stream()
                .map(is -> List.<Object>of(
                        is.id(), is.severity(), is.part(), is.message(), is.basis(), is.measure(), is.remedies()))
                .toList();
    }
}
