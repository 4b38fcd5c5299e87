package plumbleaf.engine.footing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;

/** How stiff soil pushes back on a pier: growing with depth, as sand does, or the same all the way down, as stiff clay does. */
public sealed interface SoilStiffness {
    <T> T match(Function<Growing, T> growing, Function<Constant, T> constant);

    SoilStiffness times(double factor);

    /** Spring at grade of a pier in this soil, down from grade. */
    PierSpring spring(HoleSize hole);

    /** {@link #spring(HoleSize)} line by line for the calculation book: {@code ka}, {@code kc}, {@code kb}. */
    List<WorkedLine> lines(HoleSize hole);

    /** {@link #spring(HoleSize, Length)} line by line: the last three are {@code ka}, {@code kc}, {@code kb} at grade. */
    default List<WorkedLine> lines(HoleSize hole, Length looseTop) {
        double heldIn = Math.max(1, hole.depth().inches() - looseTop.inches());
        double upIn = hole.depth().inches() - heldIn;
        List<WorkedLine> below = lines(new HoleSize(hole.diameter(), Length.inches(heldIn)));
        if (upIn == 0) return below;
        PierSpring above = spring(hole, looseTop);
        List<WorkedLine> lines = new ArrayList<>();
        for (WorkedLine line : below)
            lines.add(new WorkedLine(
                    line.symbol() + "'",
                    line.formula(),
                    line.numbers(),
                    line.value(),
                    line.unit(),
                    line.note() + ", below the loose top"));
        lines.add(
                WorkedLine.of("ka", "ka'").put(lines.get(0)).note("at grade").gives(above.lateralLbPerIn(), "lb/in."));
        lines.add(WorkedLine.of("kc", "kc' - u \u00d7 ka'")
                .put(lines.get(1))
                .put("u", upIn, "in.")
                .put(lines.get(0))
                .note("seen from grade, u above")
                .gives(above.couplingLb(), "lb"));
        lines.add(WorkedLine.of("kb", "kb' - 2 \u00d7 u \u00d7 kc' + u\u00b2 \u00d7 ka'")
                .put(lines.get(2))
                .put("u", upIn, "in.")
                .put(lines.get(1))
                .put(lines.get(0))
                .gives(above.rotationalLbIn(), "lb-in/rad"));
        return List.copyOf(lines);
    }

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

        @Override
        public List<WorkedLine> lines(HoleSize hole) {
            PierSpring spring = spring(hole);
            return List.of(
                    put("ka", "nh \u00d7 L\u00b2 / 2", hole).gives(spring.lateralLbPerIn(), "lb/in."),
                    put("kc", "-nh \u00d7 L\u00b3 / 3", hole).gives(spring.couplingLb(), "lb"),
                    put("kb", "nh \u00d7 L\u00b2 \u00d7 L\u00b2 / 4", hole)
                            .gives(spring.rotationalLbIn(), "lb-in/rad"));
        }

        private WorkedLine.Open put(String symbol, String formula, HoleSize hole) {
            return WorkedLine.of(symbol, formula)
                    .put("nh", rate.poundsPerCubicInch(), "lb/in\u00b3")
                    .put("L", hole.depth())
                    .note("modulus growing with depth");
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

        @Override
        public List<WorkedLine> lines(HoleSize hole) {
            PierSpring spring = spring(hole);
            return List.of(
                    put("ka", "kD \u00d7 L", hole).gives(spring.lateralLbPerIn(), "lb/in."),
                    put("kc", "-kD \u00d7 L\u00b2 / 2", hole).gives(spring.couplingLb(), "lb"),
                    put("kb", "kD \u00d7 L\u00b3 / 3", hole).gives(spring.rotationalLbIn(), "lb-in/rad"));
        }

        private WorkedLine.Open put(String symbol, String formula, HoleSize hole) {
            return WorkedLine.of(symbol, formula)
                    .put("kD", perLength.psi(), "psi")
                    .put("L", hole.depth())
                    .note("the same modulus all the way down");
        }
    }
}
