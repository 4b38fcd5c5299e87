package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.quantity.DecimalText;
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
                                "AISC 360-22 F11.1 (ASD, omega 1.67)")),
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
                                "IBC 1807.3.2.1")));
    }

    private static String name(MeetingForces worst) {
        String wind = worst.combination().hasWind() ? ", " + worst.wind().key() : "";
        return worst.combination().key() + ", leaves closed" + wind;
    }
}
