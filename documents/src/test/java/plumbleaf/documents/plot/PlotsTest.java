package plumbleaf.documents.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbleaf.documents.Samples;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.plot.dxf.DxfPlot;
import plumbleaf.documents.plot.pdf.PdfFacts;
import plumbleaf.documents.plot.pdf.PdfPlot;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.typeset.HtmlPaper;
import plumbleaf.documents.typeset.Pages;

/** The three plotters say the same, and the same each time. */
class PlotsTest {
    private static final Pattern PLACE = Pattern.compile("[ML](-?[\\d.]+) (-?[\\d.]+)");

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
        assertThat(svg)
                .contains("data-of=\"G1a.m1\"")
                .contains("k-hidden".replace("hidden", "visible"))
                .contains("&quot;");
        assertThat(svg).isEqualTo(SvgPlot.file(Samples.frame(46.5, 71, 3.8)));
        keep("leaf.svg", svg.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void dxfIsPlainAsciiInRealInches() throws IOException {
        byte[] dxf = DxfPlot.file(leaf);
        String text = new String(dxf, StandardCharsets.US_ASCII);
        assertThat(text).contains("%%c1/2").contains("%%d").contains("AC1009").endsWith("EOF\n");
        for (byte each : dxf) assertThat(each).isGreaterThanOrEqualTo((byte) 0);
        keep("leaf.dxf", dxf);
    }

    /** Runs where Python with ezdxf is there; reported as skipped elsewhere. */
    @Test
    void anIndependentReaderFindsNoFaultAndTheSameExtents(@TempDir Path folder) throws Exception {
        String python = List.of("/usr/bin/python3", "python3").stream()
                .filter(name -> runs(name, "-c", "import ezdxf"))
                .findFirst()
                .orElse("");
        Assumptions.assumeFalse(python.isEmpty(), "no python3 with ezdxf here");
        Path file = folder.resolve("leaf.dxf");
        Files.write(file, DxfPlot.file(leaf));
        String answer = output(python, "-c", """
                import ezdxf, sys
                from ezdxf import bbox
                d = ezdxf.readfile(sys.argv[1])
                a = d.audit()
                b = bbox.extents([e for e in d.modelspace() if e.dxftype() != 'TEXT'])
                print(len(a.errors), len(a.fixes), b.extmin.x, b.extmin.y, b.extmax.x, b.extmax.y)
                """, file.toString());
        String[] parts = answer.strip().split(" ", -1);
        assertThat(parts[0]).isEqualTo("0");
        assertThat(parts[1]).isEqualTo("0");
        Box fromSvg = pathsOf(SvgPlot.file(leaf));
        assertThat(Double.parseDouble(parts[2])).isCloseTo(fromSvg.minX(), within(0.01));
        assertThat(Double.parseDouble(parts[3])).isCloseTo(fromSvg.minY(), within(0.01));
        assertThat(Double.parseDouble(parts[4])).isCloseTo(fromSvg.maxX(), within(0.01));
        assertThat(Double.parseDouble(parts[5])).isCloseTo(fromSvg.maxY(), within(0.01));
    }

    /** Real extents of all that an SVG draws apart from lettering and what is cleared behind it, read back from its text. */
    private Box pathsOf(String svg) {
        Box box = Box.NOTHING;
        double perUnit = leaf.scale().realPerPaper() / 96;
        for (String element : svg.split("\n", -1)) {
            if (!element.startsWith("<path") || element.contains("<text")) continue;
            Matcher place = PLACE.matcher(element);
            while (place.find())
                box = box.with(new Point(
                        leaf.frame().minX() + Double.parseDouble(place.group(1)) * perUnit,
                        leaf.frame().maxY() - Double.parseDouble(place.group(2)) * perUnit));
        }
        return box;
    }

    private static boolean runs(String... command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static String output(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (InputStream answer = process.getInputStream()) {
            String text = new String(answer.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor()).as(text).isZero();
            return text;
        }
    }

    /** Left in the build folder for the eye. */
    private static void keep(String name, byte[] bytes) throws IOException {
        Path folder = Path.of("target", "samples");
        Files.createDirectories(folder);
        Files.write(folder.resolve(name), bytes);
    }
}
