package plumbleaf.reference.frame;

import java.util.ArrayList;
import java.util.List;
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

/** Writes an example of a plane frame or truss as a space frame whose nodes keep to the x-y plane. Units are the example's own. */
final class PlaneFrame {
    static final String CASE = "printed";

    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<GroundSpring> springs = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();

    PlaneFrame node(String id, double x, double y) {
        nodes.add(new Node(id, x, y, 0));
        supports.add(Support.inPlaneXy(id));
        return this;
    }

    PlaneFrame hold(String node, Dof... dofs) {
        supports.add(new Support(node, List.of(dofs)));
        return this;
    }

    PlaneFrame fix(String node) {
        return hold(node, Dof.UX, Dof.UY, Dof.RZ);
    }

    PlaneFrame pin(String node) {
        return hold(node, Dof.UX, Dof.UY);
    }

    PlaneFrame beam(String id, String start, String end, double e, double a, double i) {
        members.add(Member.fixed(id, start, end, new Stiffness(e, e, a, i, i, i), across(start, end)));
        return this;
    }

    PlaneFrame beam(String id, String start, String end, double e, double a, double i, List<Dof> loose) {
        members.add(Member.fixed(id, start, end, new Stiffness(e, e, a, i, i, i), across(start, end))
                .released(List.of(), loose));
        return this;
    }

    PlaneFrame bar(String id, String start, String end, double e, double a) {
        members.add(Member.bar(id, start, end, new Stiffness(e, e, a, 1, 1, 1), across(start, end)));
        for (String node : List.of(start, end)) supports.add(new Support(node, List.of(Dof.RZ)));
        return this;
    }

    PlaneFrame ground(String node, Dof dof, double k) {
        springs.add(new GroundSpring("spring at " + node, node, SpringMatrix.NONE.with(dof, dof, k)));
        return this;
    }

    PlaneFrame spring(String id, String from, String to, double k) {
        links.add(new Link(id, from, to, place(from), Vector.X, Vector.Y, k, 0, 0, 0, 0, 0));
        return this;
    }

    /** Holds both ways alike and turns freely. */
    PlaneFrame hinge(String id, String from, String to, double k) {
        links.add(new Link(id, from, to, place(from), Vector.X, Vector.Y, k, k, 0, 0, 0, 0));
        return this;
    }

    PlaneFrame load(String node, double fx, double fy, double mz) {
        loads.add(new Load.AtNode(node, new Vector(fx, fy, 0), new Vector(0, 0, mz)));
        return this;
    }

    PlaneFrame load(Load load) {
        loads.add(load);
        return this;
    }

    FrameSolution solved() {
        return Frames.solve(new FrameModel(nodes, members, springs, links, supports), new LoadCase(CASE, loads));
    }

    private Vector across(String start, String end) {
        return Vector.Z.cross(place(end).minus(place(start)));
    }

    private Vector place(String node) {
        for (Node each : nodes) if (each.id().equals(node)) return each.place();
        throw new IllegalArgumentException("No node " + node);
    }
}
