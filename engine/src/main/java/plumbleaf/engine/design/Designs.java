package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.footing.Footings;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.schedule.Quote;
import plumbleaf.engine.strength.RatedGust;

/** Designs a job. The one place that knows the order of work: ground, line, wind, gates, posts, stock, money. */
public final class Designs {
    private Designs() {}

    /**
     * @param job as it was read
     * @param sold what can be bought anyway; the job may bring parts of its own
     * @param standards tables of the codes, and what is presumed
     * @param book what it costs
     * @param planner cuts pieces from bars
     */
    public static Design of(Job job, Catalogue sold, Standards standards, PriceBook book, CutPlanner planner) {
        Catalogue catalogue = sold.with(job.parts());
        DesignMemory memory = new DesignMemory(planner);
        memory.begin(job, catalogue, book);
        return of(job, catalogue, standards, book, memory, true);
    }

    /**
     * With what the memory's design of this job, and the one before, worked out; what it touches not is taken from there.
     *
     * @param catalogue with the job's own parts
     * @param pricesRemedies whether it says of each remedy what that does to the price, which is a third of the work
     */
    static Design of(
            Job job,
            Catalogue catalogue,
            Standards standards,
            PriceBook book,
            DesignMemory memory,
            boolean pricesRemedies) {
        Picks picks = usualPicks(job, catalogue);
        YardWork yard = new YardWork(job, catalogue, standards, picks, memory);
        List<GateChoice> choices = new ArrayList<>();
        for (Gate gate : job.gates()) {
            if (job.builds().of(gate).isOpen()) choices.add(yard.choose(gate, book, choices));
        }
        if (!choices.isEmpty()) {
            for (GateChoice choice : choices) picks = picks.with(choice);
            yard = new YardWork(job, catalogue, standards, picks, memory);
        }
        List<GatePosts> gatePosts = yard.gates();
        List<PostDesign> posts = yard.posts(gatePosts);
        List<GateDesign> gates = gatePosts.stream().map(GatePosts::gate).toList();
        CutPlanner cuts = memory.cuts();
        RodPick rods = RodPick.of(catalogue, gates);
        Quote quote = StockWork.quote(
                job, memory.book(), cuts, StockWork.assembly(job, catalogue, yard.layout(), posts, gates, rods, picks));
        List<Finding> findings = new ArrayList<>(yard.ground().findings());
        findings.addAll(yard.layout().findings());
        for (GateDesign gate : gates) findings.addAll(gate.findings());
        for (GateChoice choice : choices) findings.add(choice.finding());
        Picks built = picks;
        List<Finding> ofPosts = new SideRemedies(
                        job,
                        catalogue,
                        book,
                        standards.footing(),
                        yard.layout(),
                        posts,
                        other -> posts(other, catalogue, standards, built, memory))
                .offered(PostFindings.of(posts));
        findings.addAll(
                new HeldRemedies(job, yard, posts, gates, other -> yard(other, catalogue, standards, built, memory))
                        .offered(ofPosts));
        findings.addAll(NearFootings.of(posts, job.display()));
        findings.addAll(new RailRemedies(job, yard, other -> yard(other, catalogue, standards, built, memory))
                .offered(yard.bayFindings()));
        findings.addAll(yard.guardFindings(gates));
        findings.addAll(yard.spacingFindings());
        OwnPartFindings.of(job.parts()).ifPresent(findings::add);
        findings.addAll(StyleFindings.of(job, catalogue, yard.layout()));
        findings.addAll(new SlideRoom(job, yard.layout(), gates).findings());
        findings.addAll(SiteRules.of(job, yard.ground(), yard.layout(), gates, quote.schedule(), standards));
        SoilBand.of(job.site().soil(), standards.soil())
                .ifPresent(soil ->
                        findings.addAll(SitePulls.of(job, catalogue, soil).findings()));
        findings.addAll(quote.findings());
        List<Finding> joined = Findings.join(findings);
        List<Finding> priced = pricesRemedies
                ? RemedyPrices.priced(
                        joined,
                        job,
                        quote.price().total(),
                        posts.size(),
                        other -> total(other, catalogue, standards, built, rods, memory))
                : joined;
        return new Design(
                job,
                yard.ground(),
                yard.layout(),
                posts,
                gates,
                choices,
                quote,
                rated(job, standards, posts, gates, yard.railGust()),
                TradeNames.said(priced, job.display(), catalogue, book));
    }

    /**
     * Lays a job out as {@link #of} does, draws its gates and goes no further: for an answer within a frame, while loads and money are still to be worked out.
     * Check: LaidTest.
     *
     * @param choices of the design before: gates that leave their build open keep the one that was chosen then
     */
    static Laid laid(Job job, Catalogue sold, Standards standards, List<GateChoice> choices) {
        Catalogue catalogue = sold.with(job.parts());
        Picks picks = usualPicks(job, catalogue);
        for (GateChoice choice : choices) if (isOpen(job, choice.gate())) picks = picks.with(choice);
        YardWork yard = new YardWork(job, catalogue, standards, picks, new DesignMemory(Designs::cutsNothing));
        return new Laid(job, yard.ground(), yard.layout(), yard.drawnGates());
    }

