package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.WorkedLine;

/** {@link YieldModes} line by line: all six, since the least of them counts. */
final class YieldWorking {
    private static final double LARGE_IN = 0.25;

    private final YieldModes modes;
    private final List<WorkedLine> lines = new ArrayList<>();

    private YieldWorking(YieldModes modes) {
        this.modes = modes;
    }

    /**
     * @param main Fem, a line above
     * @return the last line is {@code Z}, the reference value
     */
    static List<WorkedLine> of(YieldModes modes, WorkedLine main) {
        return new YieldWorking(modes).all(main);
    }

    private List<WorkedLine> all(WorkedLine fem) {
        double re = fem.value() / modes.sideBearing().psi();
        double rt = modes.mainLength().inches() / modes.sideLength().inches();
        WorkedLine bearings = add(WorkedLine.of("Re", "Fem / Fes")
                .put(fem)
                .put("Fes", modes.sideBearing().psi(), "psi")
                .gives(re));
        WorkedLine lengths = add(WorkedLine.of("Rt", "lm / ls")
                .put("lm", modes.mainLength())
                .put("ls", modes.sideLength())
                .note("in the wood over in the plate")
                .gives(rt));
        double d = modes.diameter().inches();
        double bend = 2 * modes.bendingYield().psi() * d * d;
        double lm = modes.mainLength().inches();
        double ls = modes.sideLength().inches();
        WorkedLine k1 = add(WorkedLine.of(
                        "k1",
                        "(sqrt(Re + 2 \u00d7 Re\u00b2 \u00d7 (1 + Rt + Rt\u00b2) + Rt\u00b2 \u00d7 Re\u00b3) - Re \u00d7 (1 + Rt)) / (1 + Re)")
                .put(bearings)
                .put(lengths)
                .gives((Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt))
                        / (1 + re)));
        WorkedLine k2 = add(bent(
                        "k2",
                        "sqrt(2 \u00d7 (1 + Re) + 2 \u00d7 Fyb \u00d7 (1 + 2 \u00d7 Re) \u00d7 D\u00b2 / (3 \u00d7 Fem \u00d7 lm\u00b2)) - 1",
                        bearings,
                        fem)
                .put("lm", modes.mainLength())
                .gives(Math.sqrt(2 * (1 + re) + bend * (1 + 2 * re) / (3 * fem.value() * lm * lm)) - 1));
        WorkedLine k3 = add(bent(
                        "k3",
                        "sqrt(2 \u00d7 (1 + Re) / Re + 2 \u00d7 Fyb \u00d7 (2 + Re) \u00d7 D\u00b2 / (3 \u00d7 Fem \u00d7 ls\u00b2)) - 1",
                        bearings,
                        fem)
                .put("ls", modes.sideLength())
                .gives(Math.sqrt(2 * (1 + re) / re + bend * (2 + re) / (3 * fem.value() * ls * ls)) - 1));
        WorkedLine angle = add(WorkedLine.of("Kt", "1 + 0.25 \u00d7 \u03b8 / 90")
                .put("\u03b8", modes.toGrainDeg())
                .gives(1 + 0.25 * modes.toGrainDeg() / 90));
        WorkedLine ra = add(reduction("Ra", "4", 4, angle));
        WorkedLine rb = add(reduction("Rb", "3.6", 3.6, angle));
        WorkedLine rc = add(reduction("Rc", "3.2", 3.2, angle));
        List<WorkedLine> six = List.of(
                add(WorkedLine.of("Im", "D \u00d7 lm \u00d7 Fem / Ra")
                        .put("D", modes.diameter())
                        .put("lm", modes.mainLength())
                        .put(fem)
                        .put(ra)
                        .gives(d * lm * fem.value() / ra.value(), "lb")),
                add(WorkedLine.of("Is", "D \u00d7 ls \u00d7 Fes / Ra")
                        .put("D", modes.diameter())
                        .put("ls", modes.sideLength())
                        .put("Fes", modes.sideBearing().psi(), "psi")
                        .put(ra)
                        .gives(d * ls * modes.sideBearing().psi() / ra.value(), "lb")),
                add(WorkedLine.of("II", "k1 \u00d7 D \u00d7 ls \u00d7 Fes / Rb")
                        .put(k1)
                        .put("D", modes.diameter())
                        .put("ls", modes.sideLength())
                        .put("Fes", modes.sideBearing().psi(), "psi")
                        .put(rb)
                        .gives(k1.value() * d * ls * modes.sideBearing().psi() / rb.value(), "lb")),
                add(WorkedLine.of("IIIm", "k2 \u00d7 D \u00d7 lm \u00d7 Fem / ((1 + 2 \u00d7 Re) \u00d7 Rc)")
                        .put(k2)
                        .put("D", modes.diameter())
                        .put("lm", modes.mainLength())
                        .put(fem)
                        .put(bearings)
                        .put(rc)
                        .gives(k2.value() * d * lm * fem.value() / ((1 + 2 * re) * rc.value()), "lb")),
                add(WorkedLine.of("IIIs", "k3 \u00d7 D \u00d7 ls \u00d7 Fem / ((2 + Re) \u00d7 Rc)")
                        .put(k3)
                        .put("D", modes.diameter())
                        .put("ls", modes.sideLength())
                        .put(fem)
                        .put(bearings)
                        .put(rc)
                        .gives(k3.value() * d * ls * fem.value() / ((2 + re) * rc.value()), "lb")),
                add(WorkedLine.of("IV", "D\u00b2 / Rc \u00d7 sqrt(2 \u00d7 Fem \u00d7 Fyb / (3 \u00d7 (1 + Re)))")
                        .put("D", modes.diameter())
                        .put(rc)
                        .put(fem)
                        .put("Fyb", modes.bendingYield().psi(), "psi")
                        .put(bearings)
                        .gives(
                                d
                                        * d
                                        / rc.value()
                                        * Math.sqrt(2
                                                * fem.value()
                                                * modes.bendingYield().psi()
                                                / (3 * (1 + re))),
                                "lb")));
        WorkedLine.Open least = WorkedLine.of("Z", "min(Im; Is; II; IIIm; IIIs; IV)");
        for (WorkedLine each : six) least.put(each);
        add(least.note("mode " + modes.governing().name() + " governs, Table 12.3.1A")
                .gives(modes.governing().value()));
        return lines;
    }

    private WorkedLine.Open bent(String name, String formula, WorkedLine bearings, WorkedLine fem) {
        return WorkedLine.of(name, formula)
                .put(bearings)
                .put("Fyb", modes.bendingYield().psi(), "psi")
                .put("D", modes.diameter())
                .put(fem);
    }

    /** Rd, Table 12.3.1B: below a quarter inch one for all modes. */
    private WorkedLine reduction(String name, String large, double largeIs, WorkedLine angle) {
        double d = modes.diameter().inches();
        if (d >= LARGE_IN)
            return WorkedLine.of(name, large + " \u00d7 Kt").put(angle).gives(modes.reduction(largeIs));
        return WorkedLine.of(name, "max(2.2; 10 \u00d7 D + 0.5) \u00d7 Kt")
                .put("D", d)
                .put(angle)
                .note("D in inches")
                .gives(modes.reduction(largeIs));
    }

    private WorkedLine add(WorkedLine line) {
        lines.add(line);
        return line;
    }
}
