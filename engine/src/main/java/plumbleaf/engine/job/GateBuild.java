package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * What is pinned of a gate's build.
 *
 * @param frame section of the leaf's frame
 * @param braces number of diagonals, 0 to 2
 * @param depth of both footings from grade to the underside of the concrete
 */
public record GateBuild(
        String gate,
        Stated<String> frame,
        Stated<Integer> braces,
        Stated<Joint> joint,
        Stated<String> hingePost,
        Stated<String> latchPost,
        Stated<Length> hole,
        Stated<Length> depth) {
    public static GateBuild open(String gate) {
        return new GateBuild(
                gate,
                Stated.open(),
                Stated.open(),
                Stated.open(),
                Stated.open(),
                Stated.open(),
                Stated.open(),
                Stated.open());
    }

    /** Whether something that strength and sag depend on was left to be chosen. */
    public boolean isOpen() {
        return !(frame.isSaid() && hingePost.isSaid() && hole.isSaid() && depth.isSaid());
    }

    public GateBuild withDepth(Length deep) {
        return new GateBuild(gate, frame, braces, joint, hingePost, latchPost, hole, Stated.of(deep));
    }

    public GateBuild withHingePost(String section) {
        return new GateBuild(gate, frame, braces, joint, Stated.of(section), latchPost, hole, depth);
    }
}
