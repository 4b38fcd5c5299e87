package plumbleaf.jobfile.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** The example jobs as they lie in the project, and the catalogue to read them against. */
final class Examples {
    static final String NURSERY = example("nursery-lane.json");
    static final String SPIT = example("gannet-spit.json");
    static final String FALLOW = example("fallow-gate.json");
    static final String KILN = example("kiln-yard.json");
    static final Catalogue CATALOGUE = StandardCatalogue.load();

    private Examples() {}

    private static String example(String name) {
        try {
            return Files.readString(Path.of("..", "examples", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
