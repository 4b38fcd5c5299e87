package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.line.Post;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Posts cored into a slab along part of a run: what lies in the ground is in the way of holes only. Ten feet that may not be dug force a bay of ten feet; cored there,
 * 24 ft stand in three bays of eight. No hole comes nearer to a buried line than half its width, the tolerance and half the hole.
 *
 * Source: plane geometry; Common Ground Alliance best practice 5.19 (CX38).
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

    /** A 4 in. drain under the middle of 12 ft, 18 in. to keep off, 10 in. holes: 25 in. each side of its middle. */
    @Test
    void aBuriedLineKeepsPostsOffByItsWidthToo() {
        Vector strip = Vectors.one("rule", "CX38");
        LaidOut laid = LaidOut.of("{ \"format\": \"plumbleaf-job\", \"version\": 1, \"ground\": { \"shots\": ["
                + "{ \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"12'\", \"elevation\": \"0\\\"\" } ] },"
                + "\"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"12'\" } ], \"maxBay\": \"10'\", \"style\": \"wood-side-by-side\" } ],"
                + "\"existing\": { \"lines\": [ { \"kind\": \"drain\", \"run\": \"R1\", \"station\": \"6'\", \"width\": \""
                + strip.text("facility_in") + "\\\"\", \"tolerance\": \"" + strip.text("tolerance_in")
                + "\\\"\" } ] } }");
        double hole = LaidOut.SIZES.hole(laid.job().runs().get(0)).inches();
        assertThat(hole).isEqualTo(strip.in("hole_in"));
        double off = Math.abs(laid.layout().posts().get(1).station().inches() - 72);
        assertThat(off).isCloseTo(strip.out("half_strip_in"), within(1e-6));
    }
}
