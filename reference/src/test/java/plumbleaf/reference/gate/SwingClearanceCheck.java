package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.RunGround;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Benchmark;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.ground.ShotHeight;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * Least clearance of a raked leaf swung over triangles of shots that lie in one plane, against the closed form c = c0 + r (m_s (1 - cos q) - m_t sin q) - e (m_s sin q + m_t (1 - cos q)),
 * e the pin off the leaf, stationary at q = atan(m_t / m_s) + atan(e / r), for all four hands and for the largest angle before contact.
 *
 * Source: analytic geometry of a line turned about a plumb axis over a plane; derivation in the comment of the sweep.
 * Tolerance: 1e-9 in. and 1e-9 rad of rounding.
 */
class SwingClearanceCheck {
    private static final double TIGHT = 1e-9;

    /** e of the catalogue's hinge: its pin stands so far off the leaf's plane, to the swing side. */
    private static final double OFF_LINE = 1.5;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void trianglesOfAPlaneGiveTheClosedForm(long seed) {
        Random random = new Random(seed);
        double east = 0.3 * random.nextDouble() - 0.15;
        double north = 0.3 * random.nextDouble() - 0.15;
        double opens = 60 + 120 * random.nextDouble();
        double closed = 1 + 4 * random.nextDouble();
        RunGround ground = shots(random, east, north);
        for (Hand hand : Hand.all()) {
            double alongGrade = hand.hinge() == Side.LEFT ? east : -east;
            double sideGrade = hand.swing() == SwingWay.IN ? north : -north;
            Swing swing = Gates.plan(YardGates.ask(
                            48,
                            71,
                            closed,
                            new LeafShape.Raked(),
                            hand,
                            opens,
                            YardGates.parts("TUBE-2x2x0.083", new Cladding.Open(), Joint.MITERED),
                            ground))
                    .swings()
                    .get(0);
            double tip = 48 - 0.375 - 0.625;
            double least = closed;
            double full = Math.toRadians(opens);
            for (double r : new double[] {0.375, tip}) {
                double turning = Math.atan2(sideGrade, alongGrade) + Math.atan2(OFF_LINE, r);
                for (double q : new double[] {full, turning, turning + Math.PI, turning - Math.PI}) {
                    if (q >= 0 && q <= full) least = Math.min(least, at(closed, r, alongGrade, sideGrade, q));
                }
            }
            double nearest = Math.min(least, closed);
            assertThat(swing.least().clear().inches()).isCloseTo(nearest, within(TIGHT));
            if (swing.maxAngle().radians() < Math.PI)
                assertThat(at(
                                closed,
                                tip,
                                alongGrade,
                                sideGrade,
                                swing.maxAngle().radians()))
                        .isCloseTo(0, within(TIGHT));
        }
    }

    private static double at(double closed, double r, double alongGrade, double sideGrade, double q) {
        double onPin = closed + r * (alongGrade * (1 - Math.cos(q)) - sideGrade * Math.sin(q));
        return onPin - OFF_LINE * (alongGrade * Math.sin(q) + sideGrade * (1 - Math.cos(q)));
    }

    /** Shots on the line and a dozen scattered off it (further than the 3 in. that count as on the line), all in one plane. */
    private static RunGround shots(Random random, double east, double north) {
        RunLine run = new RunLine(
                "R1", new PlanLine(PlanPoint.ORIGIN, List.of(YardGates.ALONG), List.of(Length.feet(40))), true);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i <= 4; i++) shots.add(shot(i, 120.0 * i, 0, east, north));
        for (int i = 5; i < 17; i++) {
            double x = 120 + 80 * (random.nextDouble() - 0.3);
            double y = (i % 2 == 0 ? 1 : -1) * (6 + 50 * random.nextDouble());
            shots.add(shot(i, Math.rint(x * 16) / 16, Math.rint(y * 16) / 16, east, north));
        }
        GroundBook book = new GroundBook(new Benchmark("nail", Offset.ZERO), List.of(), shots, List.of(), List.of());
        return new RunGround(Ground.of(book, List.of(run)), run, Slope.ZERO);
    }

    private static Shot shot(int index, double x, double y, double east, double north) {
        return new Shot(
                "S" + (index + 1),
                new ShotPlace.At(Offset.inches(x), Offset.inches(y)),
                new ShotHeight.Elevation(Offset.inches(east * x + north * y)),
                "");
    }
}
