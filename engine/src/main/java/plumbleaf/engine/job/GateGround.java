package plumbleaf.engine.job;

/**
 * What is done to the ground at a gate.
 *
 * @param regrade whether the ground a leaf would strike is shaved until it clears
 */
public record GateGround(boolean regrade) {
    /** Left as it was measured. */
    public static final GateGround AS_IT_IS = new GateGround(false);

    public GateGround withRegrade(boolean shaved) {
        return new GateGround(shaved);
    }
}
