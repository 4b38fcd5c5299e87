package plumbleaf.reference.frame;

import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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

/** One made-up leaf of {@code random-leaves.csv} on its hinges, post and footing, with what it weighs and what pushes it. */
final class RandomLeaf {
    /** As many as the file has. */
    static final int COUNT = 20;

    static final double E = 29e6;
    static final double G = E / 2.6;

    /** Stands for what does not give at all. */
    static final double RIGID = 1e10;

    private static final double RIGID_TURN = 1e12;

    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Pier> piers = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();
    private final Map<String, List<Double>> moved = new LinkedHashMap<>();

    /** A footing: a cantilever that reaches straight down from its node, held at its lower end. */
    record Pier(String node, double lengthIn, double inertiaIn4) {
        static final double AREA_IN2 = 50;
    }

    private RandomLeaf() {}

    static RandomLeaf number(int leaf) throws IOException {
        RandomLeaf read = new RandomLeaf();
        try (InputStream in = RandomLeaf.class.getResourceAsStream("random-leaves.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.strip().split("\n", -1))
                if (line.startsWith(leaf + ",")) read.row(List.of(line.split(",", -1)));
        }
        return read;
    }

    List<Node> nodes() {
        return nodes;
    }

    List<Member> members() {
        return members;
    }

    List<Pier> piers() {
        return piers;
    }

    List<Link> links() {
        return links;
    }

    List<Support> supports() {
        return supports;
    }

    List<Load> loads() {
        return loads;
    }

    /** Six movements of every node, by the method that wrote the file. */
    Map<String, List<Double>> moved() {
        return moved;
    }

    /** The same leaf of bars whose stiffness in torsion is that of a round pipe: twice the inertia, or the sum of both. */
    RandomLeaf twistingAsPipe() {
        RandomLeaf pipe = new RandomLeaf();
        pipe.nodes.addAll(nodes);
        for (Member member : members) {
            Stiffness is = member.stiffness();
            pipe.members.add(
                    member.with(new Stiffness(E, G, is.areaIn2(), is.iyIn4(), is.izIn4(), is.iyIn4() + is.izIn4())));
        }
        pipe.piers.addAll(piers);
        pipe.links.addAll(links);
        pipe.supports.addAll(supports);
        pipe.loads.addAll(loads);
        return pipe;
    }

    /** As the engine moves it. */
    FrameSolution solved() {
        List<GroundSpring> springs = new ArrayList<>();
        for (Pier pier : piers) springs.add(new GroundSpring("footing", pier.node(), buried(pier)));
        return Frames.solve(new FrameModel(nodes, members, springs, links, supports), new LoadCase(CASE, loads));
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
                                        E, G, number(cells, 5), number(cells, 6), number(cells, 7), number(cells, 8)),
                                vector(cells, 9))
                        .released(List.of(), cells.get(12).isEmpty() ? List.of() : List.of(Dof.RY, Dof.RZ)));
            case "pier" -> piers.add(new Pier(id, number(cells, 3), number(cells, 4)));
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

    /** Stiffness at the top of the buried cantilever, with the coupling of shift and turn. */
    private static SpringMatrix buried(Pier pier) {
        double length = pier.lengthIn();
        double ei = E * pier.inertiaIn4();
        double shift = 12 * ei / (length * length * length);
        double coupling = 6 * ei / (length * length);
        double turn = 4 * ei / length;
        double spin = G * 2 * pier.inertiaIn4() / length;
        return SpringMatrix.diagonal(shift, shift, E * Pier.AREA_IN2 / length, turn, turn, spin)
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
