package plumbleaf.engine.gate;

/** What a member of a leaf's frame is. */
public enum MemberRole {
    HINGE_STILE("hinge stile"),
    LATCH_STILE("latch stile"),
    /** Of a slide leaf: the end of its tail. */
    TAIL_UPRIGHT("tail upright"),
    /** Of a slide leaf: what enters the receiver. */
    NOSE_UPRIGHT("nose upright"),
    /** Of a slide leaf, between its ends. */
    UPRIGHT("upright"),
    BOTTOM_RAIL("bottom rail"),
    MID_RAIL("mid rail"),
    TOP_RAIL("top rail"),
    BRACE("brace"),
    /** A round rod with a turnbuckle: carries tension alone. */
    ROD("tension rod");

    private final String words;

    MemberRole(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }

    /** Whether cladding hangs on it. */
    public boolean isRail() {
        return this == BOTTOM_RAIL || this == MID_RAIL || this == TOP_RAIL;
    }
}
