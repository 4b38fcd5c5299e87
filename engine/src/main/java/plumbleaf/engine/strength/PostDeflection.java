package plumbleaf.engine.strength;

import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;

/** How far the top of a post moves under a push. */
public final class PostDeflection {
    private PostDeflection() {}

    /**
     * Bending alone: {@code F z2 (3 H - z) / (6 E I)}, z at most H. Source: closed form of a cantilever. Check: PostCheckTest.
     *
     * @param push F
     * @param height z, of the push above grade
     * @param top H, of the place that is looked at
     */
    public static Offset ofPost(Force push, Length height, Length top, double inertiaIn4) {
        double z = Math.min(height.inches(), top.inches());
        double ei = Steel.ELASTIC_MODULUS.psi() * inertiaIn4;
        return Offset.inches(push.pounds() * z * z * (3 * top.inches() - z) / (6 * ei));
    }

    /** The footing's share: it moves aside and turns. */
    public static Offset ofFooting(Force push, Length height, Length top, PierSpring spring) {
        PierSpring.Motion motion = spring.under(push, Moment.poundInches(push.pounds() * height.inches()));
        return motion.sideways().plus(Offset.inches(motion.turn().radians() * top.inches()));
    }

    /** Both together. */
    public static Offset atTop(Force push, Length height, Length top, double inertiaIn4, PierSpring spring) {
        return ofPost(push, height, top, inertiaIn4).plus(ofFooting(push, height, top, spring));
    }
}
