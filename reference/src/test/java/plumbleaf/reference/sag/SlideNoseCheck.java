package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.catalogue.RollerWay;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.SlideSags;

/**
 * Drop of the nose of a bare slide leaf by its frame, on posts that do not give, against a plane frame solved by a second program. The second program knows the leaf
 * by its members and joints alone.
 * Source: direct stiffness of a plane frame, written out in PlaneProgram, which meets the overhanging beam of the tables in SlideStaticsCheck.
 * Tolerance: 0.2 %, for wheels that the engine holds at 1e8 lb/in and not rigid: a ten-thousandth of an inch at most.
 */
class SlideNoseCheck {
    private static final double E = 29e6;

    @ParameterizedTest
    @CsvSource({
        "12, 72, TUBE-2.5x2.5x0.12, BOTTOM",
        "16, 102, TUBE-3x3x0.12, BOTTOM",
        "16, 120, TUBE-3x3x0.12, TOP",
        "10, 66, F1083-REG-2, GROOVED"
    })
    void dropsAsBySecondProgram(double openingFt, double tailIn, String frame, RollerWay way) {
        SlideGate gate = new TestSlide(openingFt, tailIn, frame, way).gate();
        double drop = SlideSags.of(gate, TestSlide.still(200), LifeJudgement.USUAL)
                .byCause()
                .frame()
                .inches();
        double second = drop(gate, way);
        assertThat(second).isPositive();
        assertThat(drop).isCloseTo(second, within(0.002 * second));
    }

    private static double drop(SlideGate gate, RollerWay way) {
        Leaf leaf = gate.plan().leaf();
        PlaneProgram program = new PlaneProgram();
        double front = gate.front().at().inches();
        double rear = gate.rear().at().inches();
        Member bottom = leaf.of(MemberRole.BOTTOM_RAIL).get(0);
        Member top = leaf.of(MemberRole.TOP_RAIL).get(0);
        for (Member member : leaf.members()) {
            List<double[]> stops = new ArrayList<>();
            for (FrameJoint joint : leaf.joints())
                if (joint.members().contains(member.id()))
                    stops.add(new double[] {
                        joint.at().r().inches(), joint.at().z().inches()
                    });
            boolean rail = member.equals(bottom) || member.equals(top);
            if (rail)
                for (double r : List.of(front, rear))
                    if (stops.stream().noneMatch(stop -> Math.abs(stop[0] - r) < 0.05))
                        stops.add(new double[] {r, member.from().z().inches()});
            stops.sort((one, other) -> rail ? Double.compare(one[0], other[0]) : Double.compare(one[1], other[1]));
            double length = 0;
            for (int i = 0; i + 1 < stops.size(); i++) length += apart(stops.get(i), stops.get(i + 1));
            double perInch = member.weight().pounds() / length;
            for (int i = 0; i + 1 < stops.size(); i++)
                program.beam(
                        program.node(stops.get(i)[0], stops.get(i)[1]),
                        program.node(stops.get(i + 1)[0], stops.get(i + 1)[1]),
                        E * member.section().areaIn2(),
                        E * member.section().ixIn4(),
                        perInch);
        }
        // A wheel under the bottom tube in front, and, where wheels are grooved, one over the top tube behind.
        double low = bottom.from().z().inches();
        double high = top.from().z().inches();
        int atFront = program.node(front, way == RollerWay.TOP ? high : low);
        int atRear = program.node(rear, way == RollerWay.BOTTOM ? low : high);
        program.hold(atFront, 0);
        program.hold(atFront, 1);
        program.hold(atRear, 1);
        double[] moved = program.solve();
        FrameJoint nose = leaf.joints().stream()
                .filter(joint -> joint.members()
                                .contains(
                                        leaf.of(MemberRole.NOSE_UPRIGHT).get(0).id())
                        && joint.members().contains(bottom.id()))
                .findFirst()
                .orElseThrow();
        int node = program.node(nose.at().r().inches(), nose.at().z().inches());
        double arm = leaf.freeCorner().r().inches() - nose.at().r().inches();
        return -(moved[3 * node + 1] + moved[3 * node + 2] * arm);
    }

    private static double apart(double[] one, double[] other) {
        return Math.sqrt((one[0] - other[0]) * (one[0] - other[0]) + (one[1] - other[1]) * (one[1] - other[1]));
    }
}
