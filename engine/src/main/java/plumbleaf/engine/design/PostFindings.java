package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Severity;

/** What is said of many posts at once: of each check the worst post of a run, and how many more are like it. */
final class PostFindings {
    private PostFindings() {}

    private static final String HEAVE = "footing.heave";

    /** Gate posts speak for themselves, but of heave; of a run's other posts, and of what heaves at a gate, the worst of each check does for all. */
    static List<Finding> of(List<PostDesign> posts) {
        List<Finding> said = new ArrayList<>();
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        for (PostDesign post : posts) {
            String gate = post.post().gate();
            for (Finding finding : post.findings()) {
                if (!gate.isEmpty() && !finding.id().equals(HEAVE)) said.add(finding);
                else
                    alike.computeIfAbsent(post.post().run() + " " + gate + " " + finding.id(), key -> new ArrayList<>())
                            .add(finding);
            }
        }
        for (List<Finding> group : alike.values()) said.add(worst(Findings.join(group)));
        return said;
    }

    /** The first of a run's findings of one check, worst first, with how many more are like it. */
    static Finding worst(List<Finding> group) {
        Finding worst = group.get(0);
        long more = group.stream()
                        .filter(finding -> finding.severity() == worst.severity())
                        .count()
                - 1;
        if (more == 0 || worst.severity() == Severity.PASS) return worst;
        String others = more == 1
                ? " One more post of the run is like it."
                : " " + more + " more posts of the run are like it.";
        return new Checked(
                worst.id(),
                worst.severity(),
                worst.part(),
                worst.message() + others,
                worst.basis(),
                worst.measure(),
                worst.remedies());
    }
}
