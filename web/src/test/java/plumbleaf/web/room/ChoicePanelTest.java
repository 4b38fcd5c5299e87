package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.web.page.Panel;

/** The choice of a build is shown with its proof, and one press keeps it. */
class ChoicePanelTest {
    @Test
    void theChoiceIsShownWithItsProofAndKeptByOnePress() throws IOException {
        Catalogue catalogue = StandardCatalogue.load();
        String text = Files.readString(Path.of("..", "examples", "kiln-yard.json"));
        Job pinned = JobFile.read("kiln-yard.json", text, catalogue).match(good -> good.is(), bad -> {
            throw new IllegalStateException(bad.all().toString());
        });
        Job job = pinned.withBuilds(new Builds(pinned.builds().runs(), List.of()));
        Design design = Designs.of(
                job,
                catalogue,
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                new ProvenCutPlanner());
        assertThat(design.choices()).hasSize(1);
        Panel panel = ChoicePanel.of(design.choices().get(0), design, new PickedWords(catalogue, job.display()));
        assertThat(panel.heading()).isEqualTo("Choice of a build for G1");
        assertThat(panel.notes()).hasSize(1);
        assertThat(panel.notes().get(0).presses()).hasSize(4);
        assertThat(panel.notes().get(0).presses().get(0).words())
                .startsWith("Keep: ")
                .contains("tube, ", "; posts ", "; holes ", " deep")
                .doesNotContain("TUBE-", "F1043");
        assertThat(panel.notes().get(0).presses().get(0).edit())
                .contains("builds.G1.frame=TUBE-", "; builds.G1.braces=", "; builds.G1.depth=");
        assertThat(Edit.ofRemedy(panel.notes().get(0).presses().get(0).edit())).hasSize(7);
        assertThat(panel.tables()).hasSize(3);
        assertThat(panel.tables().get(1).lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.cells().get(1)).isNotBlank());
        assertThat(panel.tables().get(2).lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.cells().get(2)).isNotBlank());
    }
}
