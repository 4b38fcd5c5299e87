package plumbleaf.engine.line;

import java.util.List;
import plumbleaf.engine.finding.Finding;

/** Every run laid out, in the order of the job. */
public record Layout(List<RunLayout> runs, List<Finding> findings) {
    public Layout {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    public RunLayout run(String id) {
        return runs.stream()
                .filter(run -> run.run().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No run " + id + " in this layout"));
    }

    /** All posts, run after run. */
    public List<Post> posts() {
        return runs.stream().flatMap(run -> run.posts().stream()).toList();
    }

    /** All bays, run after run. */
    public List<Bay> bays() {
        return runs.stream().flatMap(run -> run.bays().stream()).toList();
    }

    /** The two posts of a gate, the one nearer the run's start first. */
    public List<Post> gatePosts(String gate) {
        return posts().stream()
                .filter(post -> post.gate().equals(gate) && post.role() == PostRole.GATE)
                .toList();
    }
}
