package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.WindWay;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.WheelOnTube;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** A cantilever slide gate from job to price: what must be so whatever its numbers are. */
class SlideGateTest {
    private static final Yard FALLOW = Yard.fallow();

    private static SlideDesign slide(Yard yard) {
        return Yard.gate(yard.design()).slide().orElseThrow();
    }

    private static double uplift(SlideDesign slide) {
        double most = 0;
        for (SlideCase each : slide.cases())
            if (each.state() == LeafState.CLOSED)
                most = Math.max(most, -each.rear().down().pounds());
        return most;
    }

    @Test
    void rollersCarryTheWholeWeightWhereverItStands() {
        SlideDesign slide = slide(FALLOW);
        double weight = slide.gate().plan().leaf().weight().wet().pounds();
        for (SlideCase each : slide.cases()) {
            double carried = each.front().down().pounds() + each.rear().down().pounds();
            double person = 200 * each.combination().live();
            assertThat(carried).isCloseTo(weight * each.combination().dead() + person, within(1e-4 * weight));
        }
    }

    @Test
    void windGoesToRollersAndReceiverAndNowhereElse() {
        for (SlideCase each : slide(FALLOW).cases()) {
            if (each.combination() != Combination.D_W) continue;
            double rollers = each.front().acrossLow().pounds()
                    + each.front().acrossHigh().pounds()
                    + each.rear().acrossLow().pounds()
                    + each.rear().acrossHigh().pounds();
            double receiver = each.receiverLowLb() + each.receiverHighLb();
            assertThat(rollers + receiver > 0).isEqualTo(each.wind() == WindWay.OUT);
            if (each.state() != LeafState.CLOSED) assertThat(receiver).isZero();
        }
    }

    @Test
    void aLongerTailLowersTheUpliftAndAStifferFrameNeverDropsMore() {
        SlideDesign usual = slide(FALLOW);
        SlideDesign longer = slide(FALLOW.with("\"tail\": \"9'\"", "\"tail\": \"11'\""));
        assertThat(uplift(longer)).isLessThan(uplift(usual));
        SlideDesign thinner = slide(FALLOW.with("TUBE-3x3x0.12", "TUBE-3x3x0.083"));
        assertThat(usual.sag().person()).isLessThan(thinner.sag().person());
    }

    @Test
    void theNoseHasOnlyTheRoomThatTheReceiversPostLeavesIt() {
        SlideDesign slide = slide(FALLOW);
        Finding across = Yard.findings(FALLOW.design(), "slide.across").get(0);
        // The leaf runs its rollers' standoff beside the front post's face; half a tube nearer is its own face.
        double room = slide.gate().plan().rollers().standoff().inches()
                + (slide.gate().front().stock().width().inches()
                                - slide.gate().receiver().stock().width().inches())
                        / 2
                - slide.gate().plan().leaf().make().tube().width().inches() / 2;
        assertThat(room)
                .isLessThan(slide.gate().plan().kind().spec().mouthAcross().inches());
        assertThat(across.measure().orElseThrow().limit()).isCloseTo(room, within(1e-9));
    }

    @Test
    void aDeeperFootingNeverGivesMoreAcross() {
        SlideDesign usual = slide(FALLOW);
        SlideDesign deeper = slide(FALLOW.with("\"depth\": \"60\\\"\"", "\"depth\": \"72\\\"\""));
        assertThat(deeper.sag().across()).isLessThanOrEqualTo(usual.sag().across());
        assertThat(deeper.sag().byCause().footings())
                .isLessThanOrEqualTo(usual.sag().byCause().footings());
    }

    /** The yard seen from the other side of its own line: outside on the left, sliding to the right. */
    @Test
    void theMirroredGateGivesTheSameNumbers() {
        SlideDesign one = slide(FALLOW);
        SlideDesign other = slide(FALLOW.with("\"outside\": \"right\"", "\"outside\": \"left\"")
                .with("\"slides\": \"left\"", "\"slides\": \"right\""));
        assertThat(other.sag().total().inches()).isCloseTo(one.sag().total().inches(), within(1e-9));
        assertThat(other.cases()).hasSameSizeAs(one.cases());
        for (int i = 0; i < one.cases().size(); i++) {
            assertThat(other.cases().get(i).front().down().pounds())
                    .isCloseTo(one.cases().get(i).front().down().pounds(), within(1e-6));
            assertThat(other.cases().get(i).rear().acrossLow().pounds())
                    .isCloseTo(one.cases().get(i).rear().acrossLow().pounds(), within(1e-6));
        }
    }

