package plumbleaf.engine.support;

/** What a wall is made of. */
public enum WallKind {
    /** Cast concrete. */
    CONCRETE("concrete"),
    /** Solid masonry. */
    MASONRY("masonry"),
    /** Hollow block. */
    BLOCK("block"),
    /** A framed wall; studs are found and blocked first. */
    STUD("stud"),
    /** A brick face on a framed wall: refuses a hinge. */
    BRICK_VENEER("brick-veneer"),
    /** Boards or panels on a framed wall: refuses a hinge. */
    SIDING("siding");

    private final String key;

    WallKind(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
