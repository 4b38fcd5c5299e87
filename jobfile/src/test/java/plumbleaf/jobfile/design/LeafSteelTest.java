package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** Steel that fills a leaf, in wind, by hand: AISC 360-22 F7 for a picket's tube, F11 for sheet; a mid rail is offered where it yields. */
@Tag("slow")
class LeafSteelTest {
    private static final String LEAF =
            "\"bottomGap\": \"3\\\"\", \"hingeGap\": \"3/4\\\"\", \"latchGap\": \"5/8\\\"\", \"midRails\": 1";

    private static Design filled(String fill, int midRails) {
        return Yard.nursery()
                .with(
                        LEAF,
                        LEAF.replace("\"midRails\": 1", "\"midRails\": " + midRails) + ", \"fill\": { " + fill + " }")
                .design();
    }

    private static Checked check(Design design, String code) {
        return (Checked) Yard.findings(design, code).get(0);
    }

    private static double ratio(Design design, String code) {
        return check(design, code).measure().orElseThrow().ratio().getAsDouble();
    }

    private static HungLeaf leaf(Design design) {
        return Yard.gate(design).hung().get(0);
    }

    /** On the gross face, as the calculation book has it. */
    private static double psi(Design design) {
        return leaf(design).workings().stream()
                        .flatMap(working -> working.lines().stream())
                        .filter(line ->
                                line.symbol().equals("p") || line.symbol().equals("po"))
                        .mapToDouble(line -> line.value())
                        .max()
                        .orElseThrow()
                / 144;
    }

    @Test
    void aPicketBendsAsASimpleSpanOfItsLongestPieceDoes() {
        Design design = filled("\"kind\": \"metal-pickets\"", 0);
        Section section =
                StandardCatalogue.load().section("PICKET-0.75x0.75x0.065").orElseThrow();
        double pitch = 0.75 + leaf(design).gate().leaf().picketGap().inches();
        double span = leaf(design).gate().leaf().pickets().stream()
                .mapToDouble(each -> each.length().inches())
                .max()
                .orElseThrow();
        double moment = 0.6 * psi(design) * pitch * span * span / 8;
        double bears = section.yieldStress().psi() * section.zxIn3() / 1.67;
        assertThat(ratio(design, "leaf.pickets")).isCloseTo(moment / bears, within(1e-9));
    }

    @Test
    void aPunchedPicketSpansFromRailToRail() {
        Design none = filled("\"kind\": \"metal-pickets\", \"punched\": true", 0);
        Design rail = filled("\"kind\": \"metal-pickets\", \"punched\": true", 1);
        assertThat(ratio(none, "leaf.pickets")).isCloseTo(4 * ratio(rail, "leaf.pickets"), within(1e-2));
    }

    @Test
    void aThinSheetWithoutAMidRailYieldsAndARailIsOffered() {
        Design design = filled("\"kind\": \"sheet\", \"thickness\": \"0.0299\\\"\"", 0);
        Checked found = check(design, "leaf.sheet");
        assertThat(found.severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.remedies().get(0).edit()).contains("gates[G1].leaf.midRails=1");
        assertThat(found.message()).contains("drum");
        Panel panel = leaf(design).gate().leaf().panels().get(0);
        double b = Math.min(panel.width().inches(), panel.height().inches());
        double strip = 0.6 * psi(design) * b * b / 8 * 6 / (0.0299 * 0.0299);
        double square = strip * 0.0479 / 0.125;
        assertThat(ratio(design, "leaf.sheet") * 1.5 * 33_000 / 1.67).isBetween(square, strip);
    }

    @Test
    void weldedMeshIsAGridAndWovenIsNotAsked() {
        Design none = filled("\"kind\": \"mesh\", \"wire\": \"0.12\\\"\", \"pitch\": \"4\\\"\"", 0);
        Design rail = filled("\"kind\": \"mesh\", \"wire\": \"0.12\\\"\", \"pitch\": \"4\\\"\"", 1);
        assertThat(ratio(none, "leaf.mesh")).isGreaterThan(ratio(rail, "leaf.mesh"));
        Design woven = filled("\"kind\": \"mesh\", \"woven\": true", 0);
        assertThat(Yard.findings(woven, "leaf.mesh")).isEmpty();
    }

    /** It has no rail between its two, so that none is offered; its uprights hold the sheet. */
    @Test
    void theSheetOfASlideSpansFromUprightToUpright() {
        Design design = Yard.fallow()
                .with(
                        "\"mesh\", \"woven\": true, \"wire\": \"0.148\\\"\", \"pitch\": \"2\\\"\"",
                        "\"sheet\", \"thickness\": \"0.0299\\\"\"")
                .design();
        List<Double> uprights = Yard.gate(design).slide().orElseThrow().gate().plan().leaf().members().stream()
                .filter(member -> member.role() == MemberRole.UPRIGHT)
                .map(member -> member.middle().r().inches())
                .filter(at -> at > 12)
                .sorted()
                .toList();
        double apart = uprights.get(1) - uprights.get(0);
        Checked found = check(design, "leaf.sheet");
        assertThat(found.severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.message())
                .contains("in an opening of " + DisplayUnits.US.length(Length.inches(apart)) + " by ");
        assertThat(found.remedies()).isEmpty();
    }
}
