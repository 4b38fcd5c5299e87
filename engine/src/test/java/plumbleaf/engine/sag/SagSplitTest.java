package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbleaf.engine.sag.HungGates.walkGate;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.section.Section;

/** The budget adds up, and moves the way a fence builder knows it does. */
class SagSplitTest {
    private static final HungLoads PERSON = HungLoads.person(Force.pounds(200));

    @ParameterizedTest
    @CsvSource({
        "46, 66, 1, 0, 2",
        "46, 66, 0, 0, 2",
        "70, 60, 1, 0.08, 2",
        "70, 48, 2, -0.1, 3",
        "94, 70, 1, 0.05, 3",
        "40, 44, 0, -0.2, 4"
    })
    void causesAddUpToTheDrop(double width, double height, int braces, double slope, int hinges) {
        Leaf leaf = HungGates.clad(HungGates.leaf(width, height, braces, slope, hinges, SwingWay.IN), 120, 1);
        GateSag sag = Sags.of(HungGates.gate(leaf, HungGates.SQUARE_POST), PERSON, LifeJudgement.USUAL);
        assertThat(sag.byCause().total().inches()).isCloseTo(sag.total().inches(), within(1e-9));
        assertThat(sag.byTime().camber().plus(sag.byTime().atRelease()).inches())
                .isCloseTo(sag.total().inches(), within(1e-9));
        assertThat(sag.byCause().leaf().inches()).isPositive();
        assertThat(sag.byCause().hingeFlex().inches()).isPositive();
        assertThat(sag.byCause().post().inches()).isPositive();
        assertThat(sag.byCause().footing().inches()).isPositive();
    }

    /** A middle hinge may turn the top one's force about, but it has no lever to hold the leaf's play. */
    @Test
    void aThirdHingeTakesNoPlayAway() {
        Leaf leaf = HungGates.leaf(46, 66, 1, 0, 3, SwingWay.IN);
        HungGate gate = HungGates.gate(leaf, HungGates.ROUND_POST);
        double play = HungGates.HINGE.slack().inches();
        double expected =
                2 * play * leaf.freeCorner().r().inches() / leaf.pinSpacing().inches();
        List<HingeForce> topPushed = List.of(pulled(leaf, 0, -93), pulled(leaf, 1, 95), pulled(leaf, 2, -2));
        assertThat(Sags.slackIn(gate, topPushed)).isCloseTo(expected, within(1e-12));
    }

    private static HingeForce pulled(Leaf leaf, int pin, double pounds) {
        return new HingeForce(
                leaf.pins().get(pin).id(), leaf.pins().get(pin).z(), Force.pounds(pounds), Force.ZERO, Force.ZERO);
    }

    @Test
    void softerGroundDropsMoreAndADeeperHoleLess() {
        GateSag sag = Sags.of(walkGate(), PERSON, LifeJudgement.USUAL);
        assertThat(sag.soil().soft()).isGreaterThan(sag.soil().likely());
        assertThat(sag.soil().stiff()).isLessThan(sag.soil().likely());
        assertThat(sag.soil().likely()).isEqualTo(sag.byCause().total());
        assertThat(sag.sixDeeper().orElseThrow()).isLessThan(sag.total());
        assertThat(sag.afterHangingSoft())
                .isGreaterThan(sag.byTime().afterHanging().total());
        double footingShare = sag.byCause().footing().inches();
        double tripled = sag.soil().soft().minus(sag.soil().likely()).inches();
        assertThat(tripled).isCloseTo(2 * footingShare, within(1e-6));
    }

    /** Six inches more, in ground that stiffens with depth, divides the footing's share by (42 / 36) to the fourth. */
    @Test
    void sixInchesActOnTheFootingsShareAlone() {
        GateSag sag = Sags.of(walkGate(), PERSON, LifeJudgement.USUAL);
        double share = sag.byCause().footing().inches();
        double less = share * (1 - StrictMath.pow(36 / 42.0, 4));
        assertThat(sag.total().minus(sag.sixDeeper().orElseThrow()).inches()).isCloseTo(less, within(1e-6));
    }

