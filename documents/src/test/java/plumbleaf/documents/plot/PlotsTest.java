package plumbleaf.documents.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import plumbleaf.documents.Samples;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.plot.dxf.DxfPlot;
import plumbleaf.documents.plot.pdf.PdfFacts;
import plumbleaf.documents.plot.pdf.PdfPlot;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.typeset.HtmlPaper;
import plumbleaf.documents.typeset.Pages;

/** What each plotter writes, and that it writes the same each time. */
class PlotsTest {
    private final Drawing leaf = Samples.frame(46.5, 71, 3.8);

    @Test
    void pdfIsTheSameEachTimeAndItsTextCanBeRead() throws IOException {
        List<Drawing> pages = List.of(Samples.sheet(PaperSize.TABLOID).page("1 of 1"));
        PdfFacts facts = new PdfFacts(
                "Gate G1", "Sample Fence Shop", "Sample yard", List.of(new PdfFacts.Bookmark("Gate G1", 0)));
        byte[] once = PdfPlot.file(pages, facts);
        byte[] again = PdfPlot.file(pages, facts);
        assertThat(Arrays.equals(once, again)).isTrue();
        try (PDDocument read = Loader.loadPDF(once)) {
            assertThat(read.getPage(0).getMediaBox().getWidth()).isEqualTo(17 * 72f);
            assertThat(read.getPage(0).getMediaBox().getHeight()).isEqualTo(11 * 72f);
            assertThat(new PDFTextStripper().getText(read))
                    .contains("3' 10-1/2\"")
                    .contains("HOLD")
                    .contains("Gate shop drawing");
            assertThat(read.getDocumentInformation().getCreationDate()).isNull();
        }
        keep("sheet.pdf", once);
    }

    @Test
    void papersBreakIntoPagesWithHeadingsAgain() throws IOException {
        List<Drawing> pages = Pages.of(Samples.paper(75), PaperSize.LETTER);
        byte[] pdf = PdfPlot.file(pages, new PdfFacts("Post schedule", "", "", List.of()));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            assertThat(read.getNumberOfPages()).isEqualTo(pages.size()).isGreaterThan(2);
            for (int page = 1; page <= 2; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(read)).contains("Station").contains("page " + page + " of " + pages.size());
            }
        }
        keep("paper.pdf", pdf);
        keep("paper.html", HtmlPaper.of(Samples.paper(12)).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void svgNamesWhatItDrawsAndEscapes() throws IOException {
        String svg = SvgPlot.file(leaf);
        assertThat(svg).contains("data-of=\"G1a.m1\"").contains("k-visible").contains("&quot;");
        assertThat(svg).isEqualTo(SvgPlot.file(Samples.frame(46.5, 71, 3.8)));
        keep("leaf.svg", svg.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void dxfIsPlainAscii() throws IOException {
        byte[] dxf = DxfPlot.file(leaf);
        String text = new String(dxf, StandardCharsets.US_ASCII);
        assertThat(text).contains("%%c1/2").contains("%%d").contains("AC1009").endsWith("EOF\n");
        for (byte each : dxf) assertThat(each).isGreaterThanOrEqualTo((byte) 0);
        keep("leaf.dxf", dxf);
    }

    /** Left in the build folder for the eye. */
    private static void keep(String name, byte[] bytes) throws IOException {
        Path folder = Path.of("target", "samples");
        Files.createDirectories(folder);
        Files.write(folder.resolve(name), bytes);
    }
}
