package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * A drop rod that a leaf pushes sideways, between its lowest guide and the mouth of its sleeve.
 *
 * @param moment at the mouth of the sleeve
 * @param nominal what the bar carries at most
 */
public record RodBending(RodModel rod, Length exposed, Force push, Moment moment, Moment nominal) {
    /** Omega for bending. Source: AISC 360-22 F1. */
    public static final double SAFETY = 1.67;

    /** A shape factor beyond this does not count. Source: AISC 360-22 Equation F11-1. */
    private static final double MOST_OVER_YIELD = 1.6;

    /** A rod that is guided closer to its sleeve than this is not stiffer: play and the sleeve's own give take over. Judgement. */
    private static final double SHORTEST_IN = 0.5;

    /**
     * {@code M = R e} of a bar that stands fixed in its sleeve and is free to turn in its guide, which is on the safe side where the guides are far apart;
     * {@code Mn = Fy Z <= 1.6 Fy S} with {@code S = pi d3 / 32} and {@code Z = d3 / 6}. Shear is small while e is more than half of d.
     * Source: statics of a cantilever; AISC 360-22 F11.1. Check: RodBendingCheck.
     *
     * @param exposed e, from the mouth of the sleeve to the lowest guide
     * @param push R, across the rod, without sign
     */
    public static RodBending of(RodModel rod, Length exposed, Force push) {
        double d = rod.diameter().inches();
        double plastic = d * d * d / 6;
        double elastic = section(rod);
        double nominal = rod.yield().psi() * Math.min(plastic, MOST_OVER_YIELD * elastic);
        return new RodBending(
                rod,
                exposed,
                push,
                Moment.poundInches(Math.abs(push.pounds()) * exposed.inches()),
                Moment.poundInches(nominal));
    }

    private static double section(RodModel rod) {
        double d = rod.diameter().inches();
        return Math.PI * d * d * d / 32;
    }

    public Moment allowable() {
        return nominal.times(1 / SAFETY);
    }

    public double utilisation() {
        return moment.poundInches() / allowable().poundInches();
    }

    /** {@link #utilisation} line by line for the calculation book. */
    public List<WorkedLine> lines() {
        double d = rod.diameter().inches();
        WorkedLine elastic = WorkedLine.of("S", "\u03c0 \u00d7 d\u00b3 / 32")
                .put("d", rod.diameter())
                .gives(section(rod), "in\u00b3");
        WorkedLine plastic =
                WorkedLine.of("Z", "d\u00b3 / 6").put("d", rod.diameter()).gives(d * d * d / 6, "in\u00b3");
        WorkedLine may = WorkedLine.of("Ma", "Fy \u00d7 min(Z; 1.6 \u00d7 S) / 1.67")
                .put("Fy", rod.yield().psi(), "psi")
                .put(plastic)
                .put(elastic)
                .note("F11-1, omega 1.67")
                .gives(allowable().poundInches(), "lb-in");
        WorkedLine bends = WorkedLine.of("M", "R \u00d7 e")
                .put("R", Math.abs(push.pounds()), "lb")
                .put("e", exposed)
                .note("at the mouth of the sleeve")
                .gives(moment.poundInches(), "lb-in");
        return List.of(
                elastic,
                plastic,
                may,
                bends,
                WorkedLine.of("ratio", "M / Ma").put(bends).put(may).gives(utilisation()));
    }

    /** Bending stress as if it were elastic, {@code 32 M / pi d3}. */
    public Stress stress() {
        return Stress.psi(moment.poundInches() / section(rod));
    }

    /**
     * Push per inch of movement of the guide: {@code 3 E I / e3}, the sleeve taken as rigid. In pounds per inch.
     * Source: AISC Manual Table 3-23, cantilever with a load at its end (from memory). Check: RodBendingCheck.
     */
    public static double stiffnessLbPerIn(RodModel rod, Length exposed) {
        double d = rod.diameter().inches();
        double e = Math.max(SHORTEST_IN, exposed.inches());
        return 3 * Steel.ELASTIC_MODULUS.psi() * Math.PI * d * d * d * d / 64 / (e * e * e);
    }
}
