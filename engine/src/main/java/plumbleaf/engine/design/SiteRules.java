package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Existing;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.rule.AccessGate;
import plumbleaf.engine.rule.PermitHeight;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.engine.rule.SiteCautions;
import plumbleaf.engine.schedule.Schedule;

/** What rules and cautions say of a yard beyond its strength. */
final class SiteRules {
    private SiteRules() {}

    static List<Finding> of(
            Job job, Ground ground, Layout layout, List<GateDesign> gates, Schedule schedule, Standards standards) {
        RuleTable rules = standards.rules().shownIn(job.display());
        Existing existing = job.existing();
        List<Finding> findings = new ArrayList<>(SiteCautions.digging(
                !existing.tickets().isEmpty(), !existing.lines().isEmpty()));
        findings.add(SiteCautions.bracing());
        findings.add(SiteCautions.review());
        ticket(job).ifPresent(findings::add);
        for (Run run : job.runs()) {
            Length highest = Length.ZERO;
            for (Bay bay : layout.run(run.id()).bays()) {
                if (bay.heightMax().inches() > highest.inches())
                    highest = bay.heightMax().size();
            }
            if (!highest.isZero()) findings.add(PermitHeight.of(run.id(), highest, rules));
        }
        for (Gate gate : job.gates()) if (isPowered(job, gate)) findings.addAll(AccessGate.powered(gate.id(), rules));
        if (job.site().uses().contains(Use.POOL)) findings.addAll(PoolRules.of(job, ground, layout, gates, rules));
        findings.addAll(new PlaceChecks(job, ground, layout, rules).findings(gates, schedule));
        return findings;
    }

    /** By the use of the site, or a slide by its own word. */
    private static boolean isPowered(Job job, Gate gate) {
        return job.site().uses().contains(Use.POWERED)
                || gate.kind()
                        .match(
                                swing -> false,
                                pair -> false,
                                slide -> slide.spec().powered(),
                                flagged -> false);
    }

    /** The job is dated inside the days that its locate ticket lets it dig, or it is not. */
    private static Optional<Finding> ticket(Job job) {
        if (job.existing().tickets().isEmpty() || !job.date().isSaid()) return Optional.empty();
        LocateTicket ticket = job.existing().tickets().get(0);
        String words = "Locate ticket " + ticket.number() + ": dig from " + ticket.digFrom() + " through "
                + ticket.validThrough() + ", not before and not after.";
        return Optional.of(Checked.note(
                "dig.ticket", Severity.CAUTION, "site", words, Basis.job("the locate ticket; state law governs")));
    }
}
