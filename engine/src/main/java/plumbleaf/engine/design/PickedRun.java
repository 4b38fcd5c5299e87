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
 * @param sides parts with posts or holes of their own
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

    /**
     * The posts between two stations, terminals among them.
     *
     * @param post where they are of their own section
     */
    public record OfSide(Length from, Length to, Stated<PostStock> post, Length hole, Stated<Length> depth) {}

    PostStock postAt(double stationIn) {
        return sideAt(stationIn).map(side -> side.post().or(post)).orElse(post);
    }

    PostStock terminalAt(double stationIn) {
        return sideAt(stationIn).map(side -> side.post().or(terminal)).orElse(terminal);
    }

    Length holeAt(double stationIn) {
        return sideAt(stationIn).map(OfSide::hole).orElse(hole);
    }

    Stated<Length> depthAt(double stationIn) {
        return sideAt(stationIn).map(OfSide::depth).orElse(depth);
    }

    private Optional<OfSide> sideAt(double stationIn) {
        return sides.stream()
                .filter(side -> side.from().inches() <= stationIn
                        && stationIn <= side.to().inches())
                .findFirst();
    }
}
