package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** The search over a plane against the closed form {@code c = c0 + r (m_s (1 - cos q) - m_t sin q)}, its least value found by hand. */
class SweepPlaneTest {
    private static final double TIGHT = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void leastClearanceOfARakedLeafIsTheClosedForm(long seed) {
        Random random = new Random(seed);
        double alongGrade = 0.5 * random.nextDouble() - 0.25;
        double sideGrade = 0.5 * random.nextDouble() - 0.25;
        double closed = 2 + 3 * random.nextDouble();
        double latch = 36 + 100 * random.nextDouble();
        double opens = Math.toRadians(60 + 120 * random.nextDouble());
        Sweeps sweeps = onPlane(alongGrade, sideGrade, 30 * random.nextDouble());
        Low found = sweeps.least(new LowEdge(0, latch, closed, alongGrade, 0), 0, opens);

        double least = closed;
        double atAngle = 0;
        double turning = Math.atan2(sideGrade, alongGrade);
        for (double q : new double[] {0, opens, turning, turning + Math.PI}) {
            boolean inside = q >= 0 && q <= opens;
            double c = closed + latch * (alongGrade * (1 - Math.cos(q)) - sideGrade * Math.sin(q));
            if (inside && c < least) {
                least = c;
                atAngle = q;
            }
        }
        assertThat(found.clearIn()).isCloseTo(least, within(TIGHT));
        if (least < closed - 1e-6) {
            assertThat(found.rIn()).isCloseTo(latch, within(TIGHT));
            assertThat(found.angleRad()).isCloseTo(atAngle, within(1e-7));
        }
    }

    @Test
    void hingedOnItsHighSideALeafLosesItsRakeByTheTimeItIsSquare() {
        Low found = onPlane(-0.10, 0, 0).least(new LowEdge(0, 50, 3, -0.10, 0), 0, Math.PI / 2);
        assertThat(found.clearIn()).isCloseTo(-2, within(TIGHT));
        assertThat(found.angleRad()).isCloseTo(Math.PI / 2, within(TIGHT));
    }

    @Test
    void hingedOnItsLowSideItGains() {
        Low found = onPlane(0.10, 0, 0).least(new LowEdge(0, 50, 3, 0.10, 0), 0, Math.PI / 2);
        assertThat(found.clearIn()).isCloseTo(3, within(TIGHT));
    }

    /** c0 = 3, r = 50, m_s = -0.1: c = 3 - 5 (1 - cos q) is zero at cos q = 0.4. */
    @Test
    void contactIsWhereTheClosedFormIsZero() {
        double contact = onPlane(-0.10, 0, 0).firstContact(List.of(new LowEdge(0, 50, 3, -0.10, 0)), Math.PI);
        assertThat(contact).isCloseTo(Math.acos(0.4), within(TIGHT));
    }

    @Test
    void aThickLeafIsJudgedByTheFaceThatIsUphill() {
        Sweeps sweeps = onPlane(0, 0.10, 0);
        LowEdge plane = new LowEdge(0, 50, 8, 0, 0);
        double middle = sweeps.least(plane, 0, Math.PI / 2).clearIn();
        double faces = sweeps.least(new LowStrip(plane, -1, 3), 0, Math.PI / 2).clearIn();
        assertThat(middle).isCloseTo(8 - 5, within(TIGHT));
        // At 90 degrees the faces stand off along the run, where it is level; a little before, the far face is uphill:
        // (R, not r) x grade.
        assertThat(faces).isCloseTo(8 - 0.10 * Math.sqrt(50 * 50 + 3 * 3), within(TIGHT));
    }

    private static Sweeps onPlane(double alongGrade, double sideGrade, double elevationIn) {
        Opening opening = new Opening(
                PlanPoint.inches(100, -40),
                Direction.bearing(Angle.degrees(63)),
                Side.RIGHT,
                Length.feet(10),
                Length.inches(48),
                Length.ZERO,
                Length.ZERO);
        SwingAxes axes = SwingAxes.of(opening, new Hand(Side.LEFT, SwingWay.IN), GateSamples.pin(0.375, 0));
        SpacePoint pin = axes.pin().at(Offset.inches(elevationIn));
        Plane plane = Plane.of(pin, axes.along(), Slope.ratio(alongGrade), Slope.ratio(sideGrade));
        PlaneGround ground = new PlaneGround(plane);
        return new Sweeps(
                GroundCell.of(
                        ground.around(axes.pin(), Length.inches(200), Length.inches(400)),
                        axes,
                        Offset.inches(elevationIn)),
                0);
    }
}
