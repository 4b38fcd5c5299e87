package plumbleaf.engine.line;

import java.util.Optional;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;

/** How wide a run's own posts and holes are, from the builds that were pinned or are being tried. */
public interface PostSizes {
    /** Width along the run of a run's own posts: line, end and corner. */
    Length post(Run run);

    /** Width of a run's end and corner posts. */
    default Length terminal(Run run) {
        return post(run);
    }

    /** Width of a run's own post at a station, where a side has posts of its own. */
    default Length postAt(Run run, double stationIn) {
        return post(run);
    }

    /** Width of an end or corner post at a station likewise. */
    default Length terminalAt(Run run, double stationIn) {
        return terminal(run);
    }

    /** What a whole panel with its brackets fills between the faces of two posts, along the grade; empty for goods without a length of their own. */
    default Optional<Length> panel(Run run) {
        return Optional.empty();
    }

    /** Whether a run's posts are round, so that a rail between them is coped. */
    default boolean isRound(Run run) {
        return true;
    }

    /** Diameter of the hole of a run's posts; zero where nothing is dug. */
    Length hole(Run run);

    /** Diameter of the hole of a run's own post at a station, where a side has holes of its own. */
    default Length holeAt(Run run, double stationIn) {
        return hole(run);
    }
}
