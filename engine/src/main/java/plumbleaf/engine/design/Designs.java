package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.schedule.Quote;

/** Designs a job. The one place that knows the order of work: ground, line, wind, gates, posts, stock, money. */
public final class Designs {
    private Designs() {}

    /**
     * @param job as it was read
     * @param catalogue what can be bought
     * @param standards tables of the codes, and what is presumed
     * @param book what it costs
     * @param planner cuts pieces from bars
     */
    public static Design of(Job job, Catalogue catalogue, Standards standards, PriceBook book, CutPlanner planner) {
        YardWork yard = new YardWork(job, catalogue, standards, usualPicks(job, catalogue));
        List<GatePosts> gatePosts = job.gates().stream().map(yard::gate).toList();
        List<PostDesign> posts = yard.posts(gatePosts);
        List<GateDesign> gates = gatePosts.stream().map(GatePosts::gate).toList();
        Quote quote = StockWork.quote(job, catalogue, book, planner, yard.layout(), posts, gates);
        List<Finding> findings = new ArrayList<>(yard.ground().findings());
        findings.addAll(yard.layout().findings());
        for (GateDesign gate : gates) findings.addAll(gate.findings());
        findings.addAll(PostFindings.of(posts));
        findings.addAll(yard.bayFindings());
        findings.addAll(SiteRules.of(job, yard.layout(), standards));
        findings.addAll(quote.findings());
        return new Design(job, yard.ground(), yard.layout(), posts, gates, quote, Findings.join(findings));
    }

    private static Picks usualPicks(Job job, Catalogue catalogue) {
        UsualBuilds usual = new UsualBuilds(catalogue);
        List<PickedRun> runs = job.runs().stream()
                .map(run -> usual.of(run, job.builds().of(run)))
                .toList();
        Map<String, PickedGate> gates = new LinkedHashMap<>();
        for (Gate gate : job.gates()) gates.put(gate.id(), usual.of(job.builds().of(gate)));
        return new Picks(runs, gates);
    }
}
