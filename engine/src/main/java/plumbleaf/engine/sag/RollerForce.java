package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Force;

/**
 * What the leaf does to the rollers of one post.
 *
 * @param down + where it presses on the wheel below, - where it lifts against the one above
 * @param acrossLow push on the wheels at the bottom tube, + outward
 * @param acrossHigh push on the wheels at the top tube, + outward
 */
public record RollerForce(Force down, Force acrossLow, Force acrossHigh) {
    /** The larger of the two pushes across, without its sign. */
    public Force across() {
        return Force.pounds(Math.max(Math.abs(acrossLow.pounds()), Math.abs(acrossHigh.pounds())));
    }
}
