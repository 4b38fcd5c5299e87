package plumbleaf.jobfile.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

class StandardCatalogueTest {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();

    @Test
    void everyStyleIsOfAWoodThatIsKnown() {
        for (FenceStyle style : CATALOGUE.styles()) {
            style.boarding().ifPresent(boards -> {
                assertThat(CATALOGUE.species(boards.species())).as(style.id()).isPresent();
                assertThat(CATALOGUE.species(boards.railSpecies()))
                        .as(style.id())
                        .isPresent();
            });
        }
    }

    @Test
    void everySteelSectionIsSoldInSomeLength() {
        for (Section section : CATALOGUE.sections())
            assertThat(CATALOGUE.lengthsOf(section)).as(section.id()).isNotEmpty();
    }

    @Test
    void idsAreUnique() {
        assertThat(CATALOGUE.sections()).extracting(Section::id).doesNotHaveDuplicates();
        assertThat(CATALOGUE.hinges()).extracting(hinge -> hinge.id()).doesNotHaveDuplicates();
        assertThat(CATALOGUE.latches()).extracting(latch -> latch.id()).doesNotHaveDuplicates();
        assertThat(CATALOGUE.augers()).isSortedAccordingTo(Length::compareTo);
    }
}
