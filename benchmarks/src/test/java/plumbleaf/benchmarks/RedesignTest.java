package plumbleaf.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.ResultFile;

/** Over walks of edits, what is worked out again only where an edit touches it is what comes of working out everything. Seeded. */
@Tag("slow")
class RedesignTest {
    private static final Standards STANDARDS = StandardTables.load().standards();

    @ParameterizedTest
    @CsvSource({"kiln-yard.json, 60", "nursery-lane-settled.json, 25", "gannet-spit.json, 20", "heron-walk.json, 20"})
    void aRedesignIsTheDesign(String example, int edits) {
        Redesigner redesigner = new Redesigner(Yards.CATALOGUE, STANDARDS, new ProvenCutPlanner());
        Edits walk = new Edits(Path.of("..", "examples", example), 11);
        for (int i = 0; i < edits; i++) {
            Job job = walk.next();
            PriceBook book = PriceBooks.of(job).orElseThrow();
            Design again = redesigner.of(job, book);
            Design whole = Designs.of(job, Yards.CATALOGUE, STANDARDS, book, new ProvenCutPlanner());
            assertThat(ResultFile.write(again)).as("edit " + i).isEqualTo(ResultFile.write(whole));
            assertThat(again.findings()).isEqualTo(whole.findings());
            assertThat(again.posts()).isEqualTo(whole.posts());
        }
    }
}
