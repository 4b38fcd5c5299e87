package plumbleaf.web.page;

import java.util.List;

/**
 * A drawing on the page.
 *
 * @param name    what it shows, in a few words, read aloud by a screen reader
 * @param svg     safe markup, made by our own drawing code only
 * @param wide    whether it takes the whole width; else two stand side by side
 * @param handles what can be taken hold of and moved in it
 * @param space   bodies to be turned about, as JSON; empty for a flat drawing
 */
public record Picture(String name, String svg, boolean wide, List<Handle> handles, String space) {
    public Picture {
        handles = List.copyOf(handles);
    }

    public Picture(String name, String svg, boolean wide, List<Handle> handles) {
        this(name, svg, wide, handles, "");
    }

    public static Picture inSpace(String name, String bodies) {
        return new Picture(name, "", false, List.of(), bodies);
    }

    public Picture with(List<Handle> more) {
        return new Picture(name, svg, wide, more, space);
    }

    /**
     * A thing in the drawing that moves one length in the job, or turns one angle. A thing with two of them moves both ways.
     *
     * @param of     the thing, as the drawing marks it: {@code G1}
     * @param path   the length it moves: {@code gates[0].station}
     * @param name   what that length is: {@code Station of gate G1}
     * @param way    where the length grows, in the drawing's real inches; of an angle, where it is nothing and which way it turns
     * @param now    what it is now: inches, degrees or per cent
     * @param step   the trade's own step it snaps to, in the same
     * @param least  what it cannot be less than; far below nothing where a length may be negative
     * @param most   what it cannot be more than
     */
    public record Handle(
            String of,
            String path,
            String name,
            Way way,
            double now,
            double step,
            double least,
            double most,
            Told told) {}

    /** How a value is told while it moves, and written down. */
    public enum Told {
        FEET_AND_INCHES("us"),
        MILLIMETRES("metric"),
        DEGREES("degrees"),
        PERCENT("percent"),
        PLACE("place");

        private final String key;

        Told(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /**
     * A direction, x to the right and y up, as long as the thing moves in the drawing for one unit of its value: one for a length.
     *
     * @param turn   1 for an angle that grows from there against the clock, -1 with it, 0 for a length
     * @param aboutX what an angle turns about: this far right of the drawing's origin, in real inches
     */
    public record Way(double dx, double dy, int turn, double aboutX) {
        public static final Way UP = new Way(0, 1);
        public static final Way DOWN = new Way(0, -1);

        public Way(double dx, double dy) {
            this(dx, dy, 0, 0);
        }

        public static Way right(int sign) {
            return new Way(sign, 0);
        }

        public Way turning(int turn, double aboutX) {
            return new Way(dx, dy, turn, aboutX);
        }
    }
}
