package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * What is done about the ground at a gate.
 *
 * @param regrade whether the ground a leaf would strike is shaved until it clears
 * @param landing whether a level landing is built under the swing, at the grade of the hinges
 * @param setBack how far the gate stands off the fence's line, away from the side it swings to; the fence beside it leans back to meet its posts
 */
public record GateGround(boolean regrade, boolean landing, Length setBack) {
    /** Left as it was measured, on the fence's line. */
    public static final GateGround AS_IT_IS = new GateGround(false, false, Length.ZERO);

    /** Less than this is a post's width and moves no swing. Judgement. */
    public static final Length SET_BACK_LEAST = Length.inches(12);

    /** More than this wants a return of its own in the run's legs. Judgement. */
    public static final Length SET_BACK_MOST = Length.inches(48);

    public GateGround withRegrade(boolean shaved) {
        return new GateGround(shaved, landing, setBack);
    }

    public GateGround withLanding(boolean built) {
        return new GateGround(regrade, built, setBack);
    }

    public GateGround withSetBack(Length back) {
        return new GateGround(regrade, landing, back);
    }
}
