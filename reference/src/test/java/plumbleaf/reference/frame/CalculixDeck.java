package plumbleaf.reference.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;

/**
 * A random leaf as CalculiX reads it. Its two-node beam with six movements a node (U1) bends rightly in the plane of its first axis alone, so every bar is two of them
 * side by side, one for each plane, each with half the area; it twists with the sum of the inertias. Hinges, pins and rigid arms are equations between movements; a hinge
 * that gives is a short bar between two points. What is spread over a bar is put on its ends with the moments of a bar held at both.
 */
final class CalculixDeck {
    /** Numbered from 1, in this order. */
    private static final List<Dof> DOFS = List.of(Dof.values());

    /** Hardly any inertia about the other axis. */
    private static final double NONE = 1e-12;

    /** So that shear does not count: the engine's bars do not give in shear. */
    private static final double STIFF_IN_SHEAR = 1e6;

    private static final int DIRECTIONS = 3;

    private final RandomLeaf leaf;
    private final StringBuilder nodes = new StringBuilder("*NODE,NSET=ALL\n");
    private final StringBuilder sections = new StringBuilder();
    private final StringBuilder elements =
            new StringBuilder("*USER ELEMENT,TYPE=U1,NODES=2,INTEGRATION POINTS=2,MAXDOF=6\n");
    private final StringBuilder ties = new StringBuilder();
    private final StringBuilder held = new StringBuilder("*BOUNDARY\n");
    private final StringBuilder pushes = new StringBuilder("*CLOAD\n");
    private int lastNode;
    private int lastElement;

    /** One movement in an equation. */
    private record Term(int node, int direction, double factor) {}

    private CalculixDeck(RandomLeaf leaf) {
        this.leaf = leaf;
    }

    static String of(RandomLeaf leaf) {
        return new CalculixDeck(leaf).text();
    }

    private String text() {
        for (Node each : leaf.nodes()) node(each.place());
        for (Member each : leaf.members()) member(each);
        for (RandomLeaf.Pier each : leaf.piers()) pier(each);
        for (Link each : leaf.links()) link(each);
        for (Support each : leaf.supports())
            for (Dof dof : each.held()) held.append(number(each.node()) + "," + (DOFS.indexOf(dof) + 1) + "\n");
        for (Load each : leaf.loads()) load(each);
        return nodes.toString() + elements + "*MATERIAL,NAME=STEEL\n*ELASTIC\n" + number(RandomLeaf.E) + ","
                + number(RandomLeaf.E / (2 * RandomLeaf.G) - 1) + "\n" + sections + ties + held + "*STEP\n*STATIC\n"
                + pushes
                + "*NODE PRINT,NSET=ALL\nU\n*END STEP\n";
    }

    private int node(Vector at) {
        nodes.append(++lastNode + "," + three(at) + "\n");
        return lastNode;
    }

    private int number(String id) {
        for (int i = 0; i < leaf.nodes().size(); i++)
            if (leaf.nodes().get(i).id().equals(id)) return i + 1;
        throw new IllegalArgumentException("No node " + id);
    }

    private Vector at(String id) {
        return leaf.nodes().get(number(id) - 1).place();
    }

    private void member(Member member) {
        Vector along = at(member.end()).minus(at(member.start())).unit();
        Vector y = member.orientation()
                .minus(along.times(along.dot(member.orientation())))
                .unit();
        int end = member.endReleases().isEmpty() ? number(member.end()) : pinned(member, along);
        bar(
                number(member.start()),
                end,
                List.of(y, along.cross(y)),
                member.stiffness().areaIn2(),
                List.of(member.stiffness().izIn4(), member.stiffness().iyIn4()));
    }

    /** A bar's own end, which goes with the node and spins with it about the bar alone. */
    private int pinned(Member member, Vector along) {
        int node = number(member.end());
        int own = node(at(member.end()));
        for (int i = 1; i <= DIRECTIONS; i++) tie(new Term(own, i, 1), new Term(node, i, -1));
        List<Double> parts = List.of(along.x(), along.y(), along.z());
        int first = 0;
        for (int i = 1; i < DIRECTIONS; i++) if (Math.abs(parts.get(i)) > Math.abs(parts.get(first))) first = i;
        List<Term> terms = new ArrayList<>();
        terms.add(new Term(own, first + 4, parts.get(first)));
        for (int i = 0; i < DIRECTIONS; i++) {
            if (i != first) terms.add(new Term(own, i + 4, parts.get(i)));
            terms.add(new Term(node, i + 4, -parts.get(i)));
        }
        tie(terms.toArray(Term[]::new));
        return own;
    }

    private void pier(RandomLeaf.Pier pier) {
        Vector top = at(pier.node());
        int bottom = node(new Vector(top.x(), top.y(), top.z() - pier.lengthIn()));
        held.append(bottom + ",1,6\n");
        bar(
                bottom,
                number(pier.node()),
                List.of(Vector.X, Vector.Y),
                RandomLeaf.Pier.AREA_IN2,
                List.of(pier.inertiaIn4(), pier.inertiaIn4()));
    }

