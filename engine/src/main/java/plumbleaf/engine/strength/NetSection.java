package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

/** A post where bolts go through it. */
public final class NetSection {
    /** A hole counts wider than it is drilled. Source: AISC 360-22 B4.3b. */
    private static final Length DAMAGE = Length.inches(1 / 16.0);

    private NetSection() {}

    /**
     * Bending left to a post drilled through both its outermost walls: {@code Fy (Z - t dh (D - t)) / 1.67}, dh the hole and 1/16 in., as if all of the hole lay
     * at the outermost fibre. A hole at the neutral axis takes less away; both are judged so. Source: AISC 360-22 B4.3b for the width; statics. Check: NetSectionTest.
     */
    public static Moment allowable(Section post, Length hole) {
        double t = post.usedWall().inches();
        double d = post.depth().inches();
        double gone = t * (hole.inches() + DAMAGE.inches()) * (d - t);
        double full = TubeStrength.of(post).allowableX().poundInches();
        return Moment.poundInches(full * Math.max(0, post.zxIn3() - gone) / post.zxIn3());
    }
}
