package plumbleaf.engine.line;

import plumbleaf.engine.quantity.Angle;

/** What a post does in the fence. */
public enum PostRole {
    LINE("line"),
    END("end"),
    CORNER("corner"),
    GATE("gate"),
    /** The rear roller post of a slide gate, beside the leaf's tail: the fence goes on past it. */
    ROLLER("roller"),
    WALL("wall");

    /** A corner turned less than this is a bend, and its post a line post. Common practice, no source. */
    private static final Angle CORNER_FROM = Angle.degrees(10);

    private final String key;

    PostRole(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** That of the run's own post where its line turns so much, to either side. */
    public static PostRole atTurn(Angle turn) {
        return Math.abs(turn.radians()) > CORNER_FROM.radians() ? CORNER : LINE;
    }
}
