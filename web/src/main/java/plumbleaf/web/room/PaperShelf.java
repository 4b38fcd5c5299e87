package plumbleaf.web.room;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.springframework.stereotype.Component;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.Papers;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.web.letterhead.HouseLetterhead;

/** The papers of the jobs that were looked at last, and their pages as pictures: what is seen is what is printed. */
@Component
class PaperShelf {
    static final String PACKET = "packet.pdf";
    private static final int KEPT = 6;
    private static final float SCREEN_DPI = 110;
    private static final float POINTS_PER_INCH = 72;

    private final LastFew<String, List<PaperFile>> latest = new LastFew<>(KEPT);
    private final LastFew<String, List<PaperFile>> forHands = new LastFew<>(KEPT);
    private final LastFew<String, PaperMaking> makings = new LastFew<>(KEPT);
    private final LastFew<Counted, Integer> counts = new LastFew<>(KEPT * PacketPaper.values().length);
    private final Bench bench;
    private final HouseLetterhead letterhead;

    PaperShelf(Bench bench, HouseLetterhead letterhead) {
        this.bench = bench;
        this.letterhead = letterhead;
    }

    /** Papers are others where the job is, its revision, or the letterhead. */
    private String key(Opened opened) {
        return letterhead.version() + "|" + opened.stored().id() + "|"
                + opened.stored().revision() + "|" + opened.key();
    }

    /**
     * How far the papers of a job are, of one so large that somebody waits: they are made behind the page, beginning with the first
     * look. Nothing where they are there, or are made at once.
     */
    Optional<PaperMaking> making(Opened opened) {
        boolean large = opened.design()
                .map(design -> design.posts().size() > PaperMaking.LARGE)
                .orElse(false);
        if (!large) return Optional.empty();
        PaperMaking making = makings.of(key(opened), () -> {
            PaperMaking begun = new PaperMaking();
            begun.begin(told -> papers(opened, told));
            return begun;
        });
        return making.isOver() ? Optional.empty() : Optional.of(making);
    }

    /** Every paper of a job; nothing where its file is wrong. Two who ask at once wait for one making. */
    List<PaperFile> papers(Opened opened) {
        return papers(opened, title -> {});
    }

    private List<PaperFile> papers(Opened opened, Consumer<String> told) {
        if (opened.design().isEmpty()) return List.of();
        Design design = opened.design().get();
        return latest.of(
                key(opened),
                () -> Papers.of(
                        design.job(),
                        design,
                        letterhead
                                .options(opened.stored().id().text())
                                .madeFrom(opened.stored().document().getBytes(StandardCharsets.UTF_8))
                                .issued(Long.toString(opened.stored().revision()))
                                .with(bench.offers(opened).offered()),
                        told));
    }

    /** Those of them that somebody may see. */
    List<PaperFile> papers(Opened opened, Sight sight) {
        List<PaperFile> all = papers(opened);
        if (sight == Sight.EVERYTHING || all.isEmpty()) return all;
        List<PacketPaper> packet = opened.job().map(Job::packet).orElse(List.of());
        return forHands.of(key(opened), () -> HandPapers.of(all, packet));
    }

    Optional<PaperFile> paper(Opened opened, String name, Sight sight) {
        return papers(opened, sight).stream()
                .filter(paper -> paper.name().equals(name))
                .findFirst();
    }

    /** What its packet is made of; nothing where its file is wrong. */
    Optional<PacketOrder> order(Opened opened) {
        return opened.job()
                .filter(job -> opened.design().isPresent())
                .map(job -> PacketOrder.of(
                        job, papers(opened).stream().map(PaperFile::name).toList()));
    }

    /** How many pages a paper has, of all gates together where it is of gates. */
    int count(Opened opened, PacketPaper paper) {
        List<PaperFile> files = papers(opened).stream()
                .filter(file -> PacketOrder.isOf(file.name(), paper))
                .toList();
        return counts.of(
                new Counted(key(opened), paper),
                () -> files.stream().mapToInt(file -> pages(file).size()).sum());
    }

    private record Counted(String packet, PacketPaper paper) {}

    /** The pages of the packet as wide and high as they are shown. */
    List<PageSize> pages(Opened opened, Sight sight) {
        return paper(opened, PACKET, sight).map(PaperShelf::pages).orElse(List.of());
    }

    static List<PageSize> pages(PaperFile paper) {
        List<PageSize> sizes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(paper.bytes())) {
            for (PDPage page : document.getPages()) {
                PDRectangle box = page.getCropBox();
                sizes.add(new PageSize(pixels(box.getWidth()), pixels(box.getHeight())));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The paper just made cannot be read", e);
        }
        return sizes;
    }

    /** In the pixels of its picture. */
    record PageSize(int wide, int high) {}

    private static int pixels(float points) {
        return (int) (points * SCREEN_DPI / POINTS_PER_INCH);
    }

    /** A page of the packet, from 1, as a PNG picture. */
    Optional<byte[]> page(Opened opened, int number, Sight sight) {
        return paper(opened, PACKET, sight).flatMap(packet -> page(packet, number));
    }

    static Optional<byte[]> page(PaperFile paper, int number) {
        try (PDDocument document = Loader.loadPDF(paper.bytes())) {
            if (number < 1 || number > document.getNumberOfPages()) return Optional.empty();
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(number - 1, SCREEN_DPI, ImageType.RGB);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, "png", out);
            return Optional.of(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException("The paper just made cannot be drawn", e);
        }
    }
}
