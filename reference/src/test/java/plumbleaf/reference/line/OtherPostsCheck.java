package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.line.Post;

/**
 * Posts cored into a slab along part of a run: what lies in the ground is in the way of holes only. Ten feet that may not be dug force a bay of ten feet; cored there,
 * 24 ft stand in three bays of eight.
 *
 * Source: plane geometry.
 * Tolerance: 1e-6 in.
 */
class OtherPostsCheck {
    private static final String NO_DIG = ", \"noDig\": [ { \"from\": \"7'\", \"to\": \"17'\", \"why\": \"slab\" } ]";
    private static final String CORED =
            ", \"otherPosts\": [ { \"from\": \"7'\", \"to\": \"17'\", \"support\": { \"kind\": \"core-socket\" } } ]";

    private static boolean isCored(Post post) {
        return post.support()
                .match(footing -> false, driven -> false, plate -> false, core -> true, wall -> false, old -> false);
    }

    @Test
    void aSlabThatMayNotBeDugForcesALongBay() {
        LaidOut laid = LaidOut.run("{ \"length\": \"24'\" }", NO_DIG, 0, 0, 24, 0);
        assertThat(laid.layout().findings())
                .anySatisfy(each -> assertThat(each.id()).isEqualTo("line.no-layout"));
    }

    @Test
    void coredPostsStandInIt() {
        LaidOut laid = LaidOut.run("{ \"length\": \"24'\" }", NO_DIG + CORED, 0, 0, 24, 0);
        assertThat(laid.layout().findings())
                .noneSatisfy(each -> assertThat(each.id()).isEqualTo("line.no-layout"));
        List<Post> posts = laid.layout().posts();
        assertThat(posts).hasSize(4);
        assertThat(posts.get(1).station().inches()).isCloseTo(96, within(1e-6));
        assertThat(posts).extracting(OtherPostsCheck::isCored).containsExactly(false, true, true, false);
    }
}
