package plumbleaf.engine.line;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.quantity.Offset;

/**
 * One run laid out.
 *
 * @param posts along the walk, gate posts included; where the run joins another, that run's post is not among them
 * @param bays along the walk; none across a gate
 * @param proven whether the posts between fixed ones are proven best to the last measure; where the spacing limit changes along the run it is proven for
 *     the fewest bays and the least largest bay only
 * @param style it is built in; empty where the catalogue does not know it, and for a lone gate
 */
public record RunLayout(
        String run, RunLine line, List<Post> posts, List<Bay> bays, boolean proven, Optional<FenceStyle> style) {
    public RunLayout {
        posts = List.copyOf(posts);
        bays = List.copyOf(bays);
    }

    /** Where a bay begins in plan: at its own post, which may stand off the line at a gate that is set back. */
    public PlanPoint startOf(Bay bay) {
        return at(bay.from(), bay.start());
    }

    /** Where it ends. */
    public PlanPoint endOf(Bay bay) {
        return at(bay.to(), bay.end());
    }

    private PlanPoint at(String id, Offset station) {
        for (Post post : posts) if (post.id().equals(id) && !post.gate().isEmpty()) return post.at();
        return line.line().pointAt(station);
    }
}
