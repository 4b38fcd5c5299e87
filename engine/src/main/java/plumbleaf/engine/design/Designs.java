package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.SpacingLimit;

/** Designs a job. The one place that knows the order of work: ground, line, wind, gates, posts, stock, money. */
public final class Designs {
    private Designs() {}

    public static Design of(Job job, Catalogue catalogue, Standards standards) {
        UsualBuilds usual = new UsualBuilds(catalogue);
        List<PickedRun> runs = job.runs().stream()
                .map(run -> usual.of(run, job.builds().of(run)))
                .toList();
        Map<String, PickedGate> gates = new LinkedHashMap<>();
        for (Gate gate : job.gates()) gates.put(gate.id(), usual.of(job.builds().of(gate)));
        YardWork yard = new YardWork(job, catalogue, standards, new Picks(runs, gates), SpacingLimit.NONE);
        List<GateDesign> designed = job.gates().stream().map(yard::gate).toList();
        List<Finding> findings = new ArrayList<>(yard.ground().findings());
        findings.addAll(yard.layout().findings());
        for (GateDesign gate : designed) findings.addAll(gate.findings());
        return new Design(job, yard.ground(), yard.layout(), designed, Findings.join(findings));
    }
}