    @Test
    void itsThirdPostStandsInTheFenceAndIsDugAndBought() {
        Design design = FALLOW.design();
        assertThat(design.layout().posts().stream()
                        .filter(post -> post.role() == PostRole.ROLLER)
                        .toList())
                .hasSize(1);
        String rear = Yard.gate(design).slide().orElseThrow().rearPost();
        assertThat(design.post(rear).orElseThrow().hole().isZero()).isFalse();
        assertThat(design.quote().takeoff().lines().stream()
                        .anyMatch(line -> line.item().equals("ROLLER-CAGE-3")))
                .isTrue();
        assertThat(design.quote().takeoff().lines().stream()
                        .anyMatch(line -> line.item().equals("slide-receiver")))
                .isTrue();
    }

    /** {@code 10 Fy t^2} is {@code 2 Fy t (7.5 t) / 1.5}: with Fy 36 ksi and a design wall of 0.1116 in., 4,484 lb. */
    @Test
    void aWheelOnTheSquareRailIsHeldByBothItsWalls() {
        Section rail = StandardCatalogue.load().section("TUBE-3x3x0.12").orElseThrow();
        assertThat(WheelOnTube.allowable(rail).pounds()).isCloseTo(4483.6, within(0.5));
    }

    /** {@code F = v sqrt(k m)}: in proportion to the speed, and never more than into a post that nothing but its own steel lets give. */
    @Test
    void aLeafStrikesItsStopInProportionToItsSpeed() {
        SlideDesign usual = slide(FALLOW.with("\"shotError\": \"1/4\\\"\"", "\"slamSpeed\": \"2 mph\""));
        SlideDesign twice = slide(FALLOW.with("\"shotError\": \"1/4\\\"\"", "\"slamSpeed\": \"4 mph\""));
        assertThat(twice.stop().pounds()).isCloseTo(2 * usual.stop().pounds(), within(1e-6));
        Outline outline = usual.gate().plan().leaf().outline();
        double height = (outline.corners().get(1).z().inches()
                                + outline.corners().get(2).z().inches())
                        / 2
                - usual.gate().receiver().grade().inches();
        double steel = 3 * 29e6 * usual.gate().receiver().stock().ixIn4() / Math.pow(height, 3);
        double mass = usual.gate().plan().leaf().weight().wet().pounds() / 386.0886;
        assertThat(usual.stop().pounds()).isPositive().isLessThan(2 * 17.6 * Math.sqrt(steel * mass));
    }

