package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Force;

/**
 * What a leaf weighs and where.
 *
 * @param frame of all members
 * @param hardware hinges, latch and bolts
 * @param wet whole leaf with wood at 28 %: the dead load
 * @param dry whole leaf with wood at 9 %
 * @param centreOfGravity of the wet leaf
 * @param inertiaLbInS2 mass moment of inertia of the wet leaf about the pin axis, lbf in s2
 */
public record LeafWeight(
        Force frame, Force hardware, Force wet, Force dry, Place centreOfGravity, double inertiaLbInS2) {
    /** More than one person alone should lift. Common practice, no source. */
    public static final Force ONE_PERSON = Force.pounds(50);

    public boolean takesTwo() {
        return wet.compareTo(ONE_PERSON) > 0;
    }
}
