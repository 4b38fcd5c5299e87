package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.catalogue.RollerWay;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlideForces;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.WindWay;

/**
 * A leaf on two sets of rollers is an overhanging beam: a weight W at x beyond the front ones, s apart, presses {@code W (1 + x / s)} on them and lifts the rear ones by
 * {@code W x / s}, wherever it stands on its way; a wind F at its middle does the same across.
 * Source: overhanging beam with a load at its end, beam tables (two public sites, read): W 400 lb, x 60 in., s 120 in. give 600 lb and 200 lb of uplift, and with E 29e6
 * psi, I 5 in4 a deflection of 0.596 in. under the load, {@code W x2 (s + x) / 3 E I}.
 * Tolerance: 0.1 lb for what the frame holds as rigid; printed digits for the deflection.
 */
class SlideStaticsCheck {
    @Test
    void theTablesOwnNumbers() {
        double w = 400;
        double x = 60;
        double s = 120;
        assertThat(w * (1 + x / s)).isCloseTo(600, within(1e-9));
        PlaneProgram beam = new PlaneProgram();
        int rear = beam.node(0, 0);
        int front = beam.node(s, 0);
        int nose = beam.node(s + x, 0);
        beam.beam(rear, front, 1e9, 29e6 * 5, 0);
        beam.beam(front, nose, 1e9, 29e6 * 5, 0);
        beam.down(nose, w);
        beam.hold(rear, 0);
        beam.hold(rear, 1);
        beam.hold(front, 1);
        assertThat(-beam.solve()[3 * nose + 1]).isCloseTo(0.596, within(0.0005));
    }

    @ParameterizedTest
    @EnumSource(RollerWay.class)
    void rollersCarryAnOverhangingBeamAllTheWay(RollerWay way) {
        SlideGate gate = new TestSlide(16, 102, way == RollerWay.GROOVED ? "F1083-REG-2" : "TUBE-3x3x0.12", way).gate();
        double weight = gate.plan().leaf().weight().wet().pounds();
        double centre = gate.plan().leaf().weight().centreOfGravity().r().inches();
        double front = gate.front().at().inches();
        double s = front - gate.rear().at().inches();
        double nose = gate.plan().shape().nose().inches();
        for (SlideCase each : SlideForces.of(gate, TestSlide.still(200))) {
            if (each.combination() != Combination.D && each.combination() != Combination.D_L) continue;
            double person = each.combination() == Combination.D_L ? 200 : 0;
            double travel = each.travel().inches();
            double over = weight * (centre - travel - front) + person * (nose - travel - front);
            assertThat(each.rear().down().pounds()).isCloseTo(-over / s, within(0.1));
            assertThat(each.front().down().pounds()).isCloseTo(weight + person + over / s, within(0.1));
        }
    }

    /** Off its receiver the leaf in even wind is the same beam across: both tubes together. */
    @Test
    void windAcrossIsTheSameBeam() {
        SlideGate gate = new TestSlide(14, 96, "TUBE-3x3x0.12", RollerWay.BOTTOM).gate();
        double face = gate.plan().shape().nose().inches() * 66;
        double push = 10.0 / 144 * face * Combination.D_W.wind();
        double middle = gate.plan().shape().nose().inches() / 2;
        double front = gate.front().at().inches();
        double s = front - gate.rear().at().inches();
        SlideCase off = SlideForces.of(gate, TestSlide.windy(10)).stream()
                .filter(each -> each.combination() == Combination.D_W
                        && each.state().key().equals("worst")
                        && each.travel().isZero()
                        && each.wind() == WindWay.OUT)
                .findFirst()
                .orElseThrow();
        double onFront =
                off.front().acrossLow().pounds() + off.front().acrossHigh().pounds();
        double onRear =
                off.rear().acrossLow().pounds() + off.rear().acrossHigh().pounds();
        assertThat(onFront + onRear).isCloseTo(push, within(0.1));
        assertThat(onRear).isCloseTo(-push * (middle - front) / s, within(0.1));
    }
}
