package plumbleaf.jobfile.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvTable;

class MaterialTablesTest {
    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(PartTables.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Section> sections() {
        CsvTable<Section> table = MaterialTables.sections("sections.csv", resource("sections.csv"));
        assertThat(table.errors()).isEmpty();
        return table.rows();
    }

    @Test
    void everyRowOfOurOwnTablesIsGood() {
        assertThat(sections()).hasSizeGreaterThan(200).extracting(Section::id).doesNotHaveDuplicates();
        CsvTable<WoodSpecies> woods = MaterialTables.species("species.csv", resource("species.csv"));
        assertThat(woods.errors()).isEmpty();
        assertThat(woods.rows()).extracting(WoodSpecies::id).contains("western_redcedar", "southern_pine_2x4");
    }

    /** A slip of the pen in a table would not pass: printed area and inertia agree with the sizes, to the digits that are printed. */
    @Test
    void tabulatedPropertiesFollowFromTheSizes() {
        for (Section section : sections()) {
            TubeProperties geometry = section.shape() == Shape.ROUND
                    ? TubeProperties.round(section.depth(), section.usedWall())
                    : TubeProperties.rectangular(section.depth(), section.width(), section.usedWall());
            assertThat(section.areaIn2())
                    .as(section.id())
                    .isCloseTo(geometry.areaIn2(), within(0.025 * section.areaIn2()));
            assertThat(section.ixIn4()).as(section.id()).isCloseTo(geometry.ixIn4(), within(0.025 * section.ixIn4()));
            assertThat(section.zxIn3()).as(section.id()).isCloseTo(geometry.zxIn3(), within(0.025 * section.zxIn3()));
            assertThat(section.jIn4()).as(section.id()).isCloseTo(geometry.jIn4(), within(0.05 * section.jIn4()));
        }
    }

    @Test
    void everyBadCellOfASectionIsNamed() {
        String text = resource("sections.csv")
                        .lines()
                        .filter(line -> line.startsWith("id,"))
                        .findFirst()
                        .orElseThrow()
                + "\nX,tube,a tube,oval,2,2,0.1,0.1,0.2,1,0.5,0.3,0.3,0.4,0.3,0.3,0.4,nought,36,58,unverified,us,memory\n";
        assertThat(MaterialTables.sections("mine.csv", text).errors())
                .extracting(InputError::text)
                .containsExactly(
                        "mine.csv:2: wall_design_in \"0.2\": the design wall is thicker than the nominal one; write 0.93 of the nominal",
                        "mine.csv:2: shape \"oval\": this is no shape; write round, square or rectangular",
                        "mine.csv:2: j_in4 \"nought\": this is not a number; write a plain number, like 2.375");
    }
}
