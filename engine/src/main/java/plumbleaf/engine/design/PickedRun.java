package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;

/**
 * A run's build with what is picked before its posts are placed.
 *
 * @param post what its own posts are of
 * @param terminal what its end, corner and pull posts are of
 * @param panel what a whole panel with its brackets fills between two posts; empty for goods without a length of their own
 * @param hole diameter
 * @param depth where the job fixes it
 * @param sides parts with posts of their own
 */
public record PickedRun(
        String run,
        PostStock post,
        PostStock terminal,
        Optional<Length> panel,
        Length hole,
        Stated<Length> depth,
        List<OfSide> sides) {
    public PickedRun {
        sides = List.copyOf(sides);
    }

    /** The posts between two stations, terminals among them. */
    public record OfSide(Length from, Length to, PostStock post) {}

    PostStock postAt(double stationIn) {
        return atSide(stationIn).orElse(post);
    }

    PostStock terminalAt(double stationIn) {
        return atSide(stationIn).orElse(terminal);
    }

    private Optional<PostStock> atSide(double stationIn) {
        return sides.stream()
                .filter(side -> side.from().inches() <= stationIn
                        && stationIn <= side.to().inches())
                .findFirst()
                .map(OfSide::post);
    }
}
