package plumbleaf.engine.frame;

import java.util.List;

/** Directions of a node that do not move, unless a load case settles them. */
public record Support(String node, List<Dof> held) {
    public Support {
        held = List.copyOf(held);
    }

    public static Support fixed(String node) {
        return new Support(node, List.of(Dof.values()));
    }

    /** Held against moving, free to turn. */
    public static Support pinned(String node) {
        return new Support(node, List.of(Dof.UX, Dof.UY, Dof.UZ));
    }

    /** Keeps a node of a plane frame in the x-y plane. */
    public static Support inPlaneXy(String node) {
        return new Support(node, List.of(Dof.UZ, Dof.RX, Dof.RY));
    }
}
