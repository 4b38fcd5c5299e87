package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.PostCheck;
import plumbleaf.engine.strength.RatedGust;

/**
 * A post, designed.
 *
 * @param length from the underside of its concrete to its top
 * @param actions every combination at grade
 * @param check steel at grade
 * @param checks how much of each check is used, wind counted whatever the basis
 * @param rated the gust at which post and footing reach their limits; empty where no wind reaches it
 */
public record PostDesign(
        Post post,
        Section section,
        FootingDesign footing,
        Length length,
        Pour concrete,
        List<CombinedAction> actions,
        PostCheck check,
        List<Checkpoint> checks,
        Optional<RatedGust> rated,
        List<Finding> findings) {
    public PostDesign {
        actions = List.copyOf(actions);
        checks = List.copyOf(checks);
        findings = List.copyOf(findings);
    }

    public String id() {
        return post.id();
    }

    PostDesign rated(RatedGust gust) {
        return new PostDesign(
                post, section, footing, length, concrete, actions, check, checks, Optional.of(gust), findings);
    }

    /** The most that is used of any check. */
    public double utilisation() {
        return checks.stream().mapToDouble(Checkpoint::utilisation).max().orElse(0);
    }
}
