package plumbleaf.documents.plot.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import plumbleaf.documents.drawing.Drawing;

/** Pages of marks as one PDF file. Each drawing is a page of its frame's size on paper. */
public final class PdfPlot {
    private static final double POINTS_PER_INCH = 72;

    private PdfPlot() {}

    public static byte[] file(List<Drawing> pages, PdfFacts facts) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            document.setDocumentId(
                    (long) facts.title().hashCode() << 16 ^ facts.subject().hashCode() ^ pages.size());
            PdfFonts fonts = new PdfFonts(document);
            for (Drawing drawing : pages) page(document, fonts, drawing);
            describe(document, facts);
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException("The PDF " + facts.title() + " could not be written", failed);
        }
    }

    private static void page(PDDocument document, PdfFonts fonts, Drawing drawing) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) (drawing.paperWidthIn() * POINTS_PER_INCH), (float)
                (drawing.paperHeightIn() * POINTS_PER_INCH)));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            new PdfPen(content, fonts, drawing).draw(drawing.primitives());
        }
    }

    private static void describe(PDDocument document, PdfFacts facts) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(facts.title());
        information.setAuthor(facts.author());
        information.setSubject(facts.subject());
        information.setCreator("Plumbleaf");
        document.getDocumentCatalog().setLanguage("en-US");
        if (facts.bookmarks().isEmpty()) return;
        PDDocumentOutline outline = new PDDocumentOutline();
        for (PdfFacts.Bookmark bookmark : facts.bookmarks()) {
            PDPageXYZDestination destination = new PDPageXYZDestination();
            destination.setPage(document.getPage(bookmark.page()));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(bookmark.title());
            item.setDestination(destination);
            outline.addLast(item);
        }
        document.getDocumentCatalog().setDocumentOutline(outline);
        document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    }
}