    private static boolean isOpen(Job job, String gate) {
        return job.gates().stream()
                .anyMatch(
                        each -> each.id().equals(gate) && job.builds().of(each).isOpen());
    }

    private static CutAnswer cutsNothing(CutTask task) {
        throw new IllegalStateException("Nothing is cut here, and it was asked to cut " + task.stock());
    }

    /** The weakest of all links; none where footings stand in ground that nobody knows, since that may be the weakest. */
    private static Optional<RatedGust> rated(
            Job job, Standards standards, List<PostDesign> posts, List<GateDesign> gates, Optional<RatedGust> rails) {
        boolean dug = posts.stream().anyMatch(post -> post.footing().isPresent());
        if (dug && !Footings.isGroundKnown(job.site().soil(), standards.soil())) return Optional.empty();
        List<RatedGust> all = new ArrayList<>();
        for (PostDesign post : posts) post.rated().ifPresent(all::add);
        for (GateDesign gate : gates) gate.rated().ifPresent(all::add);
        rails.ifPresent(all::add);
        return all.stream().map(RatedGust::alone).reduce(RatedGust::lesser);
    }

    /**
     * The search for the cheapest build of one gate that passes, with its proof: what the job pinned stays.
     *
     * @param gate its id
     * @param asked what of its hanging is looked for too
     * @param told hears how far it is
     */
    public static GateChoice choose(
            Job job,
            Catalogue sold,
            Standards standards,
            PriceBook book,
            String gate,
            HangingAsked asked,
            SearchTold told) {
        Catalogue catalogue = sold.with(job.parts());
        DesignMemory memory = new DesignMemory(Designs::cutsNothing);
        memory.begin(job, catalogue, book);
        YardWork yard = new YardWork(job, catalogue, standards, usualPicks(job, catalogue), memory);
        List<GateChoice> before = new ArrayList<>();
        for (Gate each : job.gates()) {
            if (each.id().equals(gate)) {
                List<GateSearch> searches = new ArrayList<>();
                for (Gate way : asked.gates(each)) {
                    Job changed = HangingAsked.with(job, way);
                    YardWork laid = way.equals(each)
                            ? yard
                            : new YardWork(changed, catalogue, standards, usualPicks(changed, catalogue), memory);
                    searches.addAll(laid.searches(way, book, before, asked));
                }
                return GateChoice.withFiner(gate, searches, told);
            }
            if (job.builds().of(each).isOpen()) before.add(yard.choose(each, book, before));
        }
        throw new IllegalArgumentException("No gate " + gate + " in this job");
    }

    /** The same where nobody waits. */
    public static GateChoice choose(
            Job job, Catalogue sold, Standards standards, PriceBook book, String gate, HangingAsked asked) {
        return choose(job, sold, standards, book, gate, asked, SearchTold.NOBODY);
    }

    /** The same with the gate hung as the job says. */
    public static GateChoice choose(Job job, Catalogue sold, Standards standards, PriceBook book, String gate) {
        return choose(job, sold, standards, book, gate, HangingAsked.NOTHING);
    }

    /** What a changed job would come to, with the builds of this one where it pins none; empty where one of its gates finds no place. */
    private static Optional<Money> total(
            Job job, Catalogue catalogue, Standards standards, Picks built, RodPick rods, DesignMemory memory) {
        Optional<YardWork> stands = yard(job, catalogue, standards, built, memory);
        if (stands.isEmpty()) return Optional.empty();
        YardWork yard = stands.get();
        Picks picks = built.pinnedBy(job, new UsualBuilds(catalogue));
        List<GatePosts> gatePosts = yard.unhungGates();
        List<GateDesign> gates = gatePosts.stream().map(GatePosts::gate).toList();
        return Optional.of(StockWork.total(
                job,
                memory.book(),
                memory.cuts(),
                StockWork.assembly(job, catalogue, yard.layout(), yard.posts(gatePosts), gates, rods, picks)));
    }

    /** The posts of a changed job, on the builds of this one where it pins none; none where one of its gates finds no place. */
    private static List<PostDesign> posts(
            Job job, Catalogue catalogue, Standards standards, Picks built, DesignMemory memory) {
        return yard(job, catalogue, standards, built, memory)
                .map(yard -> yard.posts(yard.unhungGates()))
                .orElse(List.of());
    }

    /** A changed job laid out; empty where one of its gates finds no place. */
    private static Optional<YardWork> yard(
            Job job, Catalogue catalogue, Standards standards, Picks built, DesignMemory memory) {
        YardWork yard =
                new YardWork(job, catalogue, standards, built.pinnedBy(job, new UsualBuilds(catalogue)), memory);
        return job.gates().stream().allMatch(yard::stands) ? Optional.of(yard) : Optional.empty();
    }

    private static Picks usualPicks(Job job, Catalogue catalogue) {
        UsualBuilds usual = new UsualBuilds(catalogue);
        List<PickedRun> runs = job.runs().stream()
                .map(run -> usual.of(run, job.builds().of(run)))
                .toList();
        Map<String, PickedGate> gates = new LinkedHashMap<>();
        for (Gate gate : job.gates())
            gates.put(gate.id(), usual.of(gate, job.builds().of(gate)));
        return new Picks(runs, gates, List.of());
    }
}
