package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.strength.RodBending;

/** What a pair's leaves lean on where they meet, as links of the load path. */
final class PairLinks {
    private PairLinks() {}

    static List<LinkUse> of(String gate, PairDesign pair) {
        RodBending rod = pair.rod();
        return List.of(
                new LinkUse(
                        "drop rod",
                        gate,
                        rod.utilisation(),
                        name(pair.worst()),
                        new LinkWork(
                                "M = R e <= Fy Z / 1.67, Z = d3/6 <= 1.6 S",
                                DecimalText.whole(rod.push().pounds()) + " lb, "
                                        + DecimalText.upTo(rod.exposed().inches(), 2) + " in. exposed: "
                                        + DecimalText.whole(rod.moment().poundInches()) + " lb-in of "
                                        + DecimalText.whole(rod.allowable().poundInches()) + ", "
                                        + rod.rod().name(),
                                "AISC 360-22 F11.1 (ASD, omega 1.67)",
                                lines(rod))),
                new LinkUse(
                        "sleeve footing",
                        gate,
                        pair.sleeveUtilisation(),
                        name(pair.worst()),
                        new LinkWork(
                                "depth needed / depth dug",
                                DecimalText.whole(pair.sleevePush().pounds()) + " lb, "
                                        + DecimalText.upTo(pair.sleeveNeeded().inches(), 1) + " in. of "
                                        + DecimalText.upTo(pair.sleeve().depth().inches(), 1) + " in.",
                                "IBC 1807.3.2.1",
                                List.of(WorkedLine.of("ratio", "dn / d")
                                        .put("dn", pair.sleeveNeeded())
                                        .put("d", pair.sleeve().depth())
                                        .gives(pair.sleeveUtilisation())))));
    }

    /** The rod bent at the mouth of its sleeve, line by line. */
    private static List<WorkedLine> lines(RodBending rod) {
        double d = rod.rod().diameter().inches();
        WorkedLine s = WorkedLine.of("S", "\u03c0 \u00d7 d\u00b3 / 32")
                .put("d", d, "in.")
                .gives(Math.PI * d * d * d / 32, "in\u00b3");
        WorkedLine z = WorkedLine.of("Z", "d\u00b3 / 6").put("d", d, "in.").gives(d * d * d / 6, "in\u00b3");
        WorkedLine m = WorkedLine.of("M", "R \u00d7 e")
                .put("R", Math.abs(rod.push().pounds()), "lb")
                .put("e", rod.exposed())
                .gives(rod.moment().poundInches(), "lb-in");
        WorkedLine may = WorkedLine.of("Ma", "Fy \u00d7 min(Z; 1.6 \u00d7 S) / 1.67")
                .put("Fy", rod.rod().yield().psi(), "psi")
                .put(z)
                .put(s)
                .gives(rod.allowable().poundInches(), "lb-in");
        return List.of(
                s, z, m, may, WorkedLine.of("ratio", "M / Ma").put(m).put(may).gives(rod.utilisation()));
    }

    private static String name(MeetingForces worst) {
        String wind = worst.combination().hasWind() ? ", " + worst.wind().key() : "";
        return worst.combination().key() + ", leaves closed" + wind;
    }
}
