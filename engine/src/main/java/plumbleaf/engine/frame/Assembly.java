package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** A model made ready: elements, the number of every unknown, the stiffness of the free unknowns and its factors. */
final class Assembly {
    final FrameModel model;
    final Map<String, Integer> nodeIndex = new LinkedHashMap<>();
    final Map<String, Integer> memberIndex = new LinkedHashMap<>();
    final List<Element> elements = new ArrayList<>();
    final List<LinkElement> links = new ArrayList<>();
    /** Per node direction the number of its unknown, or {@link #HELD}. */
    final int[] unknown;

    private static final int HELD = -1;
    private final Skyline stiffness;
    private final Skyline factors;

    Assembly(FrameModel model) {
        this.model = model;
        for (Node node : model.nodes()) nodeIndex.put(node.id(), nodeIndex.size());
        for (Member member : model.members()) {
            memberIndex.put(member.id(), memberIndex.size());
            elements.add(new Element(
                    member, node(member.start()), node(member.end()), place(member.start()), place(member.end())));
        }
        for (Link link : model.links()) links.add(new LinkElement(link, place(link.from()), place(link.to())));
        this.unknown = numbered();
        this.stiffness = assembled();
        this.factors = stiffness.copy();
        if (!factors.factorise()) throw new UnstableFrame(mechanism(factors.freeDirection()));
    }

    int node(String id) {
        Integer index = nodeIndex.get(id);
        if (index == null) throw new IllegalArgumentException("There is no node " + id);
        return index;
    }

    int member(String id) {
        Integer index = memberIndex.get(id);
        if (index == null) throw new IllegalArgumentException("There is no member " + id);
        return index;
    }

    /** The node directions of a part with two nodes. */
    static double[] ends(double[] all, int start, int end) {
        double[] both = new double[12];
        System.arraycopy(all, 6 * start, both, 0, 6);
        System.arraycopy(all, 6 * end, both, 6, 6);
        return both;
    }

    int start(Element element) {
        return element.startNode;
    }

    int end(Element element) {
        return element.endNode;
    }

    boolean held(int direction) {
        return unknown[direction] == HELD;
    }

    /**
     * Movement of every node direction.
     *
     * @param forces on every node direction
     * @param settled movement of the held directions, nothing elsewhere
     */
    double[] movements(double[] forces, double[] settled) {
        double[] right = new double[stiffness.size()];
        // Nearly always nothing settles.
        double[] fromSettling =
                Arrays.stream(settled).allMatch(by -> by == 0) ? new double[settled.length] : resistance(settled);
        for (int d = 0; d < unknown.length; d++) if (!held(d)) right[unknown[d]] = forces[d] - fromSettling[d];
        double[] x = factors.solve(right);
        double[] product = stiffness.times(x);
        double[] left = new double[x.length];
        for (int i = 0; i < x.length; i++) left[i] = right[i] - product[i];
        double[] correction = factors.solve(left);
        double[] movements = settled.clone();
        for (int d = 0; d < unknown.length; d++) if (!held(d)) movements[d] = x[unknown[d]] + correction[unknown[d]];
        return movements;
    }

    /** The force each node direction needs for these movements, loads on members apart. */
    double[] resistance(double[] movements) {
        double[] forces = new double[movements.length];
        for (Element element : elements) {
            double[] nodes = ends(movements, start(element), end(element));
            double[] local = element.endForces(element.localMovement(nodes), new double[12]);
            scatter(forces, element.nodeForces(local), start(element), end(element));
        }
        for (LinkElement link : links) {
            int from = node(link.link.from());
            int to = node(link.link.to());
            double[][] k = link.nodeStiffness();
            double[] nodes = ends(movements, from, to);
            double[] product = new double[12];
            for (int i = 0; i < 12; i++) for (int j = 0; j < 12; j++) product[i] += k[i][j] * nodes[j];
            scatter(forces, product, from, to);
        }
        for (GroundSpring spring : model.groundSprings()) {
            int base = 6 * node(spring.node());
            for (Dof row : Dof.values())
                for (Dof column : Dof.values())
                    forces[base + row.index()] +=
                            spring.stiffness().entry(row, column) * movements[base + column.index()];
        }
        return forces;
    }

    static void scatter(double[] all, double[] both, int start, int end) {
        for (int i = 0; i < 6; i++) {
            all[6 * start + i] += both[i];
            all[6 * end + i] += both[6 + i];
        }
    }

    private Vector place(String node) {
        return model.nodes().get(node(node)).place();
    }