    /**
     * From the numbers that the calculation book prints: A307, {@code Fnt 45, Fnv 27 ksi}, omega 2, {@code Fnt' = 1.3 Fnt - 2 (Fnt / Fnv) V / A}.
     * Source: AISC 360-22 J3-3, Table J3.2.
     */
    @Test
    void theBoltsOfTheRollersCanBeFollowedFromWhatIsPrinted() {
        LinkUse bolts = Yard.gate(FALLOW.design()).loadPath().stream()
                .filter(link -> link.link().equals("roller bolts"))
                .findFirst()
                .orElseThrow();
        Matcher said = Pattern.compile(
                        "R (-?[\\d,]+) lb, H ([\\d,]+) lb, e ([\\d.]+) in., b ([\\d.]+) in., (\\d+) bolts"
                                + " ([\\d.]+) in. A307")
                .matcher(bolts.work().numbers());
        assertThat(said.matches()).as(bolts.work().numbers()).isTrue();
        double load = Math.abs(number(said.group(1)));
        int count = Integer.parseInt(said.group(5));
        double area = Math.PI / 4 * number(said.group(6)) * number(said.group(6));
        double shear = load / count / area;
        double tension =
                (load * number(said.group(3)) / number(said.group(4)) + number(said.group(2))) / (count / 2.0) / area;
        double left = Math.min(45_000, 1.3 * 45_000 - 2 * 45.0 / 27.0 * shear) / 2;
        double use = Math.max(shear / (27_000 / 2.0), tension / left);
        assertThat(bolts.utilisation()).isCloseTo(use, within(0.01 * use));
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(",", ""));
    }

    @Test
    void anUnknownCapacityIsNeverAPass() {
        String sheet = "\"parts\": [ { \"file\": \"own.csv\", \"rows\": [\"id,name,standoff_in,source\","
                + " \"OWN,our rollers,4,sheet\"] } ], \"runs\"";
        Yard own = FALLOW.with("\"runs\"", sheet).with("\"rollers\": \"ROLLER-CAGE-3\"", "\"rollers\": \"OWN\"");
        List<Finding> findings = own.design().findings();
        assertThat(findings)
                .filteredOn(finding ->
                        finding.id().equals("slide.rollers") || finding.id().equals("slide.guides"))
                .hasSize(2)
                .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.CANNOT_SAY));
    }

    @Test
    void groundThatRisesOnTheRunBackStrikesAndSaysWhatHelps() {
        Yard rising = FALLOW.with(
                "\"station\": \"8'\", \"setup\": \"H1\", \"rod\": \"4' 2\\\"\"",
                "\"station\": \"8'\", \"setup\": \"H1\", \"rod\": \"3' 8\\\"\"");
        Finding strikes = Yard.findings(rising.design(), "slide.strikes").get(0);
        assertThat(strikes.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(strikes.message()).contains("on the run-back");
        assertThat(strikes.remedies()).extracting(Remedy::id).contains("raise-leaf", "grade-runback");
    }

    @Test
    void withoutRoomForTheRearRollersItSaysSo() {
        Design design = FALLOW.with("\"slides\": \"left\"", "\"slides\": \"right\"")
                .with("\"tail\": \"9'\"", "\"tail\": \"20'\"")
                .design();
        assertThat(Yard.gate(design).slide()).isEmpty();
        assertThat(Yard.findings(design, "slide.rear")).hasSize(1);
    }

    @Test
    void everyRailIsMadeOfWhatAYardKeeps() {
        GateDesign gate = Yard.gate(FALLOW.design());
        assertThat(gate.plan()
                        .leaves()
                        .get(0)
                        .of(MemberRole.BOTTOM_RAIL)
                        .get(0)
                        .longPoint()
                        .inFeet())
                .isGreaterThan(24);
        assertThat(FALLOW.design().quote().takeoff().findings())
                .noneSatisfy(finding -> assertThat(finding.id()).contains("long"));
    }

    /** The same yard with a leaf on hinges that strikes a bank inside: its run has room for a slide on both sides. */
    private static final Yard STRIKING = FALLOW.with("\"kind\": \"slide\"", "\"kind\": \"swing\"")
            .with(
                    "\"station\": \"30'\", \"opening\": \"16'\", \"slides\": \"left\"",
                    "\"station\": \"34'\", \"opening\": \"6'\", \"hinge\": \"left\", \"swing\": \"in\"")
            .with(
                    "\"slide\": { \"tail\": \"9'\", \"overlap\": \"4\\\"\", \"beside\": \"in\", \"rollers\":"
                            + " \"ROLLER-CAGE-3\", \"uprights\": \"5'\", \"mouthAcross\": \"4\\\"\" },",
                    "")
            .with(
                    "\"station\": \"38'\", \"in\": \"4'\", \"setup\": \"H1\", \"rod\": \"4' 2-3/4\\\"\"",
                    "\"station\": \"36'\", \"in\": \"4'\", \"setup\": \"H1\", \"rod\": \"3' 9\\\"\"");

    private static List<Remedy> slides(Yard yard) {
        return Yard.findings(yard.design(), "swing.strikes").get(0).remedies().stream()
                .filter(remedy -> remedy.id().equals("slide"))
                .toList();
    }

    @Test
    void aLeafThatStrikesMayBecomeASlideWhereItsRunBackHasRoom() {
        List<Remedy> both = slides(STRIKING);
        assertThat(both).extracting(Remedy::words).hasSize(2).allMatch(words -> words.startsWith("make it a slide"));
        assertThat(both)
                .allSatisfy(remedy -> assertThat(remedy.edit().orElseThrow())
                        .contains("gates[G1].kind=slide")
                        .contains("gates[G1].slides="));
    }

    /** Half of six feet for its tail and six feet of travel do not go into the four feet before it. */
    @Test
    void itIsNotOfferedWhereItsRunBackHasNoRoom() {
        Yard nearTheStart = STRIKING.with("\"station\": \"34'\", \"opening\"", "\"station\": \"4'\", \"opening\"")
                .with("\"station\": \"36'\", \"in\"", "\"station\": \"7'\", \"in\"");
        assertThat(slides(nearTheStart))
                .extracting(Remedy::words)
                .isNotEmpty()
                .allMatch(words -> words.contains("opens to the right"));
    }
}
