package plumbleaf.engine.frame;

import java.util.List;

/**
 * A straight prismatic member between two nodes, fixed to each unless released there.
 *
 * <p>Its own x runs from start to end, its y is the part of {@code orientation} square to that, its z makes the triad right-handed. An
 * offset is a rigid arm from the node to where the flexible member begins; the member's length, loads and results are those of the
 * flexible part. A released direction, in the member's own axes, passes no force between the end and its node.
 *
 * @param orientation any vector with a part towards the member's own y
 * @param startOffsetIn from the start node to the member's beginning, along the global axes
 * @param endOffsetIn from the end node to the member's end, along the global axes
 * @param startReleases what the start does not hold
 * @param endReleases what the end does not hold
 */
public record Member(
        String id,
        String start,
        String end,
        Stiffness stiffness,
        Vector orientation,
        Vector startOffsetIn,
        Vector endOffsetIn,
        List<Dof> startReleases,
        List<Dof> endReleases) {
    /** A pin all round that still holds the bar against spinning about itself; the other end of a {@link #bar} lets that go too. */
    private static final List<Dof> PINNED = List.of(Dof.RY, Dof.RZ);

    private static final List<Dof> PINNED_AND_SPINNING = List.of(Dof.RX, Dof.RY, Dof.RZ);

    public Member {
        startReleases = List.copyOf(startReleases);
        endReleases = List.copyOf(endReleases);
        if (id.isEmpty()) throw new IllegalArgumentException("A member needs a name");
        if (orientation.isZero()) throw new IllegalArgumentException("Member " + id + ": orientation has no direction");
    }

    /** Fixed at both ends, from node to node. */
    public static Member fixed(String id, String start, String end, Stiffness stiffness, Vector orientation) {
        return new Member(id, start, end, stiffness, orientation, Vector.ZERO, Vector.ZERO, List.of(), List.of());
    }

    /** A truss bar: carries force along itself alone, besides loads put on it. */
    public static Member bar(String id, String start, String end, Stiffness stiffness, Vector orientation) {
        return fixed(id, start, end, stiffness, orientation).released(PINNED, PINNED_AND_SPINNING);
    }

    public Member released(List<Dof> atStart, List<Dof> atEnd) {
        return new Member(id, start, end, stiffness, orientation, startOffsetIn, endOffsetIn, atStart, atEnd);
    }

    public Member offset(Vector atStartIn, Vector atEndIn) {
        return new Member(id, start, end, stiffness, orientation, atStartIn, atEndIn, startReleases, endReleases);
    }

    public Member with(Stiffness other) {
        return new Member(id, start, end, other, orientation, startOffsetIn, endOffsetIn, startReleases, endReleases);
    }
}