    private int[] numbered() {
        int nodes = model.nodes().size();
        boolean[] held = new boolean[6 * nodes];
        for (Support support : model.supports())
            for (Dof dof : support.held()) held[6 * node(support.node()) + dof.index()] = true;
        List<SortedSet<Integer>> neighbours = new ArrayList<>();
        for (int i = 0; i < nodes; i++) neighbours.add(new TreeSet<>());
        for (Element element : elements) meet(neighbours, start(element), end(element));
        for (LinkElement link : links) meet(neighbours, node(link.link.from()), node(link.link.to()));
        int[] numbers = new int[6 * nodes];
        int next = 0;
        for (int node : NodeOrder.narrow(neighbours))
            for (int dof = 0; dof < 6; dof++) numbers[6 * node + dof] = held[6 * node + dof] ? HELD : next++;
        return numbers;
    }

    private static void meet(List<SortedSet<Integer>> neighbours, int a, int b) {
        neighbours.get(a).add(b);
        neighbours.get(b).add(a);
    }

    private Skyline assembled() {
        int free = 0;
        for (int number : unknown) free = Math.max(free, number + 1);
        int[] first = new int[free];
        for (int i = 0; i < free; i++) first[i] = i;
        for (int node = 0; node < model.nodes().size(); node++) reach(first, node, node);
        for (Element element : elements) reach(first, start(element), end(element));
        for (LinkElement link : links) reach(first, node(link.link.from()), node(link.link.to()));
        Skyline sum = new Skyline(first);
        for (Element element : elements) add(sum, element.nodeStiffness(), start(element), end(element));
        for (LinkElement link : links) add(sum, link.nodeStiffness(), node(link.link.from()), node(link.link.to()));
        for (GroundSpring spring : model.groundSprings()) add(sum, spring);
        return sum;
    }

    private void reach(int[] first, int a, int b) {
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < 6; i++) {
            if (!held(6 * a + i)) least = Math.min(least, unknown[6 * a + i]);
            if (!held(6 * b + i)) least = Math.min(least, unknown[6 * b + i]);
        }
        for (int i = 0; i < 6; i++) {
            lower(first, unknown[6 * a + i], least);
            lower(first, unknown[6 * b + i], least);
        }
    }

    private static void lower(int[] first, int number, int least) {
        if (number != HELD && least < first[number]) first[number] = least;
    }

    private void add(Skyline sum, double[][] k, int start, int end) {
        for (int i = 0; i < 12; i++) {
            int row = unknown[6 * (i < 6 ? start : end) + i % 6];
            if (row == HELD) continue;
            for (int j = 0; j < 12; j++) {
                int column = unknown[6 * (j < 6 ? start : end) + j % 6];
                // A part with both ends on one node meets itself: each pair of entries is then added as it comes.
                if (column != HELD && (column < row || (column == row && i == j))) sum.add(row, column, k[i][j]);
            }
        }
    }

    private void add(Skyline sum, GroundSpring spring) {
        int base = 6 * node(spring.node());
        for (Dof row : Dof.values())
            for (Dof column : Dof.values()) {
                int i = unknown[base + row.index()];
                int j = unknown[base + column.index()];
                if (i != HELD && j != HELD && j <= i)
                    sum.add(i, j, spring.stiffness().entry(row, column));
            }
    }

    /** Names the node and direction that move most; a turn counts by what it moves an arm as long as the frame is large. */
    private String mechanism(double[] direction) {
        double size = 0;
        for (Node node : model.nodes())
            size = Math.max(
                    size, node.place().minus(model.nodes().get(0).place()).length());
        double most = 0;
        int moving = 0;
        double mostShift = 0;
        int shifting = 0;
        for (int d = 0; d < unknown.length; d++) {
            if (held(d)) continue;
            boolean turn = d % 6 > 2;
            double amount = Math.abs(direction[unknown[d]]) * (turn ? Math.max(size, 1) : 1);
            if (amount > most) {
                most = amount;
                moving = d;
            }
            if (!turn && amount > mostShift) {
                mostShift = amount;
                shifting = d;
            }
        }
        int named = mostShift > 1e-6 * most ? shifting : moving;
        String node = model.nodes().get(named / 6).id();
        Dof dof = Dof.at(named % 6);
        return "Nothing holds the frame against moving: node " + node
                + (dof.isRotation() ? " turns freely " : " moves freely ") + dof.words()
                + ". Brace it, hold it, or undo a release";
    }
}
