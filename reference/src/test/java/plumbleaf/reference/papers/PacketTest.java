package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperKind;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Overlaps;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** All papers of real jobs. */
@Tag("slow")
class PacketTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final PaperOptions OPTIONS = new PaperOptions(
            PaperSize.LETTER,
            PaperSize.TABLOID,
            List.of("Quill and Rail Fence", "(555) 010-0142", "License 0000"),
            "A",
            List.of());

    private static String example(String name) throws IOException {
        return Files.readString(EXAMPLES.resolve(name), StandardCharsets.UTF_8);
    }

    private static Design design(String text) {
        Catalogue catalogue = StandardCatalogue.load();
        Job job = JobFile.read("job.json", text, catalogue)
                .job()
                .orElseThrow(() -> new AssertionError("The job does not read"));
        return Designs.of(
                job,
                catalogue,
                StandardTables.load().standards(),
                PriceBooks.standard("example-2027").orElseThrow(),
                new ProvenCutPlanner());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"nursery-lane.json", "kiln-yard.json", "gannet-spit.json", "heron-walk.json", "fallow-gate.json"
            })
    void theSameJobGivesTheSameBytes(String name) throws IOException {
        Design once = design(example(name));
        Design again = design(example(name));
        List<PaperFile> first = Papers.of(once.job(), once, OPTIONS);
        List<PaperFile> second = Papers.of(again.job(), again, OPTIONS);
        assertThat(first.stream().map(PaperFile::name))
                .containsExactlyElementsOf(second.stream().map(PaperFile::name).toList());
        for (int i = 0; i < first.size(); i++)
            assertThat(first.get(i).bytes())
                    .as(first.get(i).name())
                    .isEqualTo(second.get(i).bytes());
        assertThat(new TreeSet<>(first.stream().map(PaperFile::name).toList()))
                .contains(
                        "packet.pdf",
                        "gate-G1.pdf",
                        "gate-G1.svg",
                        "gate-G1.dxf",
                        "site-plan.pdf",
                        "profile.pdf",
                        "stake-out.pdf",
                        "order.pdf",
                        "crew.pdf",
                        "proposal.pdf",
                        "calculations.pdf",
                        "care-card.pdf");
    }

    @Test
    void thePacketHoldsWhatTheJobWantsInItInThatOrderAndEachPaperIsThereAlone() throws IOException {
        String asked =
                example("kiln-yard.json").replaceFirst("\\{", "{ \"packet\": [\"proposal\", \"bill\", \"site-plan\"],");
        Design design = design(asked);
        List<PaperFile> papers = Papers.of(design.job(), design, OPTIONS);
        try (PDDocument packet = Loader.loadPDF(papers.get(0).bytes());
                PDDocument proposal = Loader.loadPDF(named(papers, "proposal.pdf"));
                PDDocument site = Loader.loadPDF(named(papers, "site-plan.pdf"))) {
            assertThat(packet.getNumberOfPages()).isEqualTo(proposal.getNumberOfPages() + site.getNumberOfPages());
            assertThat(textOfPage(packet, 1)).isEqualTo(textOfPage(proposal, 1));
            assertThat(textOfPage(packet, packet.getNumberOfPages())).isEqualTo(textOfPage(site, 1));
        }
        assertThat(papers).extracting(PaperFile::name).contains("calculations.pdf", "crew.pdf");
    }

    @Test
    void theCareCardGuardsAPoolAndSpeaksOfNoGateWhereThereIsNone() throws IOException {
        assertThat(careCard("pool-court.json"))
                .contains("This fence guards a pool", "it must shut and latch by itself", "call us that day");
        assertThat(careCard("sable-row.json")).doesNotContain("gate", "hinge", "latch");
        assertThat(careCard("gannet-spit.json"))
                .contains("Tighten latch screws")
                .doesNotContain("hinge nuts");
    }

    @Test
    void aSlideHasItsJointsItsReceiverAndAPictureToInitial() throws IOException {
        Design design = design(example("fallow-gate.json"));
        List<PaperFile> papers = Papers.of(design.job(), design, OPTIONS);
        assertThat(text(papers, "gate-G1.pdf"))
                .contains("Receiver from above", "2-1/2\" to its face", "J1: bottom rail", "Weld from the middle out");
        assertThat(text(papers, "proposal.pdf")).contains("check the side it opens to, and initial");
    }

    @Test
    void aPostOnAPlateOrInASocketIsDrawnForTheCrew() throws IOException {
        String job = example("pool-court.json").replace("\"id\": \"R1\",", """
                "id": "R1", "otherPosts": [
                  { "from": "26'", "to": "46'", "support": { "kind": "slab-plate", "slabThickness": "6\\"", "edgeDistance": "12\\"",
                    "anchorDepth": "4\\"", "anchorDiameter": "5/8\\"", "anchorPull": "2500 lb", "anchorPush": "2000 lb" } },
                  { "from": "60'", "to": "80'", "support": { "kind": "core-socket", "depth": "8\\"", "slabThickness": "8\\"",
                    "edgeDistance": "12\\"" } } ],""");
        Design design = design(job);
        // The square tube of 2 in. with 3/4 in. of grout all round.
        assertThat(text(Papers.of(design.job(), design, OPTIONS), "stake-out.pdf"))
                .contains(
                        "Posts on concrete",
                        "4 anchors 5/8\"",
                        "weld all round",
                        "3-1/2\" core",
                        "12\" from the slab's edge");
    }

    private static String text(List<PaperFile> papers, String name) throws IOException {
        try (PDDocument paper = Loader.loadPDF(named(papers, name))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        }
    }

    private static String careCard(String example) throws IOException {
        Design design = design(example(example));
        try (PDDocument card = Loader.loadPDF(named(Papers.of(design.job(), design, OPTIONS), "care-card.pdf"))) {
            assertThat(card.getNumberOfPages()).as(example).isEqualTo(1);
            return new PDFTextStripper().getText(card).replaceAll("\\s+", " ");
        }
    }

    private static byte[] named(List<PaperFile> papers, String name) {
        return papers.stream()
                .filter(paper -> paper.name().equals(name))
                .findFirst()
                .orElseThrow()
                .bytes();
    }

    private static String textOfPage(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    @Test
    void everyPaperSaysWhatItMust() throws IOException {
        Design design = design(example("nursery-lane.json"));
        for (PaperFile file : Papers.of(design.job(), design, OPTIONS)) {
            if (!file.name().endsWith(".pdf")) continue;
            try (PDDocument pdf = Loader.loadPDF(file.bytes())) {
                String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
                assertThat(text)
                        .as(file.name())
                        .contains("Quill and Rail Fence")
                        .contains("Nursery on Kettle Lane")
                        .contains("2027-05-03");
                assertThat(text)
                        .as(file.name())
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("null");
                if (PaperKind.of(file.name()).map(PaperKind::isForCrew).orElse(false))
                    assertThat(text).as(file.name()).doesNotContain("$");
                switch (file.name()) {
                    case "gate-G1.pdf" ->
                        assertThat(text)
                                .contains(
                                        "HOLD",
                                        "hinges on the left, swings in",
                                        "diagonal A to C",
                                        "Long point",
                                        "Drill");
                    case "proposal.pdf" ->
                        assertThat(text)
                                .contains("Total", "initials", "mph")
                                .doesNotContain("overhead")
                                .doesNotContain("margin");
                    case "calculations.pdf" ->
                        assertThat(text)
                                .contains("Summary", "Assumed and judged", "Seal and signature", "licensed engineer")
                                .contains(
                                        "Velocity pressure at the fence",
                                        "P = 0.6 \u00d7 q \u00d7 G \u00d7 Cf \u00d7 A =")
                                .contains("Depth for lateral load", "A = 2.34 \u00d7 P / (S1 \u00d7 b) =");
                    case "stake-out.pdf" ->
                        assertThat(text).contains("KR-0417", "P1", "face to face", "bags (concrete mix", "in all");
                    case "crew.pdf" -> {
                        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
                        assertThat(text).doesNotContain("$");
                    }
                    case "care-card.pdf" -> assertThat(pdf.getNumberOfPages()).isEqualTo(1);
                    case "order.pdf" -> assertThat(text).doesNotContain("$");
                    case "templates-G1.pdf" ->
                        assertThat(text)
                                .contains("Print at 100 %", "42.5\u00b0 from square", "hinge 1", "match at", "HOLD");
                    case "concrete.pdf" -> assertThat(text).contains("bags of 80 lb", "yd\u00b3", "gallons of water");
                    case "permit.pdf" ->
                        assertThat(text).contains("Permit number", "6' 6\"", "no approval", "Association or neighbor");
                    case "locate.pdf" ->
                        assertThat(text).contains("811", "KR-0417", "13 holes", "drip line to the beds");
                    case "tear-out.pdf" ->
                        assertThat(text).contains("sagging wire on wood posts", "54' 0\"", "KR-0417");
                    case "as-built.pdf" -> assertThat(text).contains("As dug", "P13", "Clear opening, middle");
                    case "hand-over.pdf" -> {
                        assertThat(pdf.getNumberOfPages()).isEqualTo(1);
                        assertThat(text).contains("Left to do", "Customer", "Date");
                    }
                    case "packet.pdf" ->
                        assertThat(pdf.getDocumentCatalog()
                                        .getDocumentOutline()
                                        .getFirstChild()
                                        .getTitle())
                                .isEqualTo("Site plan");
                    default -> assertThat(pdf.getNumberOfPages()).isPositive();
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "left, in, 4', racked, right, us, TABLOID",
        "right, in, 3', racked, right, us, TABLOID",
        "left, out, 6', stepped, right, us, A3",
        "right, out, 8', racked, left, us, LETTER",
        "left, in, 4', level-top, left, metric, TABLOID",
        "right, in, 5', racked, right, metric, A4",
    })
    void nothingLiesOverAnythingAndNothingLeavesItsSheet(
            String hinge, String swing, String opening, String fit, String outside, String display, PaperSize sheets)
            throws IOException {
        String text = example("nursery-lane.json")
                .replace("\"hinge\": \"left\"", "\"hinge\": \"" + hinge + "\"")
                .replace("\"swing\": \"in\"", "\"swing\": \"" + swing + "\"")
                .replace("\"opening\": \"4'\"", "\"opening\": \"" + opening + "\"")
                .replace("\"fit\": \"racked\"", "\"fit\": \"" + fit + "\"")
                .replace("\"outside\": \"right\"", "\"outside\": \"" + outside + "\"")
                .replace("\"display\": \"us\"", "\"display\": \"" + display + "\"");
        Design design = design(text);
        PaperOptions options = new PaperOptions(PaperSize.LETTER, sheets, OPTIONS.contractor(), "A", List.of());
        List<Drawing> pages = Papers.pages(PacketSubjects.of(design.job(), design, options));
        List<String> faults = new ArrayList<>();
        for (Drawing page : pages) {
            for (String fault : Overlaps.of(page)) faults.add(page.name() + ": " + fault);
            for (Primitive part : page.primitives())
                if (part instanceof Text words && words.heightIn() < Text.SMALL - 1e-9)
                    faults.add(page.name() + ": too small: " + words.text());
        }
        assertThat(faults).isEmpty();
    }

    /** Posts are measured again once they were set right, and the leaf is fitted to that. */
    @ParameterizedTest
    @ValueSource(strings = {"nursery-lane.json", "fallow-gate.json"})
    void theAsBuiltHasTheOpeningAsItWasLastMeasured(String example) throws IOException {
        String job = example(example)
                .replaceFirst(
                        "(\"opening\": \"[^,]*\")",
                        "$1, \"asSet\": [{ \"date\": \"2027-05-20\", \"top\": \"3' 11-1/4\\\\\"\" },"
                                + " { \"date\": \"2027-05-24\", \"top\": \"4' 0-1/8\\\\\"\" }]");
        Design design = design(job);
        assertThat(text(Papers.of(design.job(), design, OPTIONS), "as-built.pdf"))
                .contains("The opening as set was measured on 2027-05-24.", "4' 1/8\"")
                .doesNotContain("2027-05-20", "3' 11-1/4\"");
    }

    /** Papers that last know a slide, and ask nothing of hinges or boards that it has not. */
    @ParameterizedTest
    @CsvSource({
        "care-card, receiver",
        "as-built, Run-back",
        "hand-over, stops at both ends",
        "permit, behind its own fence"
    })
    void aSlideIsOnThePapersThatLast(String paper, String says) throws Exception {
        Design design = design(example("fallow-gate.json"));
        for (PaperFile file : Papers.of(design.job(), design, OPTIONS)) {
            if (!file.name().equals(paper + ".pdf")) continue;
            try (PDDocument pdf = Loader.loadPDF(file.bytes())) {
                String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
                assertThat(text)
                        .contains(says)
                        .doesNotContainIgnoringCase("hinge")
                        .doesNotContain("boards");
            }
            return;
        }
        throw new AssertionError("No paper " + paper);
    }
}
