package plumbleaf.engine.frame;

/** Adds up everything that acts on a frame from outside. */
final class Balances {
    private Wrench sum = Wrench.ZERO;
    private double forceScaleLb;
    private double momentScaleLbIn;

    private Balances() {}

    static Balance of(Assembly assembly, CaseState state) {
        Balances all = new Balances();
        for (Load load : state.loadCase.loads()) {
            boolean counted = load.match(
                    atNode -> all.add(place(assembly, atNode.node()), atNode.forceLb(), atNode.momentLbIn()),
                    uniform -> all.add(assembly, uniform),
                    atPoint -> all.add(
                            element(assembly, atPoint.member()).placeAt(atPoint.atIn()),
                            atPoint.forceLb(),
                            atPoint.momentLbIn()),
                    settlement -> true);
            if (!counted) throw new IllegalStateException("A load was not counted");
        }
        for (int node = 0; node < assembly.model.nodes().size(); node++) {
            Wrench reaction = FrameSolution.wrench(state.reactions, 6 * node);
            all.add(assembly.model.nodes().get(node).place(), reaction.forceLb(), reaction.momentLbIn());
        }
        for (GroundSpring spring : assembly.model.groundSprings()) {
            Wrench force = groundForce(spring, state.movements, 6 * assembly.node(spring.node()));
            all.add(place(assembly, spring.node()), force.forceLb(), force.momentLbIn());
        }
        return new Balance(all.sum, all.forceScaleLb, all.momentScaleLbIn);
    }

    static Wrench groundForce(GroundSpring spring, double[] movements, int base) {
        double[] force = new double[6];
        for (Dof row : Dof.values())
            for (Dof column : Dof.values())
                force[row.index()] -= spring.stiffness().entry(row, column) * movements[base + column.index()];
        return FrameSolution.wrench(force, 0);
    }

    private boolean add(Vector at, Vector force, Vector moment) {
        Vector turning = at.cross(force);
        sum = sum.plus(new Wrench(force, moment.plus(turning)));
        forceScaleLb = Math.max(forceScaleLb, force.length());
        momentScaleLbIn = Math.max(momentScaleLbIn, Math.max(moment.length(), turning.length()));
        return true;
    }

    private boolean add(Assembly assembly, Load.Uniform load) {
        Element element = element(assembly, load.member());
        double to = Math.min(load.toIn(), element.lengthIn);
        return add(
                element.placeAt((load.fromIn() + to) / 2),
                load.perInchLb().times(to - load.fromIn()),
                load.couplePerInchLb().times(to - load.fromIn()));
    }

    private static Vector place(Assembly assembly, String node) {
        return assembly.model.nodes().get(assembly.node(node)).place();
    }

    private static Element element(Assembly assembly, String member) {
        return assembly.elements.get(assembly.member(member));
    }
}
