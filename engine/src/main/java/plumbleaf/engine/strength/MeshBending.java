package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Stress;

/**
 * Welded wires in an opening of a frame, bent by wind both ways at once: a grid that gives way only when the wires of both ways do carries
 * {@code 8 m1 / (s1 H2) + 8 m2 / (s2 W2)} on its face, for any split of the load between them is a safe one. Source: lower-bound theorem of plasticity, as in Neal,
 * The Plastic Methods of Structural Analysis, 3rd ed., chapter 2, from memory; AISC 360-22 F11. Check: MeshBendingTest.
 *
 * @param wire its diameter
 * @param pitch from wire to wire along the leaf
 * @param upright from wire to wire up it
 * @param across width of the opening
 * @param up its height
 */
public record MeshBending(Length wire, Length pitch, Length upright, Length across, Length up) {
    /** Plain steel; hard-drawn wire has more. Source: ASTM A36, from memory. */
    private static final Stress YIELD = Stress.ksi(36);

    /** {@code Mn <= 1.6 Fy S} of a round bar, less than its {@code Fy Z}. Source: AISC 360-22 F11.1. */
    private static final double MOST = 1.6;

    /** Share of what the wires may carry. */
    public double ratio(Pressure wind) {
        return wind.inPsi() / allowedPsi();
    }

    private double allowedPsi() {
        double d = wire.inches();
        double moment = MOST * YIELD.psi() * Math.PI * d * d * d / 32 / TubeStrength.SAFETY;
        return 8 * moment * (share(pitch, up) + share(upright, across));
    }

    private static double share(Length apart, Length span) {
        return 1 / (apart.inches() * span.inches() * span.inches());
    }
}
