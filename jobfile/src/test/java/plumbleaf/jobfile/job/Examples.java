package plumbleaf.jobfile.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.jobfile.catalogue.PartTables;

/** The example jobs as they lie in the project, and a catalogue of a few sections to read them against. */
final class Examples {
    static final String NURSERY = example("nursery-lane.json");
    static final String KILN = example("kiln-yard.json");
    static final Catalogue CATALOGUE = catalogue();

    private Examples() {}

    private static String example(String name) {
        try {
            return Files.readString(Path.of("..", "examples", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Catalogue catalogue() {
        List<Section> sections = new ArrayList<>();
        for (String id : List.of("F1083-REG-2", "F1083-REG-2.5", "TUBE-2x2x0.083", "TUBE-2x2x0.120"))
            sections.add(section(id));
        return new Catalogue(
                sections,
                PartTables.styles("styles.csv", table("styles.csv")).rows(),
                PartTables.hinges("hinges.csv", table("hinges.csv")).rows(),
                PartTables.latches("latches.csv", table("latches.csv")).rows(),
                List.of(),
                List.of(Length.inches(12)),
                Length.inches(6));
    }

    /** Only its name matters to the reader. */
    private static Section section(String id) {
        Length inch = Length.inches(1);
        return new Section(
                id,
                id,
                Shape.ROUND,
                inch,
                inch,
                inch,
                inch,
                inch,
                Force.pounds(1),
                1,
                1,
                1,
                1,
                1,
                1,
                1,
                1,
                new Stress(30_000),
                new Stress(48_000),
                "test",
                "test");
    }

    private static String table(String name) {
        try (InputStream in = PartTables.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("No table " + name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
