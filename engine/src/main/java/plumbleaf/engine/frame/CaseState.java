package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;

/** One load case, solved: every number the results are read from. */
final class CaseState {
    final LoadCase loadCase;
    final double[] movements;
    /** What the supports do to the frame, per node direction; nothing where it is free. */
    final double[] reactions;

    final List<MemberLoads> loads;
    final List<double[]> localMovements = new ArrayList<>();
    final List<double[]> endForces = new ArrayList<>();
    private final double[] settled;

    CaseState(Assembly assembly, LoadCase loadCase) {
        this.loadCase = loadCase;
        int directions = assembly.unknown.length;
        double[] nodeForces = new double[directions];
        this.settled = new double[directions];
        List<List<MemberLoads.Spread>> spreads = new ArrayList<>();
        List<List<MemberLoads.Point>> points = new ArrayList<>();
        for (int i = 0; i < assembly.elements.size(); i++) {
            spreads.add(new ArrayList<>());
            points.add(new ArrayList<>());
        }
        for (Load load : loadCase.loads()) {
            boolean known = load.match(
                    atNode -> place(atNode, assembly, nodeForces),
                    uniform -> place(uniform, assembly, spreads),
                    atPoint -> place(atPoint, assembly, points),
                    settlement -> place(settlement, assembly));
            if (!known) throw new IllegalStateException("A load was not placed");
        }
        this.loads = new ArrayList<>();
        double[] total = nodeForces.clone();
        List<double[]> held = new ArrayList<>();
        for (int i = 0; i < assembly.elements.size(); i++) {
            Element element = assembly.elements.get(i);
            loads.add(
                    spreads.get(i).isEmpty() && points.get(i).isEmpty()
                            ? MemberLoads.NONE
                            : new MemberLoads(spreads.get(i), points.get(i)));
            double[] forces = element.heldEndForces(loads.get(i));
            held.add(forces);
            double[] onNodes = element.nodeForces(forces);
            for (int d = 0; d < 12; d++) onNodes[d] = -onNodes[d];
            Assembly.scatter(total, onNodes, assembly.start(element), assembly.end(element));
        }
        this.movements = assembly.movements(total, settled);
        double[] needed = assembly.resistance(movements);
        this.reactions = new double[directions];
        for (int d = 0; d < directions; d++) if (assembly.held(d)) reactions[d] = needed[d] - total[d];
        for (int i = 0; i < assembly.elements.size(); i++) {
            Element element = assembly.elements.get(i);
            double[] local =
                    element.localMovement(Assembly.ends(movements, assembly.start(element), assembly.end(element)));
            localMovements.add(local);
            endForces.add(element.endForces(local, held.get(i)));
        }
    }

    double settled(int direction) {
        return settled[direction];
    }

    Internal internalAt(Assembly assembly, int member, double atIn, boolean after) {
        return assembly.elements.get(member).internalAt(atIn, endForces.get(member), loads.get(member), after);
    }

    private static boolean place(Load.AtNode load, Assembly assembly, double[] nodeForces) {
        int base = 6 * assembly.node(load.node());
        nodeForces[base] += load.forceLb().x();
        nodeForces[base + 1] += load.forceLb().y();
        nodeForces[base + 2] += load.forceLb().z();
        nodeForces[base + 3] += load.momentLbIn().x();
        nodeForces[base + 4] += load.momentLbIn().y();
        nodeForces[base + 5] += load.momentLbIn().z();
        return true;
    }

    private static boolean place(Load.Uniform load, Assembly assembly, List<List<MemberLoads.Spread>> spreads) {
        int index = assembly.member(load.member());
        Element element = assembly.elements.get(index);
        element.mustReach(load.fromIn());
        double to = Math.min(load.toIn(), element.lengthIn);
        double from = Math.min(load.fromIn(), to);
        spreads.get(index)
                .add(new MemberLoads.Spread(
                        from, to, element.toLocal(load.perInchLb()), element.toLocal(load.couplePerInchLb())));
        return true;
    }

    private static boolean place(Load.AtPoint load, Assembly assembly, List<List<MemberLoads.Point>> points) {
        int index = assembly.member(load.member());
        Element element = assembly.elements.get(index);
        element.mustReach(load.atIn());
        double at = Math.min(load.atIn(), element.lengthIn);
        points.get(index)
                .add(new MemberLoads.Point(at, element.toLocal(load.forceLb()), element.toLocal(load.momentLbIn())));
        return true;
    }

    private boolean place(Load.Settlement load, Assembly assembly) {
        int direction = 6 * assembly.node(load.node()) + load.dof().index();
        if (!assembly.held(direction))
            throw new IllegalArgumentException(
                    "Node " + load.node() + " cannot be settled " + load.dof().words() + ": it is not held that way");
        settled[direction] += load.amount();
        return true;
    }
}
