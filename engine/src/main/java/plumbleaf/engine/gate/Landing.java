package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Volume;

/** The soil of a level landing under a swing: what is cut above it and what is filled below it, with slopes beside it. */
final class Landing {
    private static final int RINGS = 60;
    private static final int ANGLES = 90;

    /** Level ground to each inch of rise in the slopes round it: 1 in 2, common practice for soil that is walked beside, no source. */
    private static final double RUN_TO_RISE = 2;

    /** Beside more than this stands a wall and no slope: a shot that is wrong by a mile moves no mountain. Judgement. */
    private static final double SLOPED_IN = 240;

    private final double levelIn;
    private double cutIn3;
    private double fillIn3;
    private double deepestIn;
    private double highestIn;

    private Landing(double levelIn) {
        this.levelIn = levelIn;
    }

    /**
     * {@code V = sum of h r dr dq + sum of h^2 ds}, h the ground above (cut) or below (fill) the landing at the middle of 60 rings and 90 angles of the swing, and along its three
     * edges, where a slope of 1 in 2 has the section {@code h (2 h) / 2}, no wider than that of one 20 ft high. The sums are within 1 % on a plane. It stops being true where the ground beyond an
     * edge is not level: where it goes on away from the landing at s, the slope there takes {@code 1 / (1 - 2 s)} times as much; corners between slopes are left out. Source: geometry.
     * Check: GatesTest.
     *
     * @param was the ground as measured
     * @param level elevation of the landing
     */
    static Regrade of(String part, SwingAsk ask, GroundUnder was, Offset level) {
        SwingAxes axes = SwingAxes.of(ask.opening(), ask.hand(), ask.hinge().pin());
        Landing landing = new Landing(level.inches() - was.elevation(axes.pin()).inches());
        landing.sum(Swings.over(ask, was), ask.opens().radians());
        return new Regrade(
                part,
                Volume.cubicInches(landing.cutIn3),
                Length.inches(landing.deepestIn),
                Volume.cubicInches(landing.fillIn3),
                Length.inches(landing.highestIn));
    }

    private void sum(Swings swing, double opensRad) {
        double tip = swing.tipIn();
        double dr = (tip - swing.fromIn()) / RINGS;
        double dq = opensRad / ANGLES;
        for (int j = 0; j < ANGLES; j++) {
            OpenAt open = OpenAt.angle((j + 0.5) * dq);
            for (int i = 0; i < RINGS; i++) {
                double r = swing.fromIn() + (i + 0.5) * dr;
                add(above(swing, r, open), r * dr * dq);
            }
            slope(above(swing, tip, open), tip * dq);
        }
        for (int i = 0; i < RINGS; i++) {
            double r = swing.fromIn() + (i + 0.5) * dr;
            slope(above(swing, r, OpenAt.angle(0)), dr);
            slope(above(swing, r, OpenAt.angle(opensRad)), dr);
        }
    }

    private double above(Swings swing, double r, OpenAt open) {
        return swing.groundIn(r, open) - levelIn;
    }

    private void add(double aboveIn, double areaIn2) {
        if (aboveIn > 0) cutIn3 += aboveIn * areaIn2;
        else fillIn3 -= aboveIn * areaIn2;
        deepestIn = Math.max(deepestIn, aboveIn);
        highestIn = Math.max(highestIn, -aboveIn);
    }

    private void slope(double aboveIn, double alongIn) {
        add(aboveIn, Math.min(Math.abs(aboveIn), SLOPED_IN) * RUN_TO_RISE / 2 * alongIn);
    }
}
