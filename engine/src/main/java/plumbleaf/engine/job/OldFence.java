package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A fence to be taken out.
 *
 * @param kind what it is, in words
 * @param pitch from post to post
 * @param concrete whether its posts stand in concrete
 * @param perFoot weight of a foot of it, posts counted, concrete not
 * @param plugDiameter of the concrete of one post
 * @param plugDepth of it
 * @param plugs what becomes of its concrete
 * @param run on whose line it stands, where it does
 * @param from station of its first post there
 * @param treated whether its wood is treated or painted, and so kept apart
 */
public record OldFence(
        String kind,
        Length length,
        Length pitch,
        boolean concrete,
        Force perFoot,
        Length plugDiameter,
        Length plugDepth,
        PlugFate plugs,
        Stated<String> run,
        Length from,
        boolean treated) {
    /** Rounding of a length over a pitch. */
    private static final double ROUNDING = 1e-9;

    /** Whole pitches that cover the length, and one. */
    public int posts() {
        return pitch.isZero() ? 0 : (int) Math.ceil(length.inches() / pitch.inches() - ROUNDING) + 1;
    }

    OldFence withPlugsPulled() {
        return new OldFence(
                kind, length, pitch, concrete, perFoot, plugDiameter, plugDepth, PlugFate.PULL, run, from, treated);
    }

    /** Plugs that leave with it. */
    public int pulled() {
        return concrete && plugs == PlugFate.PULL ? posts() : 0;
    }

    /** Plugs that stay in the line of a run, its last post at its own end. */
    public List<Plug> left() {
        List<Plug> left = new ArrayList<>();
        if (!concrete || plugs == PlugFate.PULL || run.value().isEmpty()) return left;
        for (int i = 0; i < posts(); i++) {
            double station = from.inches() + Math.min(i * pitch.inches(), length.inches());
            left.add(new Plug(run.value().get(), new Length(station), plugDiameter, plugDepth, PlugFate.LEAVE));
        }
        return left;
    }
}
