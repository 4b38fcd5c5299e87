package plumbleaf.engine.frame;

/**
 * What the part of a member beyond a section does to the part before it, in the member's own axes. So {@code n} is positive in tension,
 * and a positive moment turns the section on (its slope grows along the member): {@code mz = E Iz v''}, {@code my = -E Iy w''}.
 */
public record Internal(double nLb, double vyLb, double vzLb, double tLbIn, double myLbIn, double mzLbIn) {
    /** Size of the two bending moments together: what bends a round section. */
    public double bendingLbIn() {
        return Math.sqrt(myLbIn * myLbIn + mzLbIn * mzLbIn);
    }
}
