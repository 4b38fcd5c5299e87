package plumbleaf.web.room;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperKind;
import plumbleaf.engine.job.PacketPaper;

/** The papers for shop and crew, as each kind says it, and a packet of them alone. */
final class HandPapers {
    private HandPapers() {}

    static boolean isFor(String name) {
        return PaperKind.of(name).map(PaperKind::isForCrew).orElse(false);
    }

    /** @param packet what the packet is made of, in its order; empty for all */
    static List<PaperFile> of(List<PaperFile> all, List<PacketPaper> packet) {
        List<PaperFile> papers =
                all.stream().filter(paper -> isFor(paper.name())).toList();
        List<PaperFile> pdfs =
                papers.stream().filter(paper -> paper.name().endsWith(".pdf")).toList();
        if (pdfs.isEmpty()) return papers;
        List<PaperFile> chosen = packet.stream()
                .flatMap(paper -> pdfs.stream().filter(file -> PacketOrder.isOf(file.name(), paper)))
                .toList();
        List<PaperFile> files = new ArrayList<>();
        files.add(new PaperFile(PaperShelf.PACKET, together(chosen.isEmpty() ? pdfs : chosen)));
        files.addAll(papers);
        return List.copyOf(files);
    }

    private static byte[] together(List<PaperFile> pdfs) {
        List<PDDocument> opened = new ArrayList<>();
        try (PDDocument packet = new PDDocument()) {
            PDFMergerUtility merger = new PDFMergerUtility();
            for (PaperFile pdf : pdfs) {
                PDDocument one = Loader.loadPDF(pdf.bytes());
                opened.add(one);
                merger.appendDocument(packet, one);
            }
            // The same papers make the same bytes.
            packet.setDocumentId(0L);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            packet.save(out);
            for (PDDocument one : opened) one.close();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("The papers just made cannot be put together", e);
        }
    }
}
