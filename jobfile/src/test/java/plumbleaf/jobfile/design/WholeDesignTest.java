package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.jobfile.result.ResultFile;

/** What holds of every design. */
class WholeDesignTest {
    private static final Yard NURSERY = Yard.nursery();
    private static final Design DESIGN = NURSERY.design();
    private static final String GATE_HOLE = "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"";

    private static GateSag sag(Design design) {
        return Yard.gate(design).hung().get(0).sag();
    }

    private static Yard deep(int inches) {
        return NURSERY.with(GATE_HOLE, "\"hole\": \"12\\\"\", \"depth\": \"" + inches + "\\\"\"");
    }

    @Test
    void causesAddUpToTheDropAndMembersToTheFrame() {
        ByCause cause = sag(DESIGN).byCause();
        double sum = cause.leaf().inches()
                + cause.hingeFlex().inches()
                + cause.hingeSlack().inches()
                + cause.post().inches()
                + cause.footing().inches();
        assertThat(sum).isCloseTo(sag(DESIGN).total().inches(), within(1e-9));
        Leaf leaf = Yard.gate(DESIGN).plan().leaves().get(0);
        double members = leaf.members().stream()
                .mapToDouble(member -> member.weight().pounds())
                .sum();
        assertThat(members).isCloseTo(leaf.weight().frame().pounds(), within(1e-9 * members));
    }

    @Test
    void aDeeperFootingNeverDropsMore() {
        double last = Double.MAX_VALUE;
        for (int inches : List.of(30, 36, 42, 48, 60)) {
            double drop = sag(deep(inches).design()).total().inches();
            assertThat(drop).as(inches + " in. deep").isLessThanOrEqualTo(last);
            last = drop;
        }
        assertThat(sag(DESIGN).sixDeeper().orElseThrow().inches())
                .isCloseTo(sag(deep(42).design()).total().inches(), within(1e-9));
    }

    @Test
    void aStifferPostNeverDropsMore() {
        double last = Double.MAX_VALUE;
        for (String size : List.of("2", "2.5", "3", "4")) {
            Design design = NURSERY.with(
                            "\"hingePost\": \"F1083-REG-2.5\"", "\"hingePost\": \"F1083-REG-" + size + "\"")
                    .design();
            double bends = sag(design).byCause().post().inches();
            assertThat(bends).as(size).isLessThan(last);
            last = bends;
        }
    }

    /** The first line of every ground the same left and right: hung on the other side, the leaf and what it does are mirrored. */
    @Test
    void onLevelGroundTheOtherHandIsTheMirrorImage() {
        Yard flat = level();
        GateDesign left = Yard.gate(flat.design());
        GateDesign right = Yard.gate(
                flat.with("\"hinge\": \"left\"", "\"hinge\": \"right\"").design());
        GateSag one = left.hung().get(0).sag();
        GateSag other = right.hung().get(0).sag();
        assertThat(other.total().inches()).isCloseTo(one.total().inches(), within(1e-9));
        assertThat(other.afterHangingSoft().inches())
                .isCloseTo(one.afterHangingSoft().inches(), within(1e-9));
        assertThat(right.plan().swing().orElseThrow().least().clear().inches())
                .isCloseTo(left.plan().swing().orElseThrow().least().clear().inches(), within(1e-9));
        List<CaseForces> cases = left.hung().get(0).cases();
        for (int i = 0; i < cases.size(); i++) {
            CaseForces here = cases.get(i);
            CaseForces there = right.hung().get(0).cases().get(i);
            if (here.combination().hasWind()) continue;
            double size = here.hingePost().size().poundInches();
            assertThat(there.hingePost().size().poundInches()).isCloseTo(size, within(1e-9 * Math.max(1, size)));
        }
    }

