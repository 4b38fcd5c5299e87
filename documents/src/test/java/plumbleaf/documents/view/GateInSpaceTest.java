package plumbleaf.documents.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.documents.view.SpaceScene.Block;
import plumbleaf.documents.view.SpaceScene.Stuff;
import plumbleaf.documents.view.SpaceScene.TurningLeaf;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;

/** A gate in space: the ground under the closed leaf has the grade it was made on, and no body of it is without thickness. */
class GateInSpaceTest {
    @ParameterizedTest
    @CsvSource({"LEFT,IN,48,-0.08", "RIGHT,IN,48,0.08", "LEFT,OUT,72,0.12", "RIGHT,OUT,36,0"})
    void theGroundUnderTheClosedLeafIsTheGradeOfTheFence(Side hinge, SwingWay way, double clear, double grade) {
        GateSubject gate = SampleGate.gate(new Hand(hinge, way), Joint.MITERED, clear, grade, 1, 1);
        SpaceScene scene =
                GateInSpace.of(List.of(gate), new GateInSpace.Footing(12, 36), new GateInSpace.Footing(10, 30));
        TurningLeaf leaf = scene.leaves().get(0);
        assertThat(leaf.turns().get(0)).isZero();
        // The pin stands off the line to the swing side, so across a slope the line itself lies a little higher or
        // lower than grade at the pin.
        double first = leaf.ground().get(0).get(0) - gate.groundZ(leaf.reaches().get(0));
        assertThat(first).isCloseTo(0, within(0.15));
        for (int r = 0; r < leaf.reaches().size(); r++)
            assertThat(leaf.ground().get(0).get(r))
                    .isCloseTo(first + gate.groundZ(leaf.reaches().get(r)), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"LEFT,IN", "RIGHT,IN", "LEFT,OUT", "RIGHT,OUT"})
    void everyMemberBoardPostAndHoleIsThereOnce(Side hinge, SwingWay way) {
        GateSubject gate = SampleGate.gate(new Hand(hinge, way), Joint.MITERED, 48, -0.08, 1, 1);
        SpaceScene scene =
                GateInSpace.of(List.of(gate), new GateInSpace.Footing(12, 36), new GateInSpace.Footing(10, 30));
        List<Block> blocks = scene.leaves().get(0).blocks();
        int boards = gate.leaf().pickets().size() + gate.leaf().nailers().size();
        assertThat(blocks)
                .hasSize(gate.leaf().members().size()
                        + boards
                        + gate.leaf().panels().size());
        assertThat(scene.standing())
                .filteredOn(block -> block.stuff() == Stuff.CONCRETE)
                .hasSize(2);
        double left = middle(scene, hinge == Side.LEFT ? gate.hingePost() : gate.latchPost());
        double right = middle(scene, hinge == Side.LEFT ? gate.latchPost() : gate.hingePost());
        assertThat(left).isLessThan(right);
    }

    private static double middle(SpaceScene scene, String post) {
        Block found = scene.standing().stream()
                .filter(block -> block.part().equals(post) && block.stuff() == Stuff.STEEL)
                .findFirst()
                .orElseThrow();
        return found.outline().stream()
                .mapToDouble(point -> point.x())
                .average()
                .orElseThrow();
    }
}
