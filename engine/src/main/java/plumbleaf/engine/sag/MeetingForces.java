package plumbleaf.engine.sag;

import plumbleaf.engine.action.Combination;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/**
 * What goes through the place where the leaves of a pair meet, in one case of the closed gate. Forces act on a leaf, + outward; those between the leaves are
 * the ones on leaf a, and leaf b feels the opposite.
 *
 * @param rodA on leaf a from its own rod; nothing where it has none
 * @param latch between the leaves at the latch
 * @param stripFoot between the leaves at the foot of the stop strip
 * @param stripTop the same at its top
 * @param stopA on leaf a from the centre stop
 * @param keeperA on the top of leaf a from a keeper overhead
 * @param footA how far the foot of leaf a moves outward there
 * @param topA the same of its top
 */
public record MeetingForces(
        Combination combination,
        WindWay wind,
        Force rodA,
        Force rodB,
        Force latch,
        Force stripFoot,
        Force stripTop,
        Force stopA,
        Force stopB,
        Force keeperA,
        Force keeperB,
        Offset footA,
        Offset footB,
        Offset topA,
        Offset topB) {
    /** The harder pressed of its rods. */
    public Force rod() {
        return Force.pounds(Math.max(Math.abs(rodA.pounds()), Math.abs(rodB.pounds())));
    }

    /** What the ground takes where they meet, through rods and centre stop, + outward on the leaves. */
    public Force ground() {
        return Force.pounds(rodA.pounds() + rodB.pounds() + stopA.pounds() + stopB.pounds());
    }

    /** How far the top of either leaf goes out of plane, without sign. */
    public Offset top() {
        return Offset.inches(Math.max(Math.abs(topA.inches()), Math.abs(topB.inches())));
    }
}
