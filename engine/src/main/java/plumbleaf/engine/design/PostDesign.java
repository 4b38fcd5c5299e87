package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.PostCheck;
import plumbleaf.engine.strength.RatedGust;

/**
 * A post, designed.
 *
 * @param footing what is dug or driven; empty where it stands on a slab, on a wall or stood before
 * @param held what holds it where nothing is dug, with its own checks
 * @param length from its foot to its top; zero where hinges go on a wall and there is no post
 * @param wind of the fence beside it, as worked out; empty where none reaches it
 * @param actions every combination at grade
 * @param check steel at grade
 * @param checks how much of each check is used, wind counted whatever the basis
 * @param rated the gust at which post and footing reach their limits; empty where no wind reaches it
 */
public record PostDesign(
        Post post,
        PostStock section,
        Optional<FootingDesign> footing,
        HeldPost held,
        Length length,
        Pour concrete,
        Optional<WindWork> wind,
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
                post,
                section,
                footing,
                held,
                length,
                concrete,
                wind,
                actions,
                check,
                checks,
                Optional.of(gust),
                findings);
    }

    /** What holds it, as papers name it: {@code F7}. */
    public String footingId() {
        return "F" + post.id().substring(1);
    }

    /** Diameter of its hole; zero where nothing is dug. */
    public Length hole() {
        boolean digs = post.support()
                .match(dug -> true, driven -> false, plate -> false, socket -> false, wall -> false, old -> false);
        return digs ? footing.map(is -> is.hole().diameter()).orElse(Length.ZERO) : Length.ZERO;
    }

    /** How deep it stands in the ground or in its socket; zero where it stands on top, or nobody knows. */
    public Length depth() {
        return post.support()
                .match(
                        dug -> footing.map(is -> is.hole().depth()).orElse(Length.ZERO),
                        driven -> driven.depth(),
                        plate -> Length.ZERO,
                        socket -> socket.depth(),
                        wall -> Length.ZERO,
                        existing -> existing.embedment());
    }

    /** Why it stands as deep as it does. */
    public String depthBy() {
        return post.support()
                .match(
                        dug -> footing.map(is -> is.governedBy().key()).orElse(""),
                        driven -> "given",
                        plate -> "the slab",
                        socket -> "the socket",
                        wall -> "the wall",
                        existing -> "as found");
    }

    /** Its strength at grade in the governing case, line by line. */
    public List<WorkedLine> atGrade() {
        return PostLinks.lines(this);
    }

    /** The most that is used of any check. */
    public double utilisation() {
        return checks.stream().mapToDouble(Checkpoint::utilisation).max().orElse(0);
    }
}
