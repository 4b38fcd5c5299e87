package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.schedule.Quote;
import plumbleaf.engine.strength.RatedGust;

/**
 * A job, designed.
 *
 * @param ground as measured, worked out
 * @param layout where posts stand and what hangs between them
 * @param posts every post, along the walk
 * @param gates in the order of the job
 * @param choices how the builds of gates with nothing, or not all, pinned were chosen
 * @param quote the order, the hours, the days and the price
 * @param rated the gust at which the first part of the whole build reaches its allowable, and the first its expected ultimate; empty where no wind reaches it
 * @param findings everything there is to say, worst first
 */
public record Design(
        Job job,
        Ground ground,
        Layout layout,
        List<PostDesign> posts,
        List<GateDesign> gates,
        List<GateChoice> choices,
        Quote quote,
        Optional<RatedGust> rated,
        List<Finding> findings) {
    public Design {
        posts = List.copyOf(posts);
        gates = List.copyOf(gates);
        choices = List.copyOf(choices);
        findings = List.copyOf(findings);
    }

    /** The same with more to say, such as what a draft still lacks. */
    public Design with(List<Finding> more) {
        return new Design(job, ground, layout, posts, gates, choices, quote, rated, Findings.join(findings, more));
    }

    public Verdict verdict() {
        return Verdict.of(findings);
    }

    public Optional<GateDesign> gate(String id) {
        return gates.stream().filter(gate -> gate.id().equals(id)).findFirst();
    }

    public Optional<PostDesign> post(String id) {
        return posts.stream().filter(post -> post.id().equals(id)).findFirst();
    }
}
