package plumbleaf.engine.sag;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.PostStock;

/** A leaf that slams shut against its latch post. */
public final class Slam {
    private static final double INCHES_PER_SECOND_PER_MPH = 17.6;

    /** A closer takes this long, at least, from 90 degrees to 12 degrees from the latch. Source: 2010 ADA Standards 404.2.8.1. */
    private static final double CLOSER_SECONDS = 5;

    private static final double CLOSER_DEG = 90 - 12;

    private Slam() {}

    /** Speed at which the latch edge of a leaf reaches its stop: that of a push by hand, or of its closer where that is less. */
    public static Speed edge(Gate gate, Leaf leaf) {
        Speed hand = gate.loads().slamSpeed();
        Speed checked = checked(leaf.latchAt().r().size());
        return gate.hinges().closer() && checked.compareTo(hand) < 0 ? checked : hand;
    }

    /**
     * Speed of the latch edge under a closer: {@code v = b q / t}, q = 78 degrees in t = 5 s, the fastest that a closer may be set to. It stops being true where the last 12 degrees, which a
     * closer sets by a screw of their own, are let run faster. Source: 2010 ADA Standards 404.2.8.1; a closer set so on a gate nobody needs to reach by wheelchair is common practice, no source.
     * Check: SlamTest (b = 48 in.: 13.1 in./s).
     */
    static Speed checked(Length edge) {
        return Speed.mph(edge.inches() * CLOSER_DEG * Math.PI / 180 / CLOSER_SECONDS / INCHES_PER_SECOND_PER_MPH);
    }

    /** {@link #edge} of a leaf that its closer slows, for the calculation book. */
    public static Optional<WorkedLine> closer(Gate gate, Leaf leaf) {
        Speed edge = edge(gate, leaf);
        if (!gate.hinges().closer() || edge.compareTo(gate.loads().slamSpeed()) >= 0) return Optional.empty();
        return Optional.of(WorkedLine.of("V", "b \u00d7 q / t / 17.6")
                .put("b", leaf.latchAt().r().size())
                .put("q", CLOSER_DEG * Math.PI / 180, "rad")
                .put("t", CLOSER_SECONDS)
                .note("its closer, t seconds from 90 to 12 degrees and no faster after, 2010 ADA Standards 404.2.8.1")
                .gives(edge.mph(), "mph"));
    }

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

    /** {@link #peak} line by line for the calculation book: {@code v} and {@code F}. */
    public static List<WorkedLine> lines(Speed edge, Leaf leaf, double stiffnessLbPerIn) {
        WorkedLine v = WorkedLine.of("v", "17.6 \u00d7 V")
                .put("V", edge.mph(), "mph")
                .note("17.6 in./s to each mph")
                .gives(edge.mph() * INCHES_PER_SECOND_PER_MPH, "in./s");
        return List.of(
                v,
                WorkedLine.of("F", "v / b \u00d7 sqrt(I \u00d7 k)")
                        .put(v)
                        .put("b", leaf.latchAt().r().inches(), "in.")
                        .put("I", leaf.weight().inertiaLbInS2(), "lb-in-s\u00b2")
                        .put("k", stiffnessLbPerIn, "lb/in.")
                        .note("b from the pins to the latch, I of the leaf about the pins")
                        .gives(peak(edge, leaf, stiffnessLbPerIn)));
    }

    /** {@link #strikeStiffness} line by line for the calculation book; the last is {@code k}. */
    public static List<WorkedLine> strike(PostStock post, BaseSpring foot, Length height) {
        PierSpring pier = foot.across();
        double h = height.inches();
        double e = post.elasticModulus().psi();
        double determinant = pier.lateralLbPerIn() * pier.rotationalLbIn() - pier.couplingLb() * pier.couplingLb();
        PierSpring.Motion motion = pier.under(Force.pounds(1), Moment.poundInches(h));
        WorkedLine bends = WorkedLine.of("fb", "h\u00b3 / (3 \u00d7 E \u00d7 I)")
                .put("h", height)
                .put("E", e, "psi")
                .put("I", post.iyIn4(), "in4")
                .note("inches to each pound, the post as a cantilever")
                .gives(h * h * h / (3 * e * post.iyIn4()));
        WorkedLine d = WorkedLine.of("D", "ka \u00d7 kb - kc\u00b2")
                .put("ka", pier.lateralLbPerIn(), "lb/in.")
                .put("kb", pier.rotationalLbIn(), "lb-in/rad")
                .put("kc", pier.couplingLb(), "lb")
                .note("of the footing, stiff soil")
                .gives(determinant);
        WorkedLine y = WorkedLine.of("y", "(kb - kc \u00d7 h) / D")
                .put("kb", pier.rotationalLbIn(), "lb-in/rad")
                .put("kc", pier.couplingLb(), "lb")
                .put("h", height)
                .put(d)
                .note("its shift to each pound")
                .gives(motion.sideways().inches());
        WorkedLine turn = WorkedLine.of("\u03b8", "(ka \u00d7 h - kc) / D")
                .put("ka", pier.lateralLbPerIn(), "lb/in.")
                .put("h", height)
                .put("kc", pier.couplingLb(), "lb")
                .put(d)
                .note("its turn to each pound")
                .gives(motion.turn().radians());
        return List.of(
                bends,
                d,
                y,
                turn,
                WorkedLine.of("k", "1 / (fb + y + \u03b8 \u00d7 h)")
                        .put(bends)
                        .put(y)
                        .put(turn)
                        .put("h", height)
                        .gives(strikeStiffness(post, foot, height), "lb/in."));
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
