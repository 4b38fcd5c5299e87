package plumbleaf.reference.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** What the tests of papers share: the examples, and a design of any job text. */
final class PaperTrial {
    static final Path EXAMPLES = Path.of("..", "examples");

    private PaperTrial() {}

    /** Names of all examples that are jobs. */
    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    static String example(String name) throws IOException {
        return Files.readString(EXAMPLES.resolve(name), StandardCharsets.UTF_8);
    }

    static Design design(String text) {
        Catalogue catalogue = StandardCatalogue.load();
        return JobFile.read("job.json", text, catalogue)
                .match(
                        good -> Designs.of(
                                good.is(),
                                catalogue,
                                StandardTables.load().standards(),
                                PriceBooks.standard("example-2027").orElseThrow(),
                                new ProvenCutPlanner()),
                        bad -> {
                            throw new AssertionError("The job does not read: " + bad.all() + "\n" + text);
                        });
    }

    static PaperOptions options(PaperSize text, PaperSize sheets) {
        return new PaperOptions(
                text,
                sheets,
                List.of("Quill and Rail Fence", "9 Latch Row, Lower Quill", "(555) 010-0142", "License 0000"),
                "A",
                List.of());
    }
}
