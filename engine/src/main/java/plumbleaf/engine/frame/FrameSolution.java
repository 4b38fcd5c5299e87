package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a frame does under its load cases. Results are read by the name of the case and the names of nodes and parts. */
public final class FrameSolution {
    private final Assembly assembly;
    private final Map<String, CaseState> cases = new LinkedHashMap<>();

    FrameSolution(Assembly assembly, List<LoadCase> loadCases) {
        this.assembly = assembly;
        for (LoadCase each : loadCases)
            if (cases.put(each.name(), new CaseState(assembly, each)) != null)
                throw new IllegalArgumentException("Two load cases are called " + each.name());
    }

    public FrameModel model() {
        return assembly.model;
    }

    public List<String> caseNames() {
        return List.copyOf(cases.keySet());
    }

    /** How a node moved. */
    public Motion motion(String loadCase, String node) {
        return motion(state(loadCase).movements, assembly.node(node));
    }

    /** The displacement a probe asks for. */
    public double displacement(String loadCase, Probe probe) {
        return probe.of(motion(loadCase, probe.node()));
    }

    /** What the supports do to a node, in global axes; nothing where it is free. */
    public Wrench reaction(String loadCase, String node) {
        return wrench(state(loadCase).reactions, 6 * assembly.node(node));
    }

    /** What the ground does through a spring to its node, in global axes. */
    public Wrench groundForce(String loadCase, String spring) {
        for (GroundSpring each : assembly.model.groundSprings())
            if (each.id().equals(spring)) return groundForce(state(loadCase), each);
        throw new IllegalArgumentException("There is no spring " + spring);
    }

    /** What a link does to its {@code from} node's side, at the link's place and in the link's axes; its {@code to} side feels the opposite. */
    public Wrench linkForce(String loadCase, String link) {
        double[] movements = state(loadCase).movements;
        for (LinkElement each : assembly.links)
            if (each.link.id().equals(link)) return wrench(each.forces(linkEnds(each, movements)), 0);
        throw new IllegalArgumentException("There is no link " + link);
    }

    public double memberLengthIn(String member) {
        return element(member).lengthIn;
    }

    /** The member's own axes, x, y and z, as global directions. */
    public List<Vector> memberAxes(String member) {
        Element element = element(member);
        return List.of(element.axis(0), element.axis(1), element.axis(2));
    }

    public EndForces endForces(String loadCase, String member) {
        double[] forces = state(loadCase).endForces.get(assembly.member(member));
        return new EndForces(wrench(forces, 0), wrench(forces, 6));
    }

    /** Forces inside a member at a distance from its start; at a concentrated load, those just before it. */
    public Internal internalAt(String loadCase, String member, double atIn) {
        element(member).mustReach(atIn);
        return state(loadCase).internalAt(assembly, assembly.member(member), atIn, false);
    }

    /** The largest and smallest bending along a member, and where. */
    public Extremes extremes(String loadCase, String member) {
        return MemberForces.extremes(assembly, state(loadCase), assembly.member(member));
    }

    /**
     * How a point of a member moved, in global axes: the member's own end, then {@code v = v0 + t0 x + integral (x - s) M / EI ds}, by
     * Simpson's rule, which is exact here.
     */
    public Motion motionAlong(String loadCase, String member, double atIn) {
        Element element = element(member);
        element.mustReach(atIn);
        int index = assembly.member(member);
        CaseState state = state(loadCase);
        return new MemberShape(element, state, index).motionAt(atIn);
    }

    /** Loads and everything that answers them, added up about the origin. */
    public Balance balance(String loadCase) {
        return Balances.of(assembly, state(loadCase));
    }

    /** One displacement, split over members, springs, links and settlements. See {@link VirtualWork}. */
    public VirtualWork virtualWork(String loadCase, Probe probe) {
        CaseState real = state(loadCase);
        CaseState unit = new CaseState(assembly, LoadCase.of("unit load", probe.unitLoad()));
        List<VirtualWork.Part> parts = new ArrayList<>();
        for (int i = 0; i < assembly.elements.size(); i++) parts.add(Strain.member(assembly, real, unit, i));
        for (LinkElement link : assembly.links)
            parts.add(Strain.spring(
                    link.link.id(),
                    link.forces(linkEnds(link, real.movements)),
                    link.partings(linkEnds(link, unit.movements))));
        for (GroundSpring spring : assembly.model.groundSprings())
            parts.add(Strain.ground(spring, real.movements, unit.movements, 6 * assembly.node(spring.node())));
        Strain.settlements(assembly, real, unit, parts);
        return new VirtualWork(displacement(loadCase, probe), parts);
    }

    /** What the loads and the unit load of a probe leave in members, stretch by stretch: what {@link #virtualWork} is the sum of. */
    public List<Stretch> stretches(String loadCase, Probe probe, List<String> members) {
        CaseState real = state(loadCase);
        CaseState unit = new CaseState(assembly, LoadCase.of("unit load", probe.unitLoad()));
        List<Stretch> stretches = new ArrayList<>();
        for (String member : members) stretches.addAll(Strain.stretches(assembly, real, unit, assembly.member(member)));
        return stretches;
    }

    private Wrench groundForce(CaseState state, GroundSpring spring) {
        return Balances.groundForce(spring, state.movements, 6 * assembly.node(spring.node()));
    }

    private double[] linkEnds(LinkElement link, double[] movements) {
        return Assembly.ends(movements, assembly.node(link.link.from()), assembly.node(link.link.to()));
    }

    private Element element(String member) {
        return assembly.elements.get(assembly.member(member));
    }

    private CaseState state(String loadCase) {
        CaseState state = cases.get(loadCase);
        if (state == null) throw new IllegalArgumentException("There is no load case " + loadCase);
        return state;
    }

    private static Motion motion(double[] movements, int node) {
        Wrench pair = wrench(movements, 6 * node);
        return new Motion(pair.forceLb(), pair.momentLbIn());
    }

    static Wrench wrench(double[] six, int at) {
        return new Wrench(
                new Vector(six[at], six[at + 1], six[at + 2]), new Vector(six[at + 3], six[at + 4], six[at + 5]));
    }
}
