package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.support.Support;

/**
 * A new post as it is bought and set.
 *
 * @param id {@code P7}
 * @param length from its foot to its top
 * @param hole diameter; zero where nothing is dug
 * @param depth from finished grade to the underside of the concrete
 * @param gravel dug below the concrete
 * @param anchors that hold it to a wall or a slab
 * @param support what holds it
 */
public record PostTake(
        String id,
        String run,
        boolean atGate,
        PostStock section,
        Length length,
        Length hole,
        Length depth,
        Length gravel,
        int anchors,
        Support support) {
    /** A post along a wall: three anchors; a plate on a slab: four. Common practice, no source; strength is checked elsewhere. */
    private static final int WALL_ANCHORS = 3;

    private static final int SLAB_ANCHORS = 4;

    /**
     * What a post of the layout takes; nothing where one stands already or hinges go on a wall.
     *
     * @param hole of a post with a new footing; its foot stands on the bottom of the concrete
     * @param gravel dug below
     */
    public static List<PostTake> of(Post post, PostStock section, HoleSize hole, Length gravel) {
        Length out = post.outOfGround();
        return post.support()
                .match(
                        footing -> List.of(new PostTake(
                                post.id(),
                                post.run(),
                                !post.gate().isEmpty(),
                                section,
                                out.plus(hole.depth()),
                                hole.diameter(),
                                hole.depth(),
                                gravel,
                                0,
                                footing)),
                        driven -> undug(post, section),
                        plate -> undug(post, section),
                        socket -> undug(post, section),
                        wall -> undug(post, section),
                        existing -> undug(post, section));
    }

    /** What a post takes that stands in no hole of its own. */
    public static List<PostTake> undug(Post post, PostStock section) {
        Length out = post.outOfGround();
        return post.support()
                .match(
                        footing -> List.of(),
                        driven -> List.of(standing(post, section, out.plus(driven.depth()), 0)),
                        plate -> List.of(standing(post, section, out, SLAB_ANCHORS)),
                        socket -> List.of(standing(post, section, out.plus(socket.depth()), 0)),
                        wall -> post.role() == PostRole.WALL
                                ? List.of(standing(post, section, out, WALL_ANCHORS))
                                : List.of(),
                        existing -> List.of());
    }

    private static PostTake standing(Post post, PostStock section, Length length, int anchors) {
        boolean atGate = !post.gate().isEmpty();
        return new PostTake(
                post.id(),
                post.run(),
                atGate,
                section,
                length,
                Length.ZERO,
                Length.ZERO,
                Length.ZERO,
                anchors,
                post.support());
    }

    public boolean isDug() {
        return !hole.isZero() && !depth.isZero();
    }

    /** Area of its outside, which takes no concrete. */
    public Area outline() {
        double d = section.depth().inches();
        return Area.squareInches(
                section.isRound() ? Math.PI * d * d / 4 : d * section.width().inches());
    }

    /** How deep the crew digs. */
    public Length dug() {
        return depth.plus(gravel);
    }

    /** Soil that comes out of its hole. */
    double holeFt3() {
        double d = hole.inches();
        return isDug() ? Math.PI * d * d / 4 * dug().inches() / 1728 : 0;
    }
}
