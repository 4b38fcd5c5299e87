package plumbleaf.engine.frame;

/** A point of the frame where members, springs and supports meet. */
public record Node(String id, double xIn, double yIn, double zIn) {
    public Node {
        if (id.isEmpty()) throw new IllegalArgumentException("A node needs a name");
    }

    public static Node at(String id, Vector placeIn) {
        return new Node(id, placeIn.x(), placeIn.y(), placeIn.z());
    }

    public Vector place() {
        return new Vector(xIn, yIn, zIn);
    }
}
