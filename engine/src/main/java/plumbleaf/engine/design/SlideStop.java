package plumbleaf.engine.design;

import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Gravity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.SlidePost;

/** A slide leaf that runs into its stop. */
final class SlideStop {
    private static final double INCHES_PER_SECOND_PER_MPH = 17.6;

    private SlideStop() {}

    /**
     * Peak force {@code F = v sqrt(k W / g)}: all of the leaf's energy taken by the receiver's post as a cantilever along the fence and by its footing, struck at half the
     * leaf's height. The stiff end of the soil. The leaf and a rubber give too, so this is on the safe side.
     * Source: energy balance of a mass on a spring. Check: SlideGateTest, against a post that is held rigidly.
     */
    static Force peak(SlideGate gate, Speed speed) {
        double v = speed.mph() * INCHES_PER_SECOND_PER_MPH;
        double mass = gate.plan().leaf().weight().wet().pounds() / Gravity.IN_PER_S2;
        return Force.pounds(v * Math.sqrt(stiffness(gate.receiver(), height(gate)) * mass));
    }

    /** Where it strikes, over the grade of the receiver's post. */
    static Length height(SlideGate gate) {
        double low = gate.plan().leaf().outline().corners().get(1).z().inches();
        double high = gate.plan().leaf().outline().corners().get(2).z().inches();
        return Length.inches(
                Math.max(1, (low + high) / 2 - gate.receiver().grade().inches()));
    }

    private static double stiffness(SlidePost post, Length height) {
        double h = height.inches();
        double bending = h
                * h
                * h
                / (3 * post.stock().elasticModulus().psi() * post.stock().ixIn4());
        PierSpring.Motion pier = along(post).under(Force.pounds(1), Moment.poundInches(h));
        return 1 / (bending + pier.sideways().inches() + pier.turn().radians() * h);
    }

    private static PierSpring along(SlidePost post) {
        return post.foot().stiff().match(pier -> pier, planes -> planes.along(), wall -> wall.across());
    }
}
