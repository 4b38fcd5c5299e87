package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.drawing.Emblem;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.mark.MarkFile;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.letterhead.LetterheadFile;

/** By whom papers are issued, on what paper, with which letter and which link. What is given on the line goes before the letterhead file. */
final class IssuedBy {
    @Option(
            names = "--company",
            paramLabel = "LINE",
            description = "Who issues it: name first, then address, phone, license; give it once a line.")
    private List<String> company = new ArrayList<>();

    @Option(
            names = "--letterhead",
            paramLabel = "CSV",
            description = "A table of what,words: name, address, phone, license, line, mark, paper, sheets.")
    private String letterhead = "";

    @Option(names = "--mark", paramLabel = "PICTURE", description = "Your own mark for title blocks: PNG, JPEG or SVG.")
    private String mark = "";

    @Option(
            names = "--revision",
            paramLabel = "LETTER",
            description = "Letter of this issue. Default: ${DEFAULT-VALUE}.")
    private String revision = "A";

    @Option(names = "--paper", paramLabel = "SIZE", description = "letter or a4. Default: letter.")
    private String paper = "";

    @Option(
            names = "--sheets",
            paramLabel = "SIZE",
            description = "Sheets of drawings: letter, tabloid, a4 or a3. Default: tabloid, or a3 with --paper a4.")
    private String sheets = "";

    @Option(
            names = "--link",
            paramLabel = "ADDRESS",
            description = "Web address of the job; papers then carry a code that a phone reads.")
    private String link = "";

    PaperOptions options() {
        LetterheadFile file =
                letterhead.isEmpty() ? new LetterheadFile(List.of(), "", "", "", List.of()) : read(Path.of(letterhead));
        PaperSize text =
                size("--paper", paper.isEmpty() ? file.paper() : paper, LetterheadFile.PAPERS, PaperSize.LETTER);
        PaperSize drawings =
                size("--sheets", sheets.isEmpty() ? file.sheets() : sheets, LetterheadFile.SHEETS, text.doubled());
        List<String> lines = !company.isEmpty()
                ? company
                : file.lines().isEmpty() ? PaperOptions.usual().contractor() : file.lines();
        return new PaperOptions(text, drawings, lines, revision, List.of(), emblem(file), link);
    }

    private static LetterheadFile read(Path path) {
        LetterheadFile file =
                LetterheadFile.read(path.toString(), new String(JobDoor.bytes(path), StandardCharsets.UTF_8));
        if (!file.errors().isEmpty()) throw new BadInput(file.errors());
        return file;
    }

    /** A mark named in the file lies beside it. */
    private List<Emblem> emblem(LetterheadFile file) {
        Path from = !mark.isEmpty()
                ? Path.of(mark)
                : file.mark().isEmpty() ? Path.of("") : Path.of(letterhead).resolveSibling(file.mark());
        if (from.toString().isEmpty()) return List.of();
        MarkFile.Answer answer = MarkFile.read(JobDoor.bytes(from));
        return List.of(answer.emblem()
                .orElseThrow(() -> BadInput.of(from.toString(), answer.problem(), "bring a PNG, JPEG or plain SVG")));
    }

    private static PaperSize size(String option, String asked, List<String> known, PaperSize usual) {
        if (asked.isEmpty()) return usual;
        return TextKind.oneOf("a paper size", known, size -> size)
                .read()
                .apply(asked)
                .match(read -> PaperSize.valueOf(read.is().toUpperCase(Locale.ROOT)), refused -> {
                    throw BadInput.of("plumbleaf papers", option + " " + asked + " is not known", refused.cure());
                });
    }
}
