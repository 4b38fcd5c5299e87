package plumbleaf.engine.job;

/**
 * What the right leaf of a pair, seen from outside, is built of where it is not as the left one; what is left open is alike. Posts and holes are said with the
 * gate's own, the left ones first.
 *
 * @param frame section of its frame
 * @param flat whether a rectangular tube of its own lies flat
 * @param bracing what keeps it square
 * @param joint of its corners
 * @param hinge model of its hinges
 * @param fill what fills it
 */
public record RightLeaf(
        Stated<String> frame,
        boolean flat,
        Stated<Bracing> bracing,
        Stated<Joint> joint,
        Stated<String> hinge,
        Stated<LeafFill> fill) {
    /** As the left one. */
    public static final RightLeaf ALIKE =
            new RightLeaf(Stated.open(), false, Stated.open(), Stated.open(), Stated.open(), Stated.open());

    public boolean isAlike() {
        return equals(ALIKE);
    }
}
