package plumbleaf.documents;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.packet.AsBuilt;
import plumbleaf.documents.packet.BillSheet;
import plumbleaf.documents.packet.CalculationBook;
import plumbleaf.documents.packet.CareCard;
import plumbleaf.documents.packet.ChangeOrder;
import plumbleaf.documents.packet.ConcreteSheet;
import plumbleaf.documents.packet.CrewSheet;
import plumbleaf.documents.packet.CutAndDrill;
import plumbleaf.documents.packet.CutPlans;
import plumbleaf.documents.packet.GatePaper;
import plumbleaf.documents.packet.GateSheets;
import plumbleaf.documents.packet.HandOver;
import plumbleaf.documents.packet.LoadSheet;
import plumbleaf.documents.packet.LocateRequest;
import plumbleaf.documents.packet.Order;
import plumbleaf.documents.packet.PacketSubject;
import plumbleaf.documents.packet.PermitSheet;
import plumbleaf.documents.packet.ProfileSheets;
import plumbleaf.documents.packet.Proposal;
import plumbleaf.documents.packet.Receiving;
import plumbleaf.documents.packet.SiteSheet;
import plumbleaf.documents.packet.SlidePaper;
import plumbleaf.documents.packet.SlideSheets;
import plumbleaf.documents.packet.SlideShop;
import plumbleaf.documents.packet.StakeOut;
import plumbleaf.documents.packet.TearOut;
import plumbleaf.documents.packet.Templates;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.plot.dxf.DxfPlot;
import plumbleaf.documents.plot.pdf.PdfFacts;
import plumbleaf.documents.plot.pdf.PdfPlot;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.engine.money.Money;

/**
 * All papers of a designed job: one packet, each paper alone, and the drawings as SVG and DXF. The same design gives the same bytes.
 */
public final class Papers {
    private final PacketSubject subject;
    private final List<Part> parts = new ArrayList<>();
    private final List<PaperFile> drawings = new ArrayList<>();
    private final List<Paper> texts = new ArrayList<>();

    /** One paper on its pages. */
    private record Part(String file, String title, List<Drawing> pages) {}

    private final Consumer<String> told;

    private Papers(PacketSubject subject) {
        this(subject, title -> {});
    }

    private Papers(PacketSubject subject, Consumer<String> told) {
        this.subject = subject;
        this.told = told;
    }

    /** {@code packet.pdf} first, then every paper alone, then the drawings. */
    public static List<PaperFile> of(Job job, Design design, PaperOptions options) {
        return of(job, design, options, title -> {});
    }

    /**
     * The same, for somebody who waits.
     *
     * @param told the title of each paper and how many pages it has, as soon as they are set
     */
    public static List<PaperFile> of(Job job, Design design, PaperOptions options, Consumer<String> told) {
        return new Papers(PacketSubjects.of(job, design, options), told).files();
    }

    /**
     * A change order.
     *
     * @param changed the job as it is to be
     * @param accepted total with tax of what was accepted so far
     */
    public static PaperFile changeOrder(
            Design changed, Difference difference, String what, Money accepted, PaperOptions options) {
        Papers papers = new Papers(PacketSubjects.of(changed.job(), changed, options));
        Part part = new Part(
                PaperKind.CHANGE_ORDER.file(),
                PaperKind.CHANGE_ORDER.title(),
                papers.set(ChangeOrder.of(papers.subject, difference, what, accepted)));
        return new PaperFile("change-order.pdf", papers.pdf(part));
    }

    /** Every page of the packet as a drawing: what a screen previews and a test looks over. */
    public static List<Drawing> pages(PacketSubject subject) {
        Papers papers = new Papers(subject);
        papers.collect();
        return papers.parts.stream().flatMap(part -> part.pages.stream()).toList();
    }

    /** The papers that are text rather than drawings, in the words they are printed with. */
    public static List<Paper> texts(PacketSubject subject) {
        Papers papers = new Papers(subject);
        papers.collect();
        return List.copyOf(papers.texts);
    }

    private List<PaperFile> files() {
        collect();
        List<PaperFile> files = new ArrayList<>();
        files.add(new PaperFile("packet.pdf", packet()));
        for (Part part : parts) files.add(new PaperFile(part.file + ".pdf", pdf(part)));
        files.addAll(drawings);
        return List.copyOf(files);
    }