    /** @param axes directions a bar bends in, each with its inertia */
    private void bar(int start, int end, List<Vector> axes, double area, List<Double> inertias) {
        for (int plane = 0; plane < 2; plane++) {
            String name = "E" + ++lastElement;
            Vector axis = axes.get(plane);
            elements.append("*ELEMENT,TYPE=U1,ELSET=" + name + "\n" + lastElement + "," + start + "," + end + "\n");
            sections.append("*BEAM SECTION,ELSET=" + name + ",MATERIAL=STEEL,SECTION=GENERAL\n"
                    + number(area / 2) + "," + number(inertias.get(plane)) + ",0," + number(NONE) + ","
                    + number(STIFF_IN_SHEAR) + "\n" + three(axis) + "\n");
        }
    }

    private void link(Link link) {
        int from = number(link.from());
        int to = number(link.to());
        Vector fromArm = link.atIn().minus(at(link.from()));
        Vector toArm = link.atIn().minus(at(link.to()));
        List<Double> shifts = List.of(link.uxLbPerIn(), link.uyLbPerIn(), link.uzLbPerIn());
        List<Double> turns = List.of(link.rxLbInPerRad(), link.ryLbInPerRad(), link.rzLbInPerRad());
        for (int i = 1; i <= DIRECTIONS; i++) {
            double shift = shifts.get(i - 1);
            if (shift >= RandomLeaf.RIGID) together(i, moved(to, toArm, i, 1), moved(from, fromArm, i, -1));
            else if (shift > 0) spring(link, i, shift, moved(from, fromArm, i, -1), moved(to, toArm, i, -1));
            if (turns.get(i - 1) > 0) tie(new Term(to, i + DIRECTIONS, 1), new Term(from, i + DIRECTIONS, -1));
        }
    }

    private void together(int direction, List<Term> one, List<Term> other) {
        if (one.get(0).direction() != direction) throw new IllegalArgumentException("The shift itself comes first");
        List<Term> terms = new ArrayList<>(one);
        terms.addAll(other);
        tie(terms.toArray(Term[]::new));
    }

    /** A bar an inch long between two points that go with both sides of a hinge, which gives as the hinge does. */
    private void spring(Link link, int direction, double stiffness, List<Term> from, List<Term> to) {
        int one = node(link.atIn());
        int other = node(link.atIn().plus(List.of(Vector.X, Vector.Y, Vector.Z).get(direction - 1)));
        together(direction, List.of(new Term(one, direction, 1)), from);
        together(direction, List.of(new Term(other, direction, 1)), to);
        for (int node : List.of(one, other))
            for (int i = 1; i <= 2 * DIRECTIONS; i++) if (i != direction) held.append(node + "," + i + "\n");
        Vector across = List.of(Vector.Y, Vector.Z, Vector.X).get(direction - 1);
        bar(one, other, List.of(across, across), stiffness / RandomLeaf.E, List.of(1.0, 1.0));
    }

    /** The shift of a point on a rigid arm: of its node, and what the node's turn adds. */
    private static List<Term> moved(int node, Vector arm, int direction, double factor) {
        List<Double> along = List.of(arm.x(), arm.y(), arm.z());
        int next = direction % DIRECTIONS;
        int last = (direction + 1) % DIRECTIONS;
        return List.of(
                new Term(node, direction, factor),
                new Term(node, next + 4, factor * along.get(last)),
                new Term(node, last + 4, -factor * along.get(next)));
    }

    private void tie(Term... terms) {
        List<Term> some = new ArrayList<>();
        for (Term term : terms) if (term.factor() != 0) some.add(term);
        ties.append("*EQUATION\n" + some.size() + "\n");
        for (Term term : some) ties.append(term.node() + "," + term.direction() + "," + number(term.factor()) + "\n");
    }

    private void load(Load load) {
        if (load instanceof Load.AtNode at) put(number(at.node()), at.forceLb(), at.momentLbIn());
        if (load instanceof Load.Uniform spread) {
            Member member = leaf.members().stream()
                    .filter(each -> each.id().equals(spread.member()))
                    .findFirst()
                    .orElseThrow();
            Vector span = at(member.end()).minus(at(member.start()));
            double length = span.length();
            Vector end = spread.perInchLb().times(length / 2);
            Vector moment = span.cross(spread.perInchLb()).times(length / 12);
            put(number(member.start()), end, moment);
            put(number(member.end()), end, moment.negated());
        }
    }

    private void put(int node, Vector force, Vector moment) {
        List<Double> six = List.of(force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z());
        for (int i = 0; i < six.size(); i++)
            if (six.get(i) != 0) pushes.append(node + "," + (i + 1) + "," + number(six.get(i)) + "\n");
    }

    private static String three(Vector is) {
        return number(is.x()) + "," + number(is.y()) + "," + number(is.z());
    }

    /** CalculiX reads twenty characters of a number. */
    private static String number(double is) {
        return String.format(Locale.ROOT, "%.12e", is);
    }
}
