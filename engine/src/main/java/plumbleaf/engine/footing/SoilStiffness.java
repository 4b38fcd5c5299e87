package plumbleaf.engine.footing;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;

/** How stiff soil pushes back on a pier: growing with depth, as sand does, or the same all the way down, as stiff clay does. */
public sealed interface SoilStiffness {
    <T> T match(Function<Growing, T> growing, Function<Constant, T> constant);

    SoilStiffness times(double factor);

    /** Spring at grade of a pier in this soil, down from grade. */
    PierSpring spring(HoleSize hole);

    /**
     * Spring at grade where the top of the ground counts for nothing: a shorter pier below it, seen from above.
     *
     * @param looseTop where it reaches the foot of the pier, an inch of ground is left to hold it: hardly anything, so that what stands in it
     *     moves beyond every limit
     */
    default PierSpring spring(HoleSize hole, Length looseTop) {
        double heldIn = Math.max(1, hole.depth().inches() - looseTop.inches());
        return spring(new HoleSize(hole.diameter(), Length.inches(heldIn)))
                .seenFromAbove(hole.depth().inches() - heldIn);
    }

    /**
     * Modulus growing with depth, {@code k D = n_h z}: matrix {@code n_h [[L2/2, -L3/3], [-L3/3, L4/4]]}. The diameter does not count: deeper, not
     * wider. Holds for a pier that does not bend: {@code L <= 2 (EI/n_h)^(1/5)}.
     * Source: statics of a rigid pier on springs, as Broms 1964 (from memory). Check: PierCheck (R2, R4).
     */
    record Growing(SoilRate rate) implements SoilStiffness {
        public Growing {
            if (rate.isZero()) throw new IllegalArgumentException("n_h must be above zero");
        }

        @Override
        public <T> T match(Function<Growing, T> growing, Function<Constant, T> constant) {
            return growing.apply(this);
        }

        @Override
        public SoilStiffness times(double factor) {
            return new Growing(rate.times(factor));
        }

        @Override
        public PierSpring spring(HoleSize hole) {
            double nh = rate.poundsPerCubicInch();
            double l = hole.depth().inches();
            return new PierSpring(nh * l * l / 2, -nh * l * l * l / 3, nh * l * l * l * l / 4);
        }
    }

    /**
     * The same modulus all the way down: matrix {@code k D [[L, -L2/2], [-L2/2, L3/3]]}.
     * Source: statics of a rigid pier on springs, as Broms 1964 (from memory). Check: PierCheck (R1, R3).
     *
     * @param perLength k D, force per inch of pier and inch of movement; for clay 67 su whatever the diameter
     */
    record Constant(Stress perLength) implements SoilStiffness {
        public Constant {
            if (!(perLength.psi() > 0)) throw new IllegalArgumentException("k D must be above zero");
        }

        @Override
        public <T> T match(Function<Growing, T> growing, Function<Constant, T> constant) {
            return constant.apply(this);
        }

        @Override
        public SoilStiffness times(double factor) {
            return new Constant(perLength.times(factor));
        }

        @Override
        public PierSpring spring(HoleSize hole) {
            double kd = perLength.psi();
            double l = hole.depth().inches();
            return new PierSpring(kd * l, -kd * l * l / 2, kd * l * l * l / 3);
        }
    }
}
