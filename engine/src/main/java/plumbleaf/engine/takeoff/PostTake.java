package plumbleaf.engine.takeoff;

import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * A new post as it is bought and set.
 *
 * @param id {@code P7}
 * @param length from its foot to its top
 * @param hole diameter; zero where nothing is dug
 * @param depth from finished grade to the underside of the concrete
 * @param gravel dug below the concrete
 */
public record PostTake(
        String id,
        String run,
        boolean atGate,
        Section section,
        Length length,
        Length hole,
        Length depth,
        Length gravel) {
    public boolean isDug() {
        return !hole.isZero() && !depth.isZero();
    }

    /** Area of its outside, which takes no concrete. */
    public Area outline() {
        double d = section.depth().inches();
        return Area.squareInches(
                section.isRound() ? Math.PI * d * d / 4 : d * section.width().inches());
    }

    /** How deep the crew digs. */
    public Length dug() {
        return depth.plus(gravel);
    }
}
