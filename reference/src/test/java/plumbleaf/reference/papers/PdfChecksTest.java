package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperKind;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.engine.design.Design;

/** The PDF files of every example: sound by another program, words where they belong, fonts within, bookmarks, and pages that look as accepted. */
@Tag("slow")
class PdfChecksTest {
    private static final float DPI = 36;
    private static final int COLUMNS = 24;
    private static final int ROWS = 32;
    private static final Path ACCEPTED = Path.of("src", "test", "resources", "plumbleaf", "reference", "papers");
    /** Papers whose pictures are kept: the drawings, and those with room to write in. Words of the others change with every wording. */
    private static final List<String> PICTURED =
            List.of("site-plan", "profile", "gate-G1", "templates-G1", "as-built", "hand-over", "bill", "care-card");
    /** Of sixteen shades of gray; type drawn a hair aside moves a cell by no more. */
    private static final int SAME_SHADE = 1;
    /** Share of a page's ink that may lie elsewhere: a number that grew, a row more in a table. The next page of a packet differs by a quarter and more. */
    private static final double OTHER_INK = 0.12;

    static List<String> examples() throws IOException {
        return PaperTrial.examples();
    }

    private static List<PaperFile> pdfs(String example) throws IOException {
        Design design = PaperTrial.design(PaperTrial.example(example));
        return Papers.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID)).stream()
                .filter(file -> file.name().endsWith(".pdf"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    @Tag("pdf-tools")
    void everyFileIsSoundToAnotherProgram(String example, @TempDir Path folder) throws IOException {
        Assumptions.assumeTrue(OtherProgram.runs("qpdf", "--version"), "no qpdf here");
        for (PaperFile file : pdfs(example)) {
            Path at = folder.resolve(file.name());
            Files.write(at, file.bytes());
            assertThat(OtherProgram.runs("qpdf", "--check", at.toString()))
                    .as(file.name())
                    .isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyFileSaysWhatItIsAndStandsRight(String example) throws IOException {
        int papers = 0;
        for (PaperFile file : pdfs(example)) {
            try (PDDocument pdf = Loader.loadPDF(file.bytes())) {
                about(pdf, file.name());
                for (int i = 0; i < pdf.getNumberOfPages(); i++)
                    page(pdf.getPage(i), file.name() + ", page " + (i + 1));
                if (file.name().equals("packet.pdf")) continue;
                papers++;
                assertThat(PaperKind.of(file.name())).as(file.name()).isPresent();
                places(pdf, file.name());
            }
        }
        try (PDDocument packet = Loader.loadPDF(pdfs(example).get(0).bytes())) {
            assertThat(titles(packet)).as("one bookmark a paper").hasSize(papers);
        }
    }

    private static void about(PDDocument pdf, String name) {
        assertThat(pdf.getDocumentInformation().getTitle()).as(name).isNotBlank();
        assertThat(pdf.getDocumentInformation().getAuthor()).as(name).isEqualTo("Quill and Rail Fence");
        assertThat(pdf.getDocumentInformation().getCreationDate()).as(name).isNull();
        assertThat(pdf.getDocumentCatalog().getLanguage()).as(name).isEqualTo("en-US");
        assertThat(titles(pdf)).as(name).isNotEmpty();
    }

    private static List<String> titles(PDDocument pdf) {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) titles.add(item.getTitle());
        return titles;
    }

    private static void page(PDPage page, String name) throws IOException {
        for (COSName font : page.getResources().getFontNames())
            assertThat(page.getResources().getFont(font).isEmbedded()).as(name).isTrue();
    }

    /** A sheet's contractor at the upper right, its number at the lower right; a page's title at the upper left, its number at the lower right. */
    private static void places(PDDocument pdf, String name) throws IOException {
        PDPage first = pdf.getPage(0);
        boolean sheet =
                first.getMediaBox().getWidth() > first.getMediaBox().getHeight() && !name.startsWith("templates");
        if (sheet) {
            assertThat(words(first, 0.78, 0.03, 0.22, 0.14)).as(name).contains("Quill and Rail Fence", "License 0000");
            assertThat(words(first, 0.78, 0.80, 0.22, 0.18)).as(name).contains("Revision", "Date", "1 of ");
            return;
        }
        assertThat(words(first, 0, 0, 0.6, 0.14)).as(name).isNotBlank();
        for (int i = 0; i < pdf.getNumberOfPages(); i++) {
            PDPage page = pdf.getPage(i);
            if (page.getMediaBox().getWidth() > page.getMediaBox().getHeight()) continue;
            assertThat(words(page, 0.5, 0.93, 0.5, 0.06)).as(name).contains("page " + (i + 1) + " of ");
            assertThat(words(page, 0, 0.93, 0.6, 0.06)).as(name).contains("rev A");
        }
    }

    private static String words(PDPage page, double x, double y, double wide, double high) throws IOException {
        PDFTextStripperByArea area = new PDFTextStripperByArea();
        double across = page.getMediaBox().getWidth();
        double down = page.getMediaBox().getHeight();
        area.addRegion("here", new Rectangle((int) (x * across), (int) (y * down), (int) Math.ceil(wide * across), (int)
                Math.ceil(high * down)));
        area.extractRegions(page);
        return area.getTextForRegion("here").replaceAll("\\s+", " ");
    }

    static List<String> pictured() {
        return List.of("nursery-lane-settled.json", "gannet-spit.json");
    }

    /** Each page as a grid of sixteen shades. With {@code -Dpapers.accept=true} what is drawn now is accepted. */
    @ParameterizedTest
    @MethodSource("examples")
    void pagesLookAsAccepted(String example) throws IOException {
        Path file = ACCEPTED.resolve(example.replace(".json", ".pages.txt"));
        List<String> now = new ArrayList<>();
        for (PaperFile paper : pdfs(example))
            if (PICTURED.stream().anyMatch(name -> paper.name().equals(name + ".pdf"))) now.addAll(shades(paper));
        if (Boolean.getBoolean("papers.accept")) {
            Files.createDirectories(ACCEPTED);
            Files.write(file, now, StandardCharsets.UTF_8);
        }
        assertThat(file)
                .as("accepted pages of " + example + "; -Dpapers.accept=true once they were looked at")
                .exists();
        List<String> accepted = Files.readAllLines(file, StandardCharsets.UTF_8);
        assertThat(now).as("pages, one a line").hasSameSizeAs(accepted);
        for (int i = 0; i < now.size(); i++) {
            String name = now.get(i).substring(0, now.get(i).indexOf(' '));
            assertThat(accepted.get(i)).startsWith(name + " ");
            assertThat(other(now.get(i), accepted.get(i)))
                    .as(name + " of " + example + ": look at it, then accept it")
                    .isLessThan(OTHER_INK);
        }
    }

    /** The comparison tells any page from its neighbor; not where one long even line fills sheet after sheet. */
    @ParameterizedTest
    @MethodSource("pictured")
    void anotherPageIsNotTakenForIt(String example) throws IOException {
        Path file = ACCEPTED.resolve(example.replace(".json", ".pages.txt"));
        Assumptions.assumeTrue(Files.exists(file), "no accepted pages of " + example);
        List<String> accepted = Files.readAllLines(file, StandardCharsets.UTF_8);
        for (int i = 0; i + 1 < accepted.size(); i++) {
            String next = accepted.get(i + 1);
            String renamed =
                    accepted.get(i).substring(0, accepted.get(i).indexOf(' ')) + next.substring(next.indexOf(' '));
            assertThat(other(renamed, accepted.get(i)))
                    .as(next.substring(0, next.indexOf(' ')) + " for the page before")
                    .isGreaterThan(1.5 * OTHER_INK);
        }
    }

    /** Ink that lies on one page and not on the other, over the ink of both together. */
    static double other(String now, String accepted) {
        int from = now.indexOf(' ') + 1;
        int apart = 0;
        int all = 0;
        for (int i = from; i < now.length(); i++) {
            int one = Character.digit(now.charAt(i), 16);
            int other = Character.digit(accepted.charAt(i), 16);
            if (Math.abs(one - other) > SAME_SHADE) apart += Math.abs(one - other);
            all += Math.max(one, other);
        }
        return all == 0 ? 0 : (double) apart / all;
    }

    private static List<String> shades(PaperFile paper) throws IOException {
        List<String> lines = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(paper.bytes())) {
            PDFRenderer renderer = new PDFRenderer(pdf);
            for (int i = 0; i < pdf.getNumberOfPages(); i++)
                lines.add(
                        paper.name() + ":" + (i + 1) + " " + grid(renderer.renderImageWithDPI(i, DPI, ImageType.GRAY)));
        }
        return lines;
    }

    /** The mean darkness of each cell, ten times as dark, so that a thin line counts. */
    private static String grid(BufferedImage image) {
        StringBuilder grid = new StringBuilder(COLUMNS * ROWS);
        for (int row = 0; row < ROWS; row++)
            for (int column = 0; column < COLUMNS; column++) {
                int left = image.getWidth() * column / COLUMNS;
                int right = image.getWidth() * (column + 1) / COLUMNS;
                int top = image.getHeight() * row / ROWS;
                int bottom = image.getHeight() * (row + 1) / ROWS;
                long dark = 0;
                for (int x = left; x < right; x++)
                    for (int y = top; y < bottom; y++) dark += 255 - (image.getRGB(x, y) & 0xFF);
                double mean = (double) dark / ((long) (right - left) * (bottom - top));
                grid.append(Character.forDigit((int) Math.min(15, mean * 10 / 16), 16));
            }
        return grid.toString();
    }
}
