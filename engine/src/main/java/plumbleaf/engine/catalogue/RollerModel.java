package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * The set of wheels on one roller post of a cantilever slide gate, with its bracket.
 *
 * @param way which tubes it holds, and how
 * @param capacity up or down, service level; zero when unknown, which is never a pass
 * @param sideCapacity across the leaf at one tube, service level; zero when unknown
 * @param play between the wheels and the tube, up and down together
 * @param rolling force that keeps the leaf moving over the load on the wheels, bearings and dirt counted
 * @param standoff from the post's face to the middle of the tube
 * @param least depth of tube it takes
 * @param greatest depth of tube it takes
 * @param bolts that hold its bracket to the post
 * @param boltSize their diameter
 * @param boltsApart between their highest and their lowest row
 */
public record RollerModel(
        String id,
        String name,
        RollerWay way,
        Force capacity,
        Force sideCapacity,
        Length play,
        double rolling,
        Length standoff,
        Length least,
        Length greatest,
        int bolts,
        Length boltSize,
        Length boltsApart,
        Force weight,
        String source) {
    /** Whether its wheels run on this tube: grooved ones on a round tube alone. */
    public boolean suits(Section tube) {
        return (way == RollerWay.GROOVED) == tube.isRound() && takes(tube.depth());
    }

    /** Whether it takes a tube of this depth. */
    public boolean takes(Length depth) {
        return depth.inches() >= least.inches() - 1e-9 && depth.inches() <= greatest.inches() + 1e-9;
    }
}
