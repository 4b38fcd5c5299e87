package plumbleaf.engine.frame;

import java.util.List;

/** One of the six ways a node, or a member's end in its own axes, can move. The order is that of every vector of six here. */
public enum Dof {
    UX(0, "along x"),
    UY(1, "along y"),
    UZ(2, "along z"),
    RX(3, "about x"),
    RY(4, "about y"),
    RZ(5, "about z");

    private final int index;
    private final String words;

    Dof(int index, String words) {
        this.index = index;
        this.words = words;
    }

    private static final List<Dof> IN_ORDER = List.of(values());

    static Dof at(int index) {
        return IN_ORDER.get(index);
    }

    /** Its place among six numbers. */
    int index() {
        return index;
    }

    public boolean isRotation() {
        return index > 2;
    }

    /** {@code along x}, {@code about z}. */
    public String words() {
        return words;
    }
}
