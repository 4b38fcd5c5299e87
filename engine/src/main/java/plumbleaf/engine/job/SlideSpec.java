package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.Support;

/**
 * How a cantilever slide gate is to be made. The leaf runs level beside the line of its posts, on the wheels of two roller posts on the side it opens to; its tail
 * behind them keeps it from tipping.
 *
 * @param tail from the opening's face at the front roller post to the end of the tail, closed
 * @param spacing between the two roller posts, centre to centre; left open, as far apart as the tail allows
 * @param overlap how far the nose reaches past the other face, into its receiver
 * @param beside on which side of its posts the leaf runs, seen from outside: {@code in} is behind them
 * @param rollers wheel set in the catalogue; left open, the first that takes the frame's tube
 * @param uprights the most from one upright of the frame to the next
 * @param mouthUp how far the nose may be too low or too high and still enter the receiver
 * @param mouthAcross the same across the leaf
 * @param powered whether an operator is to move it
 * @param rearPost what holds the rear roller post; the front one is the gate's hinge post, the receiver's its latch post
 */
public record SlideSpec(
        Length tail,
        Stated<Length> spacing,
        Length overlap,
        SwingWay beside,
        Stated<String> rollers,
        Length uprights,
        Length mouthUp,
        Length mouthAcross,
        boolean powered,
        Support rearPost) {
    /** Share of the opening that the tail usually has. Common practice, no source. */
    private static final double TAIL = 0.5;

    private static final double STEP_IN = 6;

    private static final double LEAST_TAIL_IN = 36;

    /** Tube that stays behind the rear rollers, so that the leaf never leaves them. Judgement. */
    public static final Length BEHIND_ROLLERS = Length.inches(6);

    /** What most yards would build: a tail of half the opening up to the next 6 in., behind its posts, uprights every 5 ft. Common practice, no source. */
    public static SlideSpec usual(Length opening) {
        return new SlideSpec(
                usualTail(opening),
                Stated.open(),
                Length.inches(4),
                SwingWay.IN,
                Stated.open(),
                Length.feet(5),
                Length.inches(1),
                Length.inches(3),
                false,
                new Support.NewFooting());
    }

    /** Half the opening, up to the next 6 in., and never under 3 ft, so that two sets of rollers find room. Common practice, no source. */
    public static Length usualTail(Length opening) {
        return Length.inches(Math.max(LEAST_TAIL_IN, Math.ceil(TAIL * opening.inches() / STEP_IN - 1e-9) * STEP_IN));
    }

    /**
     * Between the two roller posts: as asked, or as far apart as leaves 6 in. of tail behind the rear rollers, half a wheel cage and a stop. Judgement.
     *
     * @param post the size of the front one along the run
     */
    public Length spacingOn(Length post) {
        double most = tail.inches() - post.inches() / 2 - BEHIND_ROLLERS.inches();
        return spacing.value().orElseGet(() -> Length.inches(Math.max(0, most)));
    }

    public SlideSpec withTail(Length longer) {
        return new SlideSpec(
                longer, spacing, overlap, beside, rollers, uprights, mouthUp, mouthAcross, powered, rearPost);
    }

    public SlideSpec withRollers(String id) {
        return new SlideSpec(
                tail, spacing, overlap, beside, Stated.of(id), uprights, mouthUp, mouthAcross, powered, rearPost);
    }
}