    /** Level ground all along, and no other shots. */
    private static Yard level() {
        String text = NURSERY.text();
        int shots = text.indexOf("\"shots\": [") + "\"shots\": [".length();
        int end = text.indexOf("\n    ]", shots);
        String flat = """

                  { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                  { "id": "S2", "run": "R1", "station": "56'", "elevation": "0\\"" },
                  { "id": "S3", "run": "R1", "station": "86'", "elevation": "0\\"" },
                  { "id": "S4", "run": "R1", "station": "20'", "in": "8'", "elevation": "0\\"" },
                  { "id": "S5", "run": "R1", "station": "36'", "in": "8'", "elevation": "0\\"" },
                  { "id": "S6", "run": "R1", "station": "20'", "out": "8'", "elevation": "0\\"" },
                  { "id": "S7", "run": "R1", "station": "36'", "out": "8'", "elevation": "0\\"" }""";
        int setups = text.indexOf("{ \"id\": \"H2\"");
        String last = text.substring(text.lastIndexOf(',', setups), text.indexOf('}', setups) + 1);
        return new Yard((text.substring(0, shots) + flat + text.substring(end)).replace(last, ""));
    }

    @Test
    void metricWordsForTheSameSiteGiveTheSameDesign() {
        Design metric = NURSERY.with("\"opening\": \"4'\"", "\"opening\": \"1219.2 mm\"")
                .with("\"infill\": \"6'\"", "\"infill\": \"1.8288 m\"")
                .with("\"maxBay\": \"8'\"", "\"maxBay\": \"243.84 cm\"")
                .with("\"hole\": \"12\\\"\"", "\"hole\": \"304.8 mm\"")
                .with("\"depth\": \"36\\\"\"", "\"depth\": \"914.4 mm\"")
                .with("\"elevation\": \"-48-1/2\\\"\"", "\"elevation\": \"-1231.9 mm\"")
                .with("\"bottomGap\": \"3\\\"\"", "\"bottomGap\": \"76.2 mm\"")
                .design();
        assertThat(sag(metric).total().inches()).isCloseTo(sag(DESIGN).total().inches(), within(1e-6));
        assertThat(metric.posts()).hasSameSizeAs(DESIGN.posts());
        for (int i = 0; i < metric.posts().size(); i++)
            assertThat(metric.posts().get(i).utilisation())
                    .isCloseTo(DESIGN.posts().get(i).utilisation(), within(1e-6));
        assertThat(metric.rated().orElseThrow().allowable().mph())
                .isCloseTo(DESIGN.rated().orElseThrow().allowable().mph(), within(1e-6));
        assertThat(metric.quote().price().total())
                .isEqualTo(DESIGN.quote().price().total());
    }

    @Test
    void theSameJobGivesTheSameBytesTwice() {
        assertThat(ResultFile.write(NURSERY.design())).isEqualTo(ResultFile.write(DESIGN));
    }

    /** Whatever is asked for, there is something to say and nothing falls over; worst first, each with its ground. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"title\": \"Nursery|\"title\": \"Nursery",
                "\"style\": \"wood-side-by-side\"|\"style\": \"none\"",
                "\"draft\": false, \"hinge\"|\"hinge\"",
                "\"kind\": \"sand\", \"state\": \"medium\"|\"kind\": \"fill\", \"state\": \"medium\"",
                "\"from\": \"37' 6\\\"\", \"to\": \"39' 6\\\"\"|\"from\": \"31' 6\\\"\", \"to\": \"49' 6\\\"\"",
                "\"basis\": \"customary\"|\"basis\": \"engineered\"",
                "\"speed\": \"105 mph\"|\"speed\": \"180 mph\"",
                "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"|\"hole\": \"12\\\"\", \"depth\": \"6\\\"\"",
            })
    void everyJobIsAnsweredWithFindingsInTheirOrder(String old, String other) {
        Yard yard = old.startsWith("\"draft\"")
                ? NURSERY.with("\"hinge\": \"left\", ", "").with("\"version\": 1,", "\"version\": 1, \"draft\": true,")
                : NURSERY.with(old, other);
        says(yard.design());
    }

    private static void says(Design design) {
        List<Finding> findings = design.findings();
        assertThat(findings).isNotEmpty().isEqualTo(Findings.join(findings));
        assertThat(findings).allSatisfy(finding -> {
            assertThat(finding.message()).isNotBlank();
            assertThat(finding.basis().words()).isNotBlank();
            assertThat(finding.id()).matches("[a-z]+\\.[a-z-]+");
            assertThat(finding.part()).isNotBlank();
        });
    }

    /** Kinds whose drop and forces are not worked out, or not with such a hand, say so. */
    @ParameterizedTest
    @ValueSource(
            strings = {"\"kind\": \"slide\", \"slides\": \"left\"", "\"kind\": \"flagged\", \"name\": \"vertical lift\""
            })
    void otherKindsOfGateAreAnsweredToo(String kind) {
        Yard yard = NURSERY.with("\"kind\": \"swing\"", kind)
                .with(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "")
                .with("\"holdOpen\": \"cane-bolt\", ", "");
        Design design = yard.design();
        says(design);
        assertThat(Yard.gate(design).hung()).isEmpty();
        assertThat(design.verdict()).isNotEqualTo(Verdict.PASSES);
    }

