package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameSolution;

/**
 * Movement of every node of twenty random leaves, hung with two or three hinges on a post in a coupled footing, against a second method.
 *
 * Source: a mixed solution for forces and movements together that uses flexibilities and exact constraints, no stiffness; recipe in
 * reference/recipes/random_leaves.py (numpy), run once, recorded in random-leaves.csv.
 * Tolerance: 2e-6 of the leaf's largest shift or turn, for the stiffness that stands for a rigid pin.
 */
class RandomLeavesCheck {
    private static final double TOLERANCE = 2e-6;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void movesAsByTheSecondMethod(int number) throws IOException {
        RandomLeaf leaf = RandomLeaf.number(number);
        assertThat(leaf.moved()).hasSameSizeAs(leaf.nodes());
        same(leaf.solved(), leaf.moved(), TOLERANCE);
    }

    /** Every movement of every node, within a share of the leaf's largest shift or turn. */
    static void same(FrameSolution solved, Map<String, List<Double>> moved, double share) {
        double mostShift = 0;
        double mostTurn = 0;
        for (List<Double> six : moved.values())
            for (int i = 0; i < 3; i++) {
                mostShift = Math.max(mostShift, Math.abs(six.get(i)));
                mostTurn = Math.max(mostTurn, Math.abs(six.get(3 + i)));
            }
        List<Dof> inOrder = List.of(Dof.values());
        for (Map.Entry<String, List<Double>> node : moved.entrySet())
            for (Dof dof : inOrder)
                assertThat(solved.motion(CASE, node.getKey()).along(dof))
                        .as(node.getKey() + " " + dof.words())
                        .isCloseTo(
                                node.getValue().get(inOrder.indexOf(dof)),
                                within(share * (dof.isRotation() ? mostTurn : mostShift)));
    }
}