    @Test
    void aStifferPostNeverDropsMore() {
        HungGate gate = walkGate();
        for (double factor : List.of(1.5, 2.0, 5.0)) {
            HungGate stiffer = new HungGate(
                    gate.leaf(),
                    gate.hinge(),
                    HungGates.stiffer((Section) gate.hingePost(), factor),
                    gate.hingePostCentre(),
                    gate.hingePostHeight(),
                    gate.latchPostGrade(),
                    gate.foot(),
                    gate.opens(),
                    gate.holdOpen(),
                    ShutAt.LATCH);
            ByCause before = Sags.drop(gate, gate.foot().likely());
            ByCause after = Sags.drop(stiffer, gate.foot().likely());
            assertThat(after.post().inches()).isCloseTo(before.post().inches() / factor, within(1e-4));
            assertThat(after.total()).isLessThan(before.total());
        }
    }

    @Test
    void aBraceStiffensTheLeafButItsWeightBendsThePostMore() {
        Leaf plain = HungGates.clad(HungGates.leaf(46, 66, 0, 0, 2, SwingWay.IN), 90, 0.9);
        Leaf braced = HungGates.clad(HungGates.leaf(46, 66, 1, 0, 2, SwingWay.IN), 90, 0.9);
        Section post = HungGates.ROUND_POST;
        ByCause without =
                Sags.drop(HungGates.gate(plain, post), HungGates.sand(36).likely());
        ByCause with =
                Sags.drop(HungGates.gate(braced, post), HungGates.sand(36).likely());
        assertThat(with.leaf().inches()).isLessThan(without.leaf().inches() / 3);
        assertThat(with.post()).isGreaterThan(without.post());
        assertThat(with.footing()).isGreaterThan(without.footing());
    }

    @Test
    void thePersonMovesTheLatchMoreThanAGust() {
        GateSag sag = Sags.of(walkGate(), PERSON, LifeJudgement.USUAL);
        assertThat(sag.latchLive().from()).isEqualTo("person");
        assertThat(sag.latchLive().down().inches()).isPositive();
    }

    @Test
    void theShapeStartsAtTheGroundAndEndsAtTheFreeCorner() {
        GateSag sag = Sags.of(walkGate(), PERSON, LifeJudgement.USUAL);
        BentLine post = sag.shape().get(sag.shape().size() - 1);
        assertThat(post.part()).isEqualTo("post");
        assertThat(post.points().get(0).at().z().inches()).isZero();
        BentLine latchStile = sag.shape().get(1);
        double elastic = sag.byCause().elastic().inches();
        assertThat(latchStile.points().get(0).down().inches()).isCloseTo(elastic, within(0.05 * elastic));
    }

    @Test
    void sameGateSameDigits() {
        assertThat(Sags.of(walkGate(), PERSON, LifeJudgement.USUAL))
                .isEqualTo(Sags.of(walkGate(), PERSON, LifeJudgement.USUAL));
    }

    /** A person's residue is counted with the softer footing under it. */
    @Test
    void whatComesAfterHangingGrowsWithTheFootingsGive() {
        HungGate gate = walkGate();
        AfterHanging likely = Sags.afterHanging(gate, gate.foot().likely(), PERSON, LifeJudgement.USUAL);
        AfterHanging soft = Sags.afterHanging(gate, gate.foot().soft(), PERSON, LifeJudgement.USUAL);
        assertThat(soft.creep().inches()).isGreaterThan(2.9 * likely.creep().inches());
        assertThat(soft.residual()).isGreaterThan(likely.residual());
        assertThat(soft.wear()).isEqualTo(likely.wear());
        GateSag sag = Sags.of(gate, PERSON, LifeJudgement.USUAL);
        assertThat(sag.byTime().afterHanging()).isEqualTo(likely);
        assertThat(sag.afterHangingSoft()).isEqualTo(soft.total());
    }
}
