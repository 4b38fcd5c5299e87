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
     * A thing in the drawing that moves one length in the job.
     *
     * @param of     the thing: {@code G1}
     * @param path   the length it moves: {@code gates[0].station}
     * @param name   what that length is: {@code Station of gate G1}
     * @param axis   {@code x} or {@code y}, of the drawing in real inches
     * @param sign   1 where the length grows with the axis, -1 where it falls
     * @param inches what it is now
     * @param step   the trade's own step it snaps to, in inches
     */
    public record Handle(String of, String path, String name, String axis, int sign, double inches, double step) {}
}
