package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.strength.RatedGust;

class GateGustTest {
    /** So fast that the standard's floor of 16 psf says nothing. */
    private static final Yard WINDY = Yard.nursery().with("\"speed\": \"105 mph\"", "\"speed\": \"150 mph\"");

    private static final Design DESIGN = WINDY.design();

    private static RatedGust gate(Design design) {
        return Yard.gate(design).rated().orElseThrow();
    }

    private static PostDesign hingePost(Design design) {
        return design.post(Yard.gate(design).hingePost()).orElseThrow();
    }

    /** A gust is no less for the wind a job is designed for. */
    @Test
    void aRatedGustDoesNotDependOnTheDesignSpeed() {
        RatedGust slower = gate(WINDY.with("\"150 mph\"", "\"140 mph\"").design());
        assertThat(slower.allowable().mph()).isCloseTo(gate(DESIGN).allowable().mph(), within(1e-6));
        assertThat(slower.ultimate().mph()).isCloseTo(gate(DESIGN).ultimate().mph(), within(1e-6));
        assertThat(slower.allowableLink()).isEqualTo(gate(DESIGN).allowableLink());
    }

    @Test
    void aWiderLeafLeavesItsPostLess() {
        RatedGust rated = hingePost(DESIGN).rated().orElseThrow();
        assertThat(rated.allowable().mph()).isBetween(20.0, 150.0);
        double wider = hingePost(
                        WINDY.with("\"opening\": \"4'\"", "\"opening\": \"5'\"").design())
                .rated()
                .orElseThrow()
                .allowable()
                .mph();
        assertThat(wider).isLessThan(rated.allowable().mph());
    }

    /** With no fence beside them the posts of a gate carry its leaf alone. */
    @Test
    void theLeafCountsOnItsPosts() {
        Design alone = WINDY.with("\"style\": \"wood-side-by-side\"", "\"style\": \"none\"")
                .design();
        RatedGust post = hingePost(alone).rated().orElseThrow();
        assertThat(post.allowable().mph()).isBetween(20.0, 300.0);
    }

    @Test
    void aDeeperFootingStandsMore() {
        Design deeper = WINDY.with(
                        "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"", "\"hole\": \"12\\\"\", \"depth\": \"48\\\"\"")
                .design();
        assertThat(hingePost(deeper).rated().orElseThrow().allowable().mph())
                .isGreaterThan(
                        hingePost(DESIGN).rated().orElseThrow().allowable().mph());
    }

    /** A latch that holds 5 lb gives first: the leaf leans on it with H at 150 mph, so {@code V = 150 sqrt(5 / H)}, H by 0.6 W; at 5/3 of it by W and reserve. */
    @Test
    void aWeakLatchIsTheWeakestLink() {
        Design weak = WINDY.designLatchedBy(Force.pounds(5));
        double leans = Yard.gate(weak).hung().get(0).cases().stream()
                .filter(each -> each.combination() == Combination.D_W && each.state() == LeafState.CLOSED)
                .mapToDouble(each -> Math.abs(each.hold().pounds()))
                .max()
                .orElseThrow();
        assertThat(leans).isGreaterThan(5);
        assertThat(gate(weak).allowableLink()).isEqualTo("latch LATCH-THUMB");
        assertThat(gate(weak).allowable().mph()).isCloseTo(150 * Math.sqrt(5 / leans), within(1e-6));
        assertThat(gate(weak).ultimate().mph()).isLessThanOrEqualTo(150 * Math.sqrt(5 * 1.67 / (leans / 0.6)) + 1e-6);
        assertThat(gate(WINDY.designLatchedBy(Force.ZERO)).allowableLink()).doesNotStartWith("latch");
    }

    /** With footings and steel beyond doubt a hinge with a low rating is the weakest link, and is named. */
    @Test
    void theWeakestLinkOfTheWholeBuildIsNamed() {
        RatedGust whole = DESIGN.rated().orElseThrow();
        for (PostDesign post : DESIGN.posts())
            post.rated()
                    .ifPresent(rated -> assertThat(whole.allowable().mph())
                            .isLessThanOrEqualTo(rated.allowable().mph()));
        assertThat(whole.allowable().mph())
                .isLessThanOrEqualTo(gate(DESIGN).allowable().mph());
        Design stout = WINDY.with(
                        "\"R1\": { \"post\": \"F1083-REG-2\", \"hole\": \"10\\\"\", \"depth\": \"36\\\"\" }",
                        "\"R1\": { \"post\": \"F1083-REG-6\", \"hole\": \"24\\\"\", \"depth\": \"96\\\"\" }")
                .with(
                        "\"hingePost\": \"F1083-REG-2.5\", \"latchPost\": \"F1083-REG-2.5\"",
                        "\"hingePost\": \"F1083-REG-6\", \"latchPost\": \"F1083-REG-6\"")
                .with("\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"", "\"hole\": \"24\\\"\", \"depth\": \"96\\\"\"")
                .design();
        assertThat(stout.rated().orElseThrow().allowableLink()).startsWith("rails of B");
        assertThat(gate(stout).allowableLink()).startsWith("hinge G1a.h");
        assertThat(stout.rated().orElseThrow().allowable()).isGreaterThan(whole.allowable());
    }
}