    /** A gate that strikes may be made a pair with one press, even or not, and what that costs is said. */
    @Test
    void aGateThatStrikesMayBecomeAPairWithItsPrice() {
        Design design = NURSERY.design();
        List<Remedy> pairs = design.findings().stream()
                .filter(finding -> finding.id().equals("swing.strikes"))
                .flatMap(finding -> finding.remedies().stream())
                .filter(remedy -> remedy.id().endsWith("pair"))
                .toList();
        assertThat(pairs).isNotEmpty();
        assertThat(pairs).allSatisfy(remedy -> {
            assertThat(remedy.priceChange()).isPresent();
            assertThat(remedy.edit().orElseThrow()).contains("gates[G1].hinge=; gates[G1].kind=pair; gates[G1].split=");
        });
    }

    /** What holds the leaves where they meet is worked out, and one rod takes what both put there. */
    @Test
    void aPairIsHeldWhereItsLeavesMeet() {
        Design design = pair().design();
        PairDesign pair = Yard.gate(design).pair().orElseThrow();
        assertThat(pair.rod().rod().id()).startsWith("ROD-");
        assertThat(pair.rod().utilisation()).isPositive();
        double push = pair.rod().push().pounds();
        assertThat(pair.rod().moment().poundInches())
                .isCloseTo(push * pair.rod().exposed().inches(), within(1e-6));
        assertThat(design.findings())
                .extracting(Finding::id)
                .contains("pair.rod", "pair.sleeve", "pair.top", "sag.meeting");
        assertThat(design.quote().takeoff().lines().stream()
                        .map(line -> line.sold().item()))
                .contains(pair.rod().rod().id(), "ground-sleeve", "stop-strip");
        assertThat(Yard.gate(design).loadPath()).extracting(LinkUse::link).contains("drop rod", "sleeve footing");
    }

    private static Yard pair() {
        return NURSERY.with("\"kind\": \"swing\"", "\"kind\": \"pair\", \"swing\": \"in\"")
                .with(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "");
    }

    /** Both leaves hang, each on its own post, and each is judged by its own name. */
    @Test
    void aPairHangsFromBothPosts() {
        Design design = NURSERY.with("\"kind\": \"swing\"", "\"kind\": \"pair\", \"swing\": \"in\"")
                .with(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "")
                .design();
        says(design);
        GateDesign gate = Yard.gate(design);
        assertThat(gate.hung()).extracting(HungLeaf::id).containsExactly("G1a", "G1b");
        assertThat(gate.hung()).extracting(HungLeaf::post).containsExactly(gate.hingePost(), gate.latchPost());
        assertThat(design.findings().stream()
                        .filter(finding -> finding.id().equals("sag.latch"))
                        .map(Finding::part))
                .containsExactlyInAnyOrder("G1a", "G1b");
    }
}
