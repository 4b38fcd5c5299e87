package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * What is pinned of a gate's build.
 *
 * @param frame section of the leaf's frame
 * @param flat whether a rectangular tube lies flat: its larger side across the leaf instead of in its plane
 * @param bracing what keeps the leaf square
 * @param bracket of a frame that is bolted together
 * @param hole of both posts
 * @param depth of both footings from grade to the underside of the concrete
 * @param latchHole of the latch post, of a pair the right one, where it is not alike
 * @param latchDepth of its footing, likewise
 * @param rightLeaf of a pair, where its leaves are not built alike
 */
public record GateBuild(
        String gate,
        Stated<String> frame,
        boolean flat,
        Stated<Bracing> bracing,
        Stated<Joint> joint,
        Bracket bracket,
        Stated<String> hingePost,
        Stated<String> latchPost,
        Stated<Length> hole,
        Stated<Length> depth,
        Stated<Length> latchHole,
        Stated<Length> latchDepth,
        RightLeaf rightLeaf) {
    /** With both footings alike. */
    public GateBuild(
            String gate,
            Stated<String> frame,
            boolean flat,
            Stated<Bracing> bracing,
            Stated<Joint> joint,
            Bracket bracket,
            Stated<String> hingePost,
            Stated<String> latchPost,
            Stated<Length> hole,
            Stated<Length> depth) {
        this(
                gate,
                frame,
                flat,
                bracing,
                joint,
                bracket,
                hingePost,
                latchPost,
                hole,
                depth,
                Stated.open(),
                Stated.open(),
                RightLeaf.ALIKE);
    }

    public static GateBuild open(String gate) {
        return new GateBuild(
                gate,
                Stated.open(),
                false,
                Stated.open(),
                Stated.open(),
                Bracket.UNKNOWN,
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
        return with(frame, hingePost, Stated.of(deep));
    }

    public GateBuild withFrame(String section) {
        return with(Stated.of(section), hingePost, depth);
    }

    public GateBuild withHingePost(String section) {
        return with(frame, Stated.of(section), depth);
    }

    private GateBuild with(Stated<String> tube, Stated<String> post, Stated<Length> deep) {
        return new GateBuild(
                gate,
                tube,
                flat,
                bracing,
                joint,
                bracket,
                post,
                latchPost,
                hole,
                deep,
                latchHole,
                latchDepth,
                rightLeaf);
    }
}
