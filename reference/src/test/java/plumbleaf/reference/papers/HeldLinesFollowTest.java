package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.BasePlateHold;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.SocketHold;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.BasePlate;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** What holds a post on a slab or in a core can be followed with a pocket calculator, to the ratio of each finding. */
class HeldLinesFollowTest {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final Map<String, String> ENDS = ends();

    private static Map<String, String> ends() {
        Map<String, String> ends = new TreeMap<>();
        ends.put("plate", "plate.thickness");
        ends.put("bearing", "bearing");
        ends.put("breakout", "anchor.breakout");
        ends.put("edge", "anchor.edge");
        ends.put("tipping", "slab.tipping");
        ends.put("slab", "slab.bending");
        ends.put("anchor", "anchor.sheet");
        ends.put("side", "socket.side");
        return ends;
    }

    static Stream<HeldPost> held() {
        Section post = CATALOGUE.section("F1083-REG-2.5").orElseThrow();
        Slab slab = new Slab(Length.inches(5), Length.inches(7), Length.feet(12), Length.feet(10), Stress.psi(3000));
        List<CombinedAction> actions = List.of(
                action(Combination.D, 30, 0, 4_000, 0, 260, 0),
                action(Combination.D_L, 60, 0, 9_500, 0, 460, 0),
                action(Combination.D_W, 90, 240, 4_000, 11_000, 260, 3_000),
                action(Combination.LESS_D_W, 40, 240, 2_400, 11_000, -150, 3_000));
        Anchors sheet = new Anchors(Length.inches(0.5), Length.inches(2.75), Force.pounds(1_400), Force.pounds(1_700));
        BasePlate thin = new BasePlate(Length.inches(8), Length.inches(0.375), Length.inches(1.25));
        return Stream.of(
                BasePlateHold.of(
                        "P1",
                        post,
                        new Support.SlabPlate(slab, BasePlate.USUAL, sheet),
                        actions,
                        DesignBasis.ENGINEERED),
                BasePlateHold.of("P2", post, new Support.SlabPlate(slab, thin, sheet), actions, DesignBasis.ENGINEERED),
                SocketHold.held(
                        "P3", post, new Support.CoreSocket(Length.inches(4), slab), actions, DesignBasis.ENGINEERED));
    }

    private static CombinedAction action(
            Combination in,
            double along,
            double across,
            double momentAlong,
            double momentAcross,
            double down,
            double twist) {
        return new CombinedAction(
                in,
                "leaf closed",
                "out",
                new BaseAction(
                        new Force(down),
                        Force.pounds(along),
                        Force.pounds(across),
                        Moment.poundInches(momentAlong),
                        Moment.poundInches(momentAcross),
                        Moment.poundInches(twist)));
    }

    @ParameterizedTest
    @MethodSource("held")
    void everyLineGivesWhatItSaysAndEndsInItsFinding(HeldPost held) {
        List<String> wrong = new ArrayList<>();
        List<String> ended = new ArrayList<>();
        for (Working working : held.workings())
            for (WorkedLine line : working.lines()) {
                wrong.addAll(BookFollowsTest.follow(line.text()));
                String id = ENDS.get(line.symbol());
                if (id == null) continue;
                ended.add(id);
                Finding finding = held.findings().stream()
                        .filter(is -> is.id().endsWith(id))
                        .findFirst()
                        .orElseThrow();
                double ratio = finding.measure().orElseThrow().ratio().orElseThrow();
                assertThat(line.value()).as(line.symbol()).isCloseTo(ratio, within(1e-9 * Math.max(1, ratio)));
            }
        assertThat(wrong).isEmpty();
        assertThat(ended)
                .hasSizeGreaterThanOrEqualTo(held.workings().get(0).what().startsWith("Socket") ? 2 : 6);
    }
}