    private void collect() {
        part(PaperKind.SITE_PLAN, SiteSheet.pages(subject));
        drawing("site-plan", SiteSheet.drawing(subject));
        part(PaperKind.PROFILE, ProfileSheets.pages(subject));
        List<Drawing> strips = ProfileSheets.drawings(subject);
        for (int i = 0; i < strips.size(); i++) drawing("profile-" + (i + 1), strips.get(i));
        for (GatePaper gate : subject.gates()) {
            List<Drawing> pages = new ArrayList<>(GateSheets.pages(subject, gate));
            pages.addAll(set(CutAndDrill.of(subject, gate)));
            add(new Part("gate-" + gate.id(), "Gate " + gate.id() + ", shop drawing, cut and drill list", pages));
            drawing("gate-" + gate.id(), GateSheets.drawing(subject, gate));
            if (gate.isPair())
                for (GatePaper leaf : gate.leaves())
                    drawing("gate-" + leaf.mark(), GateSheets.shopDrawing(subject, leaf));
            List<Drawing> templates = Templates.pages(subject, gate);
            if (!templates.isEmpty())
                add(new Part("templates-" + gate.id(), "Gate " + gate.id() + ", full-size templates", templates));
        }
        for (SlidePaper gate : subject.slides()) {
            List<Drawing> pages = new ArrayList<>(SlideSheets.pages(subject, gate));
            pages.addAll(set(SlideShop.of(subject, gate)));
            add(new Part("gate-" + gate.id(), "Gate " + gate.id() + ", shop drawing, cut and drill list", pages));
            drawing("gate-" + gate.id(), SlideSheets.drawing(subject, gate));
        }
        text(PaperKind.STAKE_OUT, StakeOut.of(subject));
        if (ConcreteSheet.isFor(subject)) text(PaperKind.CONCRETE, ConcreteSheet.of(subject));
        text(PaperKind.PERMIT, PermitSheet.of(subject));
        text(PaperKind.LOCATE, LocateRequest.of(subject));
        if (TearOut.isFor(subject)) text(PaperKind.TEAR_OUT, TearOut.of(subject));
        text(PaperKind.ORDER, Order.of(subject));
        text(PaperKind.RECEIVING, Receiving.of(subject));
        text(PaperKind.CUT_PLANS, CutPlans.of(subject));
        text(PaperKind.LOAD, LoadSheet.of(subject));
        text(PaperKind.CREW, CrewSheet.of(subject));
        text(PaperKind.AS_BUILT, AsBuilt.of(subject));
        text(PaperKind.HAND_OVER, HandOver.of(subject));
        text(PaperKind.PROPOSAL, Proposal.of(subject));
        if (BillSheet.isFor(subject)) text(PaperKind.BILL, BillSheet.of(subject));
        text(PaperKind.CALCULATIONS, CalculationBook.of(subject));
        text(PaperKind.CARE_CARD, CareCard.of(subject));
    }

    private void text(PaperKind kind, Paper paper) {
        part(kind, set(paper));
    }

    private void add(Part part) {
        parts.add(part);
        told.accept(part.title + ", " + part.pages.size() + (part.pages.size() == 1 ? " page" : " pages"));
    }

    private void part(PaperKind kind, List<Drawing> pages) {
        add(new Part(kind.file(), kind.title(), pages));
    }

    private List<Drawing> set(Paper paper) {
        Paper said = subject.said().paper(paper);
        texts.add(said);
        return Pages.of(said, subject.options().size());
    }

    private void drawing(String file, Drawing drawing) {
        drawings.add(new PaperFile(file + ".svg", SvgPlot.file(drawing).getBytes(StandardCharsets.UTF_8)));
        drawings.add(new PaperFile(file + ".dxf", DxfPlot.file(drawing)));
    }

    private byte[] pdf(Part part) {
        return PdfPlot.file(part.pages, facts(part.title, List.of(new PdfFacts.Bookmark(part.title, 0))));
    }

    /** Those the job wants in its packet, in the order it wants them; where it names none that there is, all of them. */
    private List<Part> inPacket() {
        List<Part> chosen = new ArrayList<>();
        for (PacketPaper paper : subject.job().packet())
            for (Part part : parts)
                if (PaperKind.of(part.file + ".pdf")
                        .filter(kind -> kind.isOf(paper))
                        .isPresent()) chosen.add(part);
        return chosen.isEmpty() ? parts : chosen;
    }

    private byte[] packet() {
        List<Drawing> pages = new ArrayList<>();
        List<PdfFacts.Bookmark> bookmarks = new ArrayList<>();
        for (Part part : inPacket()) {
            bookmarks.add(new PdfFacts.Bookmark(part.title, pages.size()));
            pages.addAll(part.pages);
        }
        return PdfPlot.file(pages, facts(subject.job().title(), bookmarks));
    }

    private PdfFacts facts(String title, List<PdfFacts.Bookmark> bookmarks) {
        return new PdfFacts(
                title, subject.options().contractor().get(0), subject.job().title(), bookmarks);
    }
}
