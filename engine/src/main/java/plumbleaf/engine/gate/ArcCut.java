package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Volume;

/** Soil to shave so that a hung leaf clears by a margin: what is missing of it, summed over rings and angles of the swing. */
final class ArcCut {
    private static final int RINGS = 120;
    private static final int ANGLES = 180;

    /** Less than this is rounding. */
    private static final double NOTHING_IN = 1e-9;

    private ArcCut() {}

    /**
     * {@code V = sum of s r dr dq}, s what is missing at radius r and angle q, at the middle of 120 rings and 180 angles: within 1 % of a wedge's volume. The leaf's drop and
     * the later rise of the ground are counted. Empty where nothing is missing. Check: GatesTest.
     */
    static Optional<Regrade> of(String part, SwingAsk ask, Swing dragging, GroundUnder ground, double marginIn) {
        Swings along = Swings.over(ask, ground);
        double dr = (along.tipIn() - along.fromIn()) / RINGS;
        double dq = ask.opens().radians() / ANGLES;
        List<OpenAt> angles = new ArrayList<>();
        for (int j = 0; j < ANGLES; j++) angles.add(OpenAt.angle((j + 0.5) * dq));
        List<UnderEdge> low = along.underRunning(angles).stream()
                .filter(under -> under.leastIn() < marginIn + NOTHING_IN)
                .toList();
        double volumeIn3 = 0;
        double deepest = 0;
        for (int i = 0; i < RINGS; i++) {
            double r = along.fromIn() + (i + 0.5) * dr;
            for (UnderEdge under : low) {
                double shortBy = marginIn - under.clearanceIn(r);
                if (shortBy <= 0) continue;
                volumeIn3 += shortBy * r * dr * dq;
                deepest = Math.max(deepest, shortBy);
            }
        }
        if (volumeIn3 == 0) return Optional.empty();
        double depth = Math.max(deepest, marginIn - dragging.running().clear().inches());
        return Optional.of(Regrade.shaved(part, Volume.cubicInches(volumeIn3), Length.inches(depth)));
    }
}
