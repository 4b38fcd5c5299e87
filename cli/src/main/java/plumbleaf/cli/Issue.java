package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.Papers;
import plumbleaf.engine.design.Design;

/** How papers are issued: where to, by whom, on what paper. */
final class Issue {
    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder to write to; made where it is missing.")
    private Path out = Path.of("");

    @Mixin
    private IssuedBy by = new IssuedBy();

    /** Posts above which papers take long enough to say how far they are. */
    private static final int LARGE = 150;

    Path out() {
        return out;
    }

    /**
     * Every file of the packet, in order.
     *
     * @param told each paper as it is set, of a job so large that somebody waits
     */
    List<PaperFile> files(Designed designed, Consumer<String> told) {
        Design design = designed.design();
        if (design.job().runs().isEmpty())
            throw BadInput.of(
                    "plumbleaf papers",
                    "there is no finished run in this draft",
                    "give a run its leg and its style first");
        boolean large = design.posts().size() > LARGE;
        return Papers.of(
                design.job(),
                design,
                by.options().madeFrom(JobDoor.bytes(designed.file())).with(designed.offered()),
                title -> {
                    if (large) told.accept(title);
                });
    }

    /** Writes the files, whole, over earlier ones of the same name, and says which. */
    List<String> write(List<PaperFile> files) {
        Written.folder(out);
        List<String> names = new ArrayList<>();
        for (PaperFile file : files) {
            Written.bytes(out.resolve(file.name()), file.bytes(), true);
            names.add(file.name());
        }
        return names;
    }
}
