package plumbleaf.engine.frame;

import java.util.List;
import plumbleaf.engine.quantity.Gravity;

/** How fast a frame shakes. */
public final class Vibration {
    private static final int MOST_TURNS = 200;

    /** The frequency is found when a turn changes its square by less than this share. */
    private static final double NEAR = 1e-12;

    private Vibration() {}

    /**
     * Lowest natural frequency, {@code w2 = u K u / u M u} (Rayleigh's quotient) of the shape that inverse iteration {@code K u' = M u} settles on; {@code f = w /
     * 2 pi}. The mass of every load that acts down lies at nodes, half a piece's at each end, and moves alike in all three directions; it has no
     * rotary inertia. With pieces of a sixth of a cantilever the frequency comes out about 1 % low. Undamped, small movements.
     * Source: Rayleigh's quotient and inverse iteration, any text on structural dynamics. Check: VibrationCheck.
     *
     * @param weights loads down, z: they are the masses
     * @return cycles a second, with what holds that shape and what goes along with it
     */
    public static Mode lowest(FrameModel model, LoadCase weights) {
        Assembly assembly = new Assembly(model);
        int directions = assembly.unknown.length;
        double[] mass = masses(assembly, weights.loads());
        double[] shape = new double[directions];
        for (int d = 0; d < directions; d++) shape[d] = mass[d] * (1 + 0.25 * (d % 3) + 0.01 * Math.floor(d / 6.0));
        double[] none = new double[directions];
        double squared = 0;
        Mode mode = new Mode(0, 0, 0);
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            double[] force = new double[directions];
            for (int d = 0; d < directions; d++) force[d] = mass[d] * shape[d];
            double[] moved = assembly.movements(force, none);
            double strain = 0;
            double moving = 0;
            for (int d = 0; d < directions; d++) {
                strain += moved[d] * force[d];
                moving += mass[d] * moved[d] * moved[d];
            }
            if (!(moving > 0)) return mode;
            double next = strain / moving;
            boolean found = Math.abs(next - squared) <= NEAR * next;
            squared = next;
            mode = mode(moved, next, moving);
            double size = Math.sqrt(moving);
            for (int d = 0; d < directions; d++) shape[d] = moved[d] / size;
            if (found) break;
        }
        return mode;
    }

    private static Mode mode(double[] shape, double squared, double moving) {
        double most = 0;
        for (int d = 0; d < shape.length; d++) if (d % 6 < 3) most = Math.max(most, Math.abs(shape[d]));
        double mass = moving / (most * most);
        return new Mode(Math.sqrt(squared) / (2 * Math.PI), squared * mass, mass * Gravity.IN_PER_S2);
    }

    /** Mass of every node in its three directions of shift; turning has none. */
    private static double[] masses(Assembly assembly, List<Load> loads) {
        double[] pounds = new double[assembly.model.nodes().size()];
        for (Load load : loads) {
            boolean known = load.match(
                    at -> add(pounds, assembly.node(at.node()), -at.forceLb().z()),
                    uniform -> spread(assembly, pounds, uniform),
                    point -> spread(
                            assembly,
                            pounds,
                            point.member(),
                            point.atIn(),
                            -point.forceLb().z()),
                    settlement -> true);
            if (!known) throw new IllegalStateException("A weight was not placed");
        }
        double[] mass = new double[assembly.unknown.length];
        for (int node = 0; node < pounds.length; node++)
            for (int d = 0; d < 3; d++) mass[6 * node + d] = pounds[node] / Gravity.IN_PER_S2;
        return mass;
    }

    private static boolean add(double[] pounds, int node, double weight) {
        pounds[node] += Math.max(0, weight);
        return true;
    }

    private static boolean spread(Assembly assembly, double[] pounds, Load.Uniform load) {
        double length = assembly.elements.get(assembly.member(load.member())).lengthIn;
        double from = Math.min(load.fromIn(), length);
        double to = Math.min(load.toIn(), length);
        return spread(
                assembly,
                pounds,
                load.member(),
                (from + to) / 2,
                -load.perInchLb().z() * (to - from));
    }

    private static boolean spread(Assembly assembly, double[] pounds, String member, double atIn, double weight) {
        Element element = assembly.elements.get(assembly.member(member));
        double share = atIn / element.lengthIn;
        return add(pounds, assembly.start(element), weight * (1 - share))
                && add(pounds, assembly.end(element), weight * share);
    }
}
