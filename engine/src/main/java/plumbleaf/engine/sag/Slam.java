package plumbleaf.engine.sag;

import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.section.PostStock;

/** A leaf that slams shut against its latch post. */
public final class Slam {
    private static final double INCHES_PER_SECOND_PER_MPH = 17.6;

    private Slam() {}

    /**
     * Peak force of the stop on the latch post: {@code F = (v / b) sqrt(I k)}, all the leaf's energy taken up by the post and its footing.
     * Leaf, hinges and strike give too, so this is on the safe side. Holds while post and ground stay elastic.
     * Source: energy balance of a rigid leaf on a spring. Check: SlamTest.
     *
     * @param edge speed of the latch edge at the stop
     * @param leaf for its inertia about the pin and the distance of the latch from it
     * @param stiffnessLbPerIn of the latch post at the strike, see {@link #strikeStiffness}
     */
    public static Force peak(Speed edge, Leaf leaf, double stiffnessLbPerIn) {
        double edgeInPerS = edge.mph() * INCHES_PER_SECOND_PER_MPH;
        double radius = leaf.latchAt().r().inches();
        double inertia = leaf.weight().inertiaLbInS2();
        return Force.pounds(edgeInPerS / radius * Math.sqrt(inertia * stiffnessLbPerIn));
    }

    /**
     * Speed of the latch edge once wind has driven a free leaf through an angle, from the wind's work: {@code v = b sqrt(2 W / I)}, {@code W = p A r q}, the pressure square on the
     * leaf all the way, which is on the safe side. Source: work and energy of a rigid leaf. Check: SlamTest (42 x 72 in., 150 lb, 40 mph over 1 rad: 15.3 ft/s).
     *
     * @param psf p, strength level, on the gross face
     * @param areaIn2 A
     * @param armIn r, from the pins to the middle of the leaf
     * @param radians q
     * @param inertiaLbInS2 I about the pins
     * @param edgeIn b
     */
    public static Speed edgeInGust(
            double psf, double areaIn2, double armIn, double radians, double inertiaLbInS2, double edgeIn) {
        double work = psf / 144 * areaIn2 * armIn * radians;
        return Speed.mph(edgeIn * Math.sqrt(2 * work / inertiaLbInS2) / INCHES_PER_SECOND_PER_MPH);
    }

    /**
     * Force per inch of a post pushed at a height: a cantilever, {@code h^3 / 3 E I}, on a pier that shifts and turns. In pounds per inch.
     * Source: cantilever, AISC Manual Table 3-23 (from memory); pier as {@link PierSpring}. Check: SlamTest.
     *
     * @param height of the strike above grade
     */
    public static double strikeStiffness(PostStock post, BaseSpring foot, Length height) {
        double h = height.inches();
        double bending = h * h * h / (3 * post.elasticModulus().psi() * post.iyIn4());
        PierSpring.Motion pier = foot.across().under(Force.pounds(1), Moment.poundInches(h));
        return 1 / (bending + pier.sideways().inches() + pier.turn().radians() * h);
    }
}
