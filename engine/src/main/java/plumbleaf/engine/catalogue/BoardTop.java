package plumbleaf.engine.catalogue;

/** How the top of an upright board is shaped. */
public enum BoardTop {
    FLAT("flat"),
    /** Both corners cut at 45 degrees, a quarter of the width. */
    DOG_EAR("dog-ear"),
    /** Two cuts that meet on the middle at a right angle. */
    POINTED("pointed"),
    /** Two arcs that meet in a point on the middle. */
    GOTHIC("gothic"),
    /** A half circle. */
    ROUND("round");

    private final String key;

    BoardTop(String key) {
        this.key = key;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }

    /**
     * How far the shape reaches down from the top, over the width of the board: 1/4 for a dog-ear, 1/2 for a point at a right angle and for a half
     * circle, {@code sqrt(3)/2} for a gothic arch of two arcs with the board's width as radius. Geometry. Check: BoardTopTest.
     */
    public double depthOverWidth() {
        return switch (this) {
            case FLAT -> 0;
            case DOG_EAR -> 0.25;
            case POINTED, ROUND -> 0.5;
            case GOTHIC -> Math.sqrt(3) / 2;
        };
    }

    /** Straight saw cuts that make it; arcs are cut with a band or jig saw along a template. */
    public int sawCuts() {
        return switch (this) {
            case FLAT -> 0;
            case DOG_EAR, POINTED, GOTHIC -> 2;
            case ROUND -> 1;
        };
    }

    /**
     * Share of the rectangle {@code width x depth} at the top that is cut away: triangles for straight cuts; for the half circle {@code 1 - pi/4}; for the
     * gothic arch {@code 1 - (4 pi - 3 sqrt(3)) / (6 sqrt(3))}. Geometry. Check: BoardTopTest.
     */
    public double cutAwayShare() {
        return switch (this) {
            case FLAT -> 0;
            case DOG_EAR -> 0.25;
            case POINTED -> 0.5;
            case ROUND -> 1 - Math.PI / 4;
            case GOTHIC -> 1 - (4 * Math.PI - 3 * Math.sqrt(3)) / (6 * Math.sqrt(3));
        };
    }
}
