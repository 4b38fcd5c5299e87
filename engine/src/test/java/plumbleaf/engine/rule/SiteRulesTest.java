package plumbleaf.engine.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.SightTriangle;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

class SiteRulesTest {
    /** A corner at the origin, 20 ft east and 20 ft north. */
    private static final SightTriangle CORNER = new SightTriangle(
            "corner",
            Offset.ZERO,
            Offset.ZERO,
            Angle.degrees(90),
            Length.feet(20),
            Angle.ZERO,
            Length.feet(20),
            Length.feet(3));

    private static PlanPoint at(double eastFt, double northFt) {
        return PlanPoint.inches(12 * eastFt, 12 * northFt);
    }

    /** A fence 5 ft north of the street: in the triangle from the other street to 15 ft east, where the slanted side comes down. */
    @Test
    void aFenceAlongTheStreetLeavesTheTriangleAtItsSlantedSide() {
        SightLine inside = SightLine.of(CORNER, at(-10, 5), at(30, 5));
        assertThat(inside.isInside()).isTrue();
        assertThat(inside.from() * 40 - 10).isCloseTo(0, within(1e-9));
        assertThat(inside.to() * 40 - 10).isCloseTo(15, within(1e-9));
    }

    @Test
    void aFenceBeyondTheTriangleIsOutside() {
        assertThat(SightLine.of(CORNER, at(-10, -1), at(30, -1)).isInside()).isFalse();
        assertThat(SightLine.of(CORNER, at(21, 0), at(0, 21)).isInside()).isFalse();
        assertThat(SightLine.of(CORNER, at(30, 5), at(16, 5)).isInside()).isFalse();
    }

    /** Walking the piece inch by inch finds the same part, whichever way round the legs were said. */
    @Test
    void samplesAgreeWithTheCut() {
        Random random = new Random(3);
        SightTriangle turned = new SightTriangle(
                "corner",
                Offset.ZERO,
                Offset.ZERO,
                Angle.ZERO,
                Length.feet(20),
                Angle.degrees(90),
                Length.feet(20),
                Length.feet(3));
        for (int i = 0; i < 300; i++) {
            PlanPoint from = at(random.nextInt(60) - 20, random.nextInt(60) - 20);
            PlanPoint to = at(random.nextInt(60) - 20, random.nextInt(60) - 20);
            SightLine inside = SightLine.of(i % 2 == 0 ? CORNER : turned, from, to);
            for (int step = 0; step < 400; step++) {
                double share = (step + 0.37) / 400;
                PlanPoint here = from.towards(to, share);
                boolean in = here.xIn() > 1e-6 && here.yIn() > 1e-6 && here.xIn() + here.yIn() < 240 - 1e-6;
                boolean out = here.xIn() < -1e-6 || here.yIn() < -1e-6 || here.xIn() + here.yIn() > 240 + 1e-6;
                if (in) assertThat(share).isBetween(inside.from(), inside.to());
                if (out)
                    assertThat(share > inside.from() + 1e-9 && share < inside.to() - 1e-9)
                            .isFalse();
            }
        }
    }

    @Test
    void distanceToAHouse() {
        List<PlanPoint> house = List.of(at(0, 0), at(30, 0), at(30, 20), at(0, 20));
        assertThat(NearBuilding.distance(at(-10, -3), at(40, -3), house).inFeet())
                .isCloseTo(3, within(1e-9));
        assertThat(NearBuilding.distance(at(33, 24), at(60, 24), house).inFeet())
                .isCloseTo(5, within(1e-9));
        assertThat(NearBuilding.distance(at(-10, 10), at(40, 10), house).isZero())
                .isTrue();
        assertThat(NearBuilding.distance(at(30, 10), at(60, 10), house).isZero())
                .isTrue();
    }

    @Test
    void aFenceGoesOverALineAcrossItAtItsCornersAndAfterRunningAlongIt() {
        List<PlanPoint> line = List.of(at(-50, 0), at(0, 0), at(50, 0));
        assertThat(OverLine.goes(List.of(at(-5, 3), at(5, -3)), line))
                .as("through its corner")
                .isTrue();
        assertThat(OverLine.goes(List.of(at(7, 3), at(7, 0), at(9, -3)), line))
                .as("turning on it")
                .isTrue();
        assertThat(OverLine.goes(List.of(at(-9, 3), at(-7, 0), at(20, 0), at(21, -1)), line))
                .as("along it for a while")
                .isTrue();
        assertThat(OverLine.goes(List.of(at(-9, 3), at(-7, 0), at(20, 0), at(21, 1)), line))
                .as("along it and back")
                .isFalse();
        assertThat(OverLine.goes(List.of(at(7, 3), at(7, 0)), line))
                .as("ending on it")
                .isFalse();
        assertThat(OverLine.goes(List.of(at(60, 3), at(60, -3)), line))
                .as("past its end")
                .isFalse();
        assertThat(OverLine.goes(List.of(at(-20, 0), at(20, 0)), line))
                .as("along all of it")
                .isFalse();
    }

    /** Second method: points close together all along the fence, each told by itself whether it lies north-west of a line that comes from the west and turns north. */
    @Test
    void whereverAFenceGoesOverABentLineItHasPointsOnBothSides() {
        List<PlanPoint> line = List.of(at(-500, 0), at(0, 0), at(0, 500));
        Random random = new Random(5);
        for (int trial = 0; trial < 3000; trial++) {
            List<PlanPoint> fence = new ArrayList<>();
            for (int i = 0; i < 4; i++) fence.add(at(random.nextInt(7) - 3, random.nextInt(7) - 3));
            boolean north = false;
            boolean south = false;
            for (int i = 0; i + 1 < fence.size(); i++)
                for (int k = 0; k <= 1000; k++) {
                    double x = fence.get(i).xIn()
                            + k
                                    / 1000.0
                                    * (fence.get(i + 1).xIn() - fence.get(i).xIn());
                    double y = fence.get(i).yIn()
                            + k
                                    / 1000.0
                                    * (fence.get(i + 1).yIn() - fence.get(i).yIn());
                    double in = Math.min(-x, y);
                    north |= in > 1e-9;
                    south |= in < -1e-9;
                }
            assertThat(OverLine.goes(fence, line)).as("%s", fence).isEqualTo(north && south);
        }
    }
}
