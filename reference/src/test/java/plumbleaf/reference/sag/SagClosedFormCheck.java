package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.Sags;
import plumbleaf.engine.section.Section;

/**
 * Every share of a gate's drop against its closed form: hinge couple, cantilever post, rigid pier in both kinds of ground, springs of
 * the hinges, play of the hinges, and the sway of a leaf without a brace.
 *
 * Source: statics ({@code W a / d}); cantilever under force and couple, AISC Manual Table 3-23 (from memory); rigid pier in elastic ground
 * by statics, as Broms 1964 (from memory); portal sway derived from slope-deflection, form as in Kleinlogel (from memory); play of two
 * hinges by geometry.
 * Tolerance: 1e-6 of the value where the closed form is exact; 0.5 % for the portal, which leaves out the stretch of its members.
 */
class SagClosedFormCheck {
    private static final double EXACT = 1e-6;
    private static final SoilStiffness SAND = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));
    private static final SoilStiffness CLAY = new SoilStiffness.Constant(Stress.psi(67 * 1000 / 144.0));

    private static TestGate gate(double width, double height, int braces, SoilStiffness soil) {
        return new TestGate(width, height, braces, 95, "F1083-REG-2.5", 36, soil, 60_000);
    }

    private static ByCause drop(TestGate gate) {
        HungGate hung = gate.hung();
        return Sags.drop(hung, hung.foot().likely());
    }

    @ParameterizedTest
    @CsvSource({"46, 66, 1", "70, 60, 0", "94, 48, 1"})
    void theHingeCouple(double width, double height, int braces) {
        TestGate gate = gate(width, height, braces, SAND);
        CaseForces dead =
                GateForces.of(gate.hung(), HungLoads.person(Force.pounds(200))).get(0);
        double pull = TestGate.momentLbIn(gate.leaf()) / gate.pinSpacingIn();
        assertThat(dead.hinges().get(1).horizontal().pounds()).isCloseTo(pull, within(EXACT * pull));
        assertThat(dead.hinges().get(0).horizontal().pounds()).isCloseTo(-pull, within(EXACT * pull));
    }

    /** A raked leaf with nailers, pickets, bolts and braces hangs as its whole weight at its centre of gravity. */
    @ParameterizedTest
    @CsvSource({"46, 66, 1, 0.08", "70, 60, 2, -0.12", "44, 70, 0, 0"})
    void theWholeLeafPullsAtItsCentreOfGravity(double width, double height, int braces, double slope) {
        TestGate gate = gate(width, height, braces, SAND);
        Leaf leaf = gate.raked(slope);
        CaseForces dead = GateForces.of(gate.hung(leaf), HungLoads.person(Force.pounds(200)))
                .get(0);
        double weight = leaf.weight().wet().pounds();
        double r = leaf.weight().centreOfGravity().r().inches();
        double n = leaf.weight().centreOfGravity().n().inches();
        BaseAction grade = dead.hingePost();
        assertThat(grade.down().pounds()).isCloseTo(weight, within(EXACT * weight));
        assertThat(grade.momentAlong().poundInches())
                .isCloseTo(weight * (r + gate.eccentricityIn()), within(EXACT * weight * r));
        assertThat(grade.momentAcross().poundInches()).isCloseTo(weight * n, within(EXACT * weight * r));
        double spacing = leaf.pinSpacing().inches();
        assertThat(dead.hinges().get(1).horizontal().pounds())
                .isCloseTo(weight * r / spacing, within(EXACT * weight * r / spacing));
    }

    /** M grows from nothing at the top pin to H d at the lower one, where the weight on its arm joins, and stays so down to grade. */
    @ParameterizedTest
    @CsvSource({"46, 66, 1", "70, 60, 0", "94, 48, 1"})
    void thePostIsACantilever(double width, double height, int braces) {
        TestGate gate = gate(width, height, braces, SAND);
        Section post = TestGate.section(gate.post());
        double weight = TestGate.weightLb(gate.leaf());
        double moment = TestGate.momentLbIn(gate.leaf());
        double reach = gate.reachIn();
        double arm = gate.eccentricityIn();
        double lower = TestGate.BOTTOM_IN + TestGate.FROM_ENDS_IN;
        double stiffness = TestGate.E_PSI * post.ixIn4();
        double expected = (moment + weight * arm) * (reach + arm) * lower / stiffness
                + moment * reach * gate.pinSpacingIn() / (3 * stiffness)
                + weight * lower / (TestGate.E_PSI * post.areaIn2());
        assertThat(drop(gate).post().inches()).isCloseTo(expected, within(EXACT * expected));
    }

    @ParameterizedTest
    @CsvSource({"46, 66, 1", "70, 60, 0", "94, 48, 1"})
    void theFootingTurnsAsARigidPier(double width, double height, int braces) {
        TestGate inSand = gate(width, height, braces, SAND);
        double moment = TestGate.momentLbIn(inSand.leaf()) + TestGate.weightLb(inSand.leaf()) * inSand.eccentricityIn();
        double swept = inSand.reachIn() + inSand.eccentricityIn();
        double sand = swept * 36 * moment / (24.3 * 36 * 36 * 36 * 36);
        assertThat(drop(inSand).footing().inches()).isCloseTo(sand, within(EXACT * sand));
        double clay = swept * 12 * moment / (67 * 1000 / 144.0 * 36 * 36 * 36);
        assertThat(drop(gate(width, height, braces, CLAY)).footing().inches()).isCloseTo(clay, within(EXACT * clay));
        GateSag sag = Sags.of(inSand.hung(), HungLoads.person(Force.pounds(200)), LifeJudgement.USUAL);
        double turn = 36 * moment / (24.3 * 36 * 36 * 36 * 36);
        assertThat(sag.footingTurn().radians()).isCloseTo(turn, within(EXACT * turn));
        double deeper = 36 * moment * swept / (24.3 * 42 * 42 * 42 * 42);
        assertThat(sag.total().minus(sag.sixDeeper().orElseThrow()).inches())
                .isCloseTo(sand - deeper, within(EXACT * sand));
    }

    @Test
    void theHingesGiveAsTwoSprings() {
        TestGate gate = gate(46, 66, 1, SAND);
        double leverage = gate.reachIn() / gate.pinSpacingIn();
        double pull = TestGate.momentLbIn(gate.leaf()) / gate.pinSpacingIn();
        double expected = 2 * pull / 60_000 * leverage + TestGate.weightLb(gate.leaf()) / Link.RIGID_LB_PER_IN;
        assertThat(drop(gate).hingeFlex().inches()).isCloseTo(expected, within(EXACT * expected));
    }

    /** 1/16 in. at each of two hinges. */
    @Test
    void playTurnsTheLeafRigidly() {
        TestGate gate = gate(47.625, 54, 1, SAND);
        double expected = 2 / 16.0 * 48 / 36;
        assertThat(drop(gate).hingeSlack().inches()).isCloseTo(expected, within(EXACT * expected));
    }

    /**
     * Without a brace the rails are the columns of a portal fixed at the hinge stile, the latch stile is its beam: {@code sway = P h^3 (3k + 2)
     * / (12 E Ic (6k + 1))}, {@code k = (Ib / Lb) / (Ic / h)}. The hinge stile is made rigid and all weight put on the latch stile.
     */
    @Test
    void anUnbracedLeafSwaysAsAPortal() {
        TestGate gate = new TestGate(46, 66, 0, 0, "F1083-REG-2.5", 36, SAND, 60_000);
        Leaf leaf = gate.leaf();
        List<Member> members = new ArrayList<>();
        for (Member member : leaf.members()) members.add(weightless(member));
        double weight = 100;
        Fitting low = new Fitting("half", leaf.of(MemberRole.BOTTOM_RAIL).get(0).to(), Force.pounds(weight / 2));
        Fitting high = new Fitting("half", leaf.of(MemberRole.TOP_RAIL).get(0).to(), Force.pounds(weight / 2));
        Leaf portal = TestGate.with(leaf, members, List.of(), List.of(low, high));
        double inertia = TestGate.section(TestGate.FRAME).ixIn4();
        double column = 46 - 2;
        double beam = 66 - 2;
        double k = (inertia / beam) / (inertia / column);
        double sway = weight * column * column * column * (3 * k + 2) / (12 * TestGate.E_PSI * inertia * (6 * k + 1));
        HungGate hung = gate.hung(portal);
        // The free corner lies an inch outside the latch stile's foot, which turns too.
        double legMoment = weight * column / 2 * (3 * k) / (6 * k + 1);
        double cornerTurn = legMoment * beam / (6 * TestGate.E_PSI * inertia);
        assertThat(Sags.drop(hung, hung.foot().likely()).leaf().inches())
                .isCloseTo(sway + cornerTurn, within(0.005 * sway));
    }

    private static Member weightless(Member member) {
        Section section = member.role() == MemberRole.HINGE_STILE ? rigid(member.section()) : member.section();
        return new Member(
                member.id(),
                member.role(),
                section,
                member.from(),
                member.to(),
                member.cutLength(),
                member.longPoint(),
                member.firstEnd(),
                member.lastEnd(),
                member.ends(),
                Force.ZERO,
                member.holes());
    }

    private static Section rigid(Section plain) {
        double factor = 1e5;
        return new Section(
                plain.id(),
                plain.family(),
                plain.name(),
                plain.shape(),
                plain.depth(),
                plain.width(),
                plain.nominalWall(),
                plain.usedWall(),
                plain.designWall(),
                Force.ZERO.plus(plain.weightPerFoot()),
                plain.areaIn2() * factor,
                plain.ixIn4() * factor,
                plain.sxIn3() * factor,
                plain.zxIn3() * factor,
                plain.iyIn4() * factor,
                plain.syIn3() * factor,
                plain.zyIn3() * factor,
                plain.jIn4() * factor,
                plain.yieldStress(),
                plain.ultimateStress(),
                plain.yieldConfidence(),
                plain.source(),
                plain.confidence());
    }

    @Test
    void aDeeperHoleNeverTurnsMore() {
        double before = Double.MAX_VALUE;
        for (Length depth : List.of(Length.inches(24), Length.inches(30), Length.inches(36), Length.inches(48))) {
            double footing = drop(new TestGate(46, 66, 1, 95, "F1083-REG-2.5", depth.inches(), SAND, 60_000))
                    .footing()
                    .inches();
            assertThat(footing).isLessThan(before);
            before = footing;
        }
    }
}
