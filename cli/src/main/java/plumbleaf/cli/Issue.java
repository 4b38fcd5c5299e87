package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.engine.design.Design;
import plumbleaf.jobfile.input.TextKind;

/** How papers are issued: where to, by whom, on what paper. */
final class Issue {
    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder to write to; made where it is missing.")
    private Path out = Path.of("");

    @Option(
            names = "--company",
            paramLabel = "LINE",
            description = "Who issues it: name first, then address, phone, license; give it once a line.")
    private List<String> company = new ArrayList<>();

    @Option(
            names = "--revision",
            paramLabel = "LETTER",
            description = "Letter of this issue. Default: ${DEFAULT-VALUE}.")
    private String revision = "A";

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "letter or a4; drawings come on tabloid or a3. Default: ${DEFAULT-VALUE}.")
    private String paper = "letter";

    Path out() {
        return out;
    }

    /** Every file of the packet, in order. */
    List<PaperFile> files(Designed designed) {
        Design design = designed.design();
        if (design.job().runs().isEmpty())
            throw BadInput.of(
                    "plumbleaf papers",
                    "there is no finished run in this draft",
                    "give a run its leg and its style first");
        return Papers.of(design.job(), design, options().with(designed.offered()));
    }

    private PaperOptions options() {
        boolean a4 = TextKind.oneOf("a paper size", List.of("letter", "a4"), size -> size)
                .read()
                .apply(paper)
                .match(read -> read.is().equals("a4"), refused -> {
                    throw BadInput.of("plumbleaf papers", "--paper " + paper + " is not known", refused.cure());
                });
        return new PaperOptions(
                a4 ? PaperSize.A4 : PaperSize.LETTER,
                a4 ? PaperSize.A3 : PaperSize.TABLOID,
                company.isEmpty() ? PaperOptions.usual().contractor() : company,
                revision,
                List.of());
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
