package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.GroundSpring;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.SpringMatrix;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;

/**
 * Movement of every node of twenty random leaves, hung with two or three hinges on a post in a coupled footing, against a second method.
 *
 * Source: a mixed solution for forces and movements together that uses flexibilities and exact constraints, no stiffness; recipe in
 * reference/recipes/random_leaves.py (numpy), run once, recorded in random-leaves.csv.
 * Tolerance: 2e-6 of the leaf's largest shift or turn, for the stiffness that stands for a rigid pin.
 */
class RandomLeavesCheck {
    private static final List<Dof> IN_ORDER = List.of(Dof.values());
    private static final double E = 29e6;
    private static final double TOLERANCE = 2e-6;
    private static final double RIGID = 1e10;
    private static final double RIGID_TURN = 1e12;

    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<GroundSpring> springs = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();
    private final Map<String, List<Double>> moved = new LinkedHashMap<>();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void movesAsByTheSecondMethod(int leaf) throws IOException {
        read(leaf);
        FrameSolution solved =
                Frames.solve(new FrameModel(nodes, members, springs, links, supports), new LoadCase(CASE, loads));
        double mostShift = 0;
        double mostTurn = 0;
        for (List<Double> six : moved.values())
            for (int i = 0; i < 3; i++) {
                mostShift = Math.max(mostShift, Math.abs(six.get(i)));
                mostTurn = Math.max(mostTurn, Math.abs(six.get(3 + i)));
            }
        assertThat(moved).hasSameSizeAs(nodes);
        for (Map.Entry<String, List<Double>> node : moved.entrySet())
            for (Dof dof : IN_ORDER) {
                double second = node.getValue().get(IN_ORDER.indexOf(dof));
                assertThat(solved.motion(CASE, node.getKey()).along(dof))
                        .as(node.getKey() + " " + dof.words())
                        .isCloseTo(second, within(TOLERANCE * (dof.isRotation() ? mostTurn : mostShift)));
            }
    }

    private void read(int leaf) throws IOException {
        try (InputStream in = RandomLeavesCheck.class.getResourceAsStream("random-leaves.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.strip().split("\n", -1))
                if (line.startsWith(leaf + ",")) row(List.of(line.split(",", -1)));
        }
    }

    private void row(List<String> cells) {
        String id = cells.get(2);
        switch (cells.get(1)) {
            case "node" -> nodes.add(Node.at(id, vector(cells, 3)));
            case "member" ->
                members.add(Member.fixed(
                                id,
                                cells.get(3),
                                cells.get(4),
                                new Stiffness(
                                        E,
                                        E / 2.6,
                                        number(cells, 5),
                                        number(cells, 6),
                                        number(cells, 7),
                                        number(cells, 8)),
                                vector(cells, 9))
                        .released(List.of(), cells.get(12).isEmpty() ? List.of() : List.of(Dof.RY, Dof.RZ)));
            case "pier" -> springs.add(new GroundSpring("footing", id, buried(number(cells, 3), number(cells, 4))));
            case "link" ->
                links.add(new Link(
                        id,
                        cells.get(3),
                        cells.get(4),
                        vector(cells, 5),
                        Vector.X,
                        Vector.Y,
                        spring(cells, 8, RIGID),
                        spring(cells, 9, RIGID),
                        spring(cells, 10, RIGID),
                        spring(cells, 11, RIGID_TURN),
                        spring(cells, 12, RIGID_TURN),
                        spring(cells, 13, RIGID_TURN)));
            case "hold" -> supports.add(new Support(id, List.of(Dof.valueOf(cells.get(3)))));
            case "spread" -> loads.add(new Load.Uniform(id, vector(cells, 3)));
            case "load" -> loads.add(new Load.AtNode(id, vector(cells, 3), vector(cells, 6)));
            case "moved" -> {
                List<Double> six = new ArrayList<>();
                for (int i = 3; i < 9; i++) six.add(number(cells, i));
                moved.put(id, six);
            }
            default -> throw new IllegalArgumentException("What is a " + cells.get(1));
        }
    }

    /** Stiffness at the top of a cantilever that reaches straight down, with the coupling of shift and turn. */
    private static SpringMatrix buried(double length, double inertia) {
        double ei = E * inertia;
        double shift = 12 * ei / (length * length * length);
        double coupling = 6 * ei / (length * length);
        double turn = 4 * ei / length;
        return SpringMatrix.diagonal(shift, shift, E * 50 / length, turn, turn, E / 2.6 * 2 * inertia / length)
                .with(Dof.UX, Dof.RY, -coupling)
                .with(Dof.UY, Dof.RX, coupling);
    }

    private static double spring(List<String> cells, int at, double rigid) {
        if ("free".equals(cells.get(at))) return 0;
        return number(cells, at) == 0 ? rigid : 1 / number(cells, at);
    }

    private static Vector vector(List<String> cells, int at) {
        return new Vector(number(cells, at), number(cells, at + 1), number(cells, at + 2));
    }

    private static double number(List<String> cells, int at) {
        return Double.parseDouble(cells.get(at));
    }
}
