package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;

/**
 * A job, designed.
 *
 * @param ground as measured, worked out
 * @param layout where posts stand and what hangs between them
 * @param gates in the order of the job
 * @param findings everything there is to say, worst first
 */
public record Design(Job job, Ground ground, Layout layout, List<GateDesign> gates, List<Finding> findings) {
    public Design {
        gates = List.copyOf(gates);
        findings = List.copyOf(findings);
    }

    public Verdict verdict() {
        return Verdict.of(findings);
    }

    public Optional<GateDesign> gate(String id) {
        return gates.stream().filter(gate -> gate.id().equals(id)).findFirst();
    }
}
