package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LeafWind;

/** Ice by its closed form and by statics. */
class IceCoatTest {
    private static final Leaf BARE = HungGates.leaf(46, 66, 1, 0, 2, SwingWay.IN);
    private static final LeafWind CALM = new LeafWind(Pressure.ZERO, Length.ZERO, Length.ZERO, "calm");

    private static HungLoads loads(IceCoat ice) {
        return new HungLoads(Force.pounds(200), CALM, CALM, CALM, List.of(), List.of(), ice, CALM, 0);
    }

    /** A 2 in. square tube lies in a circle of 2.828 in.; half an inch of ice on it is pi 0.5 (2.828 + 0.5) = 5.228 in2, 0.1694 lb an inch. */
    @Test
    void membersCarryARoundCoat() {
        IceCoat coat = IceCoat.on(BARE, Length.inches(0.5));
        double inches = 0;
        for (Member member : BARE.members()) inches += member.cutLength().inches();
        double perInch = 56 / 1728.0 * Math.PI * 0.5 * (2 * Math.sqrt(2) + 0.5);
        assertThat(perInch).isCloseTo(0.1694, within(5e-5));
        assertThat(coat.weight().pounds()).isCloseTo(perInch * inches, within(1e-9));
        assertThat(IceCoat.on(BARE, Length.ZERO).isNone()).isTrue();
    }

    /** By statics: the couple of the hinges grows by 0.7 of the ice times its arm, over their distance. */
    @Test
    void theHingesCarrySevenTenthsOfIt() {
        Length thick = Length.inches(0.75);
        IceCoat coat = IceCoat.on(BARE, thick);
        double moment = 0;
        for (int i = 0; i < BARE.members().size(); i++)
            moment += coat.onMembers().get(i).pounds()
                    * BARE.members().get(i).middle().r().inches();
        List<CaseForces> iced = GateForces.of(HungGates.gate(BARE, HungGates.ROUND_POST), loads(coat));
        double with = topPull(iced, Combination.D_L_ICE);
        double without = topPull(iced, Combination.D_L);
        assertThat(with - without).isCloseTo(0.7 * moment / BARE.pinSpacing().inches(), within(1e-6));
        assertThat(GateForces.of(HungGates.gate(BARE, HungGates.ROUND_POST), loads(IceCoat.NONE)))
                .noneMatch(each -> each.combination() == Combination.D_L_ICE);
    }

    private static double topPull(List<CaseForces> all, Combination combination) {
        return all.stream()
                .filter(each -> each.combination() == combination && each.state() == LeafState.CLOSED)
                .findFirst()
                .orElseThrow()
                .hinges()
                .get(1)
                .horizontal()
                .pounds();
    }

    /** A coat that weighs what the leaf itself weighs lets it drop once more as far, hinge play apart. */
    @Test
    void aCoatAsHeavyAsTheLeafDropsItAsFar() {
        Leaf clad = HungGates.clad(BARE, 90, 0.9);
        Leaf leaf = clad.with(clad.members(), clad.railLoads(), List.of());
        IceCoat twin = new IceCoat(
                Length.inches(1), leaf.members().stream().map(Member::weight).toList(), leaf.railLoads());
        GateSag sag = Sags.of(HungGates.gate(leaf, HungGates.ROUND_POST), loads(twin), LifeJudgement.USUAL);
        double elastic = sag.total().minus(sag.byCause().hingeSlack()).inches();
        assertThat(sag.ice().orElseThrow().drop().inches()).isCloseTo(elastic, within(1e-9));
        assertThat(sag.ice().orElseThrow().weight().pounds())
                .isCloseTo(HungGates.weightAndMoment(leaf)[0], within(1e-9));
        assertThat(Sags.of(HungGates.gate(leaf, HungGates.ROUND_POST), loads(IceCoat.NONE), LifeJudgement.USUAL)
                        .ice())
                .isEmpty();
    }
}
