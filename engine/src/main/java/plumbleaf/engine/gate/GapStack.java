package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * What a gap has to hold, one thing on top of another.
 *
 * @param parts in the order they are counted
 */
public record GapStack(List<Part> parts) {
    public record Part(String name, Length takes) {}

    /** Of size, diagonals and squareness of a welded leaf together. Common practice, no source. */
    private static final Length SHOP = Length.inches(1 / 16.0);

    /** Zinc or powder on both faces of a gap: 5 thousandths each. Common practice, no source. */
    private static final Length COAT = Length.inches(0.01);

    /** A steel leaf between a winter night and the summer sun: 150 F at 6.7e-6 a degree, 12 thousandths of an inch a foot. */
    private static final double HEAT_PER_IN = 150 * 6.7e-6;

    /** A post that is not yet set may come out so far off plumb or off its place at the leaf's height: 1/8 in. Common practice, no source. */
    private static final Length POST_TO_COME = Length.inches(0.125);

    /** The same where a leaf is built before its posts are dug. Common practice, no source. */
    private static final Length POST_UNSEEN = Length.inches(0.25);

    /** A standing post was measured to a sixteenth. */
    private static final Length POST_READ = Length.inches(1 / 16.0);

    /** How much is known of the posts. */
    enum Posts {
        PLANNED,
        BUILT_BEFORE,
        MEASURED
    }

    public GapStack {
        parts = List.copyOf(parts);
    }

    public Length needed() {
        Length sum = Length.ZERO;
        for (Part part : parts) sum = sum.plus(part.takes());
        return sum;
    }

    /** Between latch edge and latch post. */
    static GapStack atLatch(Length noseSweep, Length width, Posts posts) {
        return new GapStack(List.of(
                new Part("nose sweep", noseSweep),
                new Part("posts", off(posts).times(2)),
                new Part("shop", SHOP),
                new Part("coat", COAT),
                new Part("heat", width.times(HEAT_PER_IN))));
    }

    /** Between hinge post and hinge edge; the heel is judged by itself over the whole swing. */
    static GapStack atHinge(Posts posts) {
        return new GapStack(List.of(new Part("post", off(posts)), new Part("shop", SHOP), new Part("coat", COAT)));
    }

    private static Length off(Posts posts) {
        return switch (posts) {
            case PLANNED -> POST_TO_COME;
            case BUILT_BEFORE -> POST_UNSEEN;
            case MEASURED -> POST_READ;
        };
    }
}
