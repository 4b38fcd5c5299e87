package plumbleaf.documents.packet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.drawing.Letterhead;
import plumbleaf.documents.drawing.TitleBlock;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Said;
import plumbleaf.documents.view.PlacedGate;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.Site;
import plumbleaf.documents.view.Sizes;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.schedule.Schedule;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.Takeoff;

/**
 * A designed job as its papers need it.
 *
 * @param checked the posts with their checks
 * @param slides gates whose leaf slides; the others are in {@code gates}
 * @param takeoff what is ordered; empty where the job has no price book
 * @param load    what goes on the truck, day by day; empty where the job has no price book
 * @param schedule day by day, undated where nobody said when it starts
 * @param gusts   one sentence for each run and gate: the gust its build is rated for
 * @param said    the units in which all of it is said
 */
public record PacketSubject(
        Job job,
        Ground ground,
        Layout layout,
        List<PostDetail> posts,
        List<PostDesign> checked,
        List<GatePaper> gates,
        List<SlidePaper> slides,
        List<Takeoff> takeoff,
        List<LoadList> load,
        List<Labour> labour,
        Schedule schedule,
        List<Price> price,
        List<String> gusts,
        List<Finding> findings,
        Said said,
        PaperOptions options) {
    public PacketSubject {
        posts = List.copyOf(posts);
        checked = List.copyOf(checked);
        gates = List.copyOf(gates);
        slides = List.copyOf(slides);
        takeoff = List.copyOf(takeoff);
        load = List.copyOf(load);
        labour = List.copyOf(labour);
        price = List.copyOf(price);
        gusts = List.copyOf(gusts);
        findings = List.copyOf(findings);
    }

    public DisplayUnits units() {
        return job.display();
    }

    public String length(double inches) {
        return units().length(inches);
    }

    /** Whole inches on the shop's papers: {@code 36"}; millimetres where the job is metric. */
    public String inches(double inches) {
        return Sizes.inches(units(), inches);
    }

    /** Room under a leaf: {@code 1-1/8"}, or {@code strikes, 2-7/8" short}. */
    public String room(double inches) {
        return inches < 0 ? "strikes, " + inches(-inches) + " short" : inches(inches);
    }

    /** How far off is still good, in sixteenths; on a metric job the round millimetres below: 1/16 in. is 1.5 mm there, 1/8 in. 3 mm. */
    public String within(int sixteenths) {
        return units() == DisplayUnits.US
                ? LengthText.inchesOnly(sixteenths / 16.0)
                : DecimalText.upTo(sixteenths * 1.5, 1) + " mm";
    }

    public String date() {
        return job.date().value().map(LocalDate::toString).orElse("no date given");
    }

    public boolean mustFix() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.MUST_FIX);
    }

    /** Printed on every page when something must be fixed before anyone builds from it. */
    public String flag() {
        return mustFix() ? "MUST FIX: see findings" : "";
    }

    public Paper.Running running() {
        return new Paper.Running(options.contractor().get(0), job.title(), options.revision(), date(), issuer());
    }

    /** Who issues the papers, with mark and code. */
    public Letterhead issuer() {
        return new Letterhead(options.contractor(), options.emblem(), options.code());
    }

    public List<PlacedGate> placedGates() {
        return gates.stream()
                .flatMap(gate -> gate.subjects().stream())
                .map(PlacedGate::new)
                .toList();
    }

    /** What the site plan shows of the job. */
    public Site site() {
        return new Site(job, layout, ground, placedGates(), slidePlans());
    }

    /** The slide gates as a plan draws them. */
    public List<SlidePlan> slidePlans() {
        return slides.stream().map(slide -> slide.subject().plan()).toList();
    }

    /** The title block of a sheet for the whole job. */
    public TitleBlock block(String title, String mark, String scale, List<String> cautions) {
        return block(title, mark, scale, "", TitleBlock.Release.NOT_FOR_SHOP, options.revision(), cautions);
    }

    /** The title block of a gate's sheet: its hand, and whether the shop may build from it. */
    public TitleBlock block(GatePaper gate, String title, String scale, List<String> cautions) {
        boolean released = gate.asked().release().match(priced -> false, hold -> false, is -> true) && !mustFix();
        String revision = gate.asked()
                .release()
                .match(priced -> options.revision(), hold -> options.revision(), is -> is.revision());
        return block(
                title,
                gate.isPair() && gate.subjects().size() == 1 ? gate.mark() : gate.id(),
                scale,
                gate.isPair() && gate.subjects().size() == 1
                        ? gate.subject().sentence()
                        : gate.subject().plan().sentence(),
                released ? TitleBlock.Release.RELEASED : TitleBlock.Release.HOLD,
                revision,
                cautions);
    }

    /** The title block of a slide gate's sheet. */
    public TitleBlock block(SlidePaper gate, String title, String scale, List<String> cautions) {
        boolean released = gate.asked().release().match(priced -> false, hold -> false, is -> true) && !mustFix();
        String revision = gate.asked()
                .release()
                .match(priced -> options.revision(), hold -> options.revision(), is -> is.revision());
        return block(
                title,
                gate.id(),
                scale,
                gate.sentence(),
                released ? TitleBlock.Release.RELEASED : TitleBlock.Release.HOLD,
                revision,
                cautions);
    }

    private TitleBlock block(
            String title,
            String mark,
            String scale,
            String hand,
            TitleBlock.Release release,
            String revision,
            List<String> cautions) {
        List<String> about = new ArrayList<>();
        about.add(job.title());
        if (!job.site().customer().isEmpty()) about.add(job.site().customer());
        if (!job.site().address().isEmpty()) about.add(job.site().address());
        List<String> all = new ArrayList<>();
        if (mustFix()) all.add("MUST FIX: this design does not pass. See the findings in the calculation book.");
        all.addAll(cautions);
        all.add("Local code governs. This is no approval; a licensed engineer reviews where one is required.");
        return new TitleBlock(issuer(), about, title, mark, revision, date(), scale, hand, release, said.words(all));
    }

    /** When digging is allowed, or that no ticket is given. */
    public List<String> tickets() {
        List<String> words = new ArrayList<>();
        for (LocateTicket ticket : job.existing().tickets())
            words.add("Locate ticket " + ticket.number() + ": dig from " + ticket.digFrom() + " through "
                    + ticket.validThrough() + ".");
        if (words.isEmpty())
            words.add("No locate ticket is on file: call before digging, and dig nothing until the marks are down.");
        return words;
    }

    /** What must be said before people dig, in the design's own words. */
    public List<String> diggingCautions() {
        return findings.stream()
                .filter(finding ->
                        finding.severity() == Severity.CAUTION && finding.id().startsWith("dig."))
                .map(Finding::message)
                .distinct()
                .toList();
    }

    /** All of it, each thing once: a ticket that a caution names is not said again. */
    public List<String> digging() {
        List<String> words = new ArrayList<>(diggingCautions());
        for (String ticket : tickets()) {
            String head = ticket.contains(":") ? ticket.substring(0, ticket.indexOf(':')) : ticket;
            if (words.stream().noneMatch(word -> word.startsWith(head))) words.add(0, ticket);
        }
        return List.copyOf(words);
    }

    public PostDetail post(String id) {
        return posts.stream()
                .filter(post -> post.post().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No post " + id));
    }
}
