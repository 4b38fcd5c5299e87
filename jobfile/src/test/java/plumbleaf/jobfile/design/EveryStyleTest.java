package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.result.ResultFile;

/** One sloping yard with a corner, built in every style of the catalogue, low and high: each bay is filled, checked, bought, priced and worked. */
@Tag("slow")
class EveryStyleTest {
    private static final String YARD = """
            { "format": "plumbleaf-job", "version": 1, "title": "Tarn Steps", "date": "2027-04-19",
              "site": { "customer": "Odalys Venn", "address": "14 Tarn Steps", "basis": "customary",
                "wind": { "speed": "105 mph", "exposure": "B" }, "frost": { "depth": "30\\"", "source": "by phone" },
                "soil": { "kind": "sand", "state": "medium" } },
              "ground": { "shots": [
                { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                { "id": "S2", "run": "R1", "station": "30'", "elevation": "-18\\"" },
                { "id": "S3", "run": "R1", "station": "62'", "elevation": "-30\\"" } ] },
              "runs": [ { "id": "R1", "legs": [ { "length": "40'" }, { "length": "22'", "turn": "90 deg left" } ],
                "style": "STYLE", "infill": "HIGH", "bottomGap": "2\\"", "maxBay": "8'" } ],
              "money": { "priceBook": "example-2027", "overhead": "12%", "margin": "18%" } }
            """;

    static Stream<String> styles() {
        return StandardCatalogue.load().styles().stream().map(FenceStyle::id);
    }

    private static Design built(String style, String high) {
        return new Yard(YARD.replace("STYLE", style).replace("HIGH", high)).design();
    }

    @ParameterizedTest
    @MethodSource("styles")
    void everyBayIsFilled(String style) {
        for (Bay bay : built(style, "5'").layout().bays()) {
            String filled = bay.fill()
                    .match(
                            open -> "",
                            pickets -> pickets.row().count() > 0 ? "pickets" : "",
                            lying -> lying.boards().size() > 3 ? "boards" : "",
                            panel -> panel.pickets() > 3 ? "panel" : "",
                            fabric -> fabric.length().equals(bay.slopeLength()) ? "fabric" : "",
                            mesh -> mesh.sheets().isEmpty() ? "" : "mesh");
            assertThat(filled).as(style + " " + bay.id()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("styles")
    void everythingHasAPriceAndHours(String style) {
        for (String high : List.of("3'", "6'", "12'")) {
            Design design = built(style, high);
            assertThat(Yard.findings(design, "takeoff.length"))
                    .as(style + " " + high)
                    .isEmpty();
            assertThat(design.findings())
                    .as(style + " " + high)
                    .filteredOn(finding -> finding.severity() == Severity.CANNOT_SAY)
                    .extracting(Finding::message)
                    .isEmpty();
            for (TakeoffLine line : design.quote().takeoff().lines())
                assertThat(line.causes()).as(style + " " + line.item()).isNotEmpty();
            assertThat(ResultFile.write(design)).doesNotContain("NaN", "Infinity");
        }
    }

    /** What stands still must stand: only wind may be a caution on the customary basis. */
    @ParameterizedTest
    @MethodSource("styles")
    void theUsualBuildStandsWithoutWind(String style) {
        Design design = built(style, "6'");
        assertThat(design.findings())
                .as(style)
                .filteredOn(finding -> finding.severity() == Severity.MUST_FIX)
                .extracting(Finding::message)
                .isEmpty();
        for (PostDesign post : design.posts())
            assertThat(post.utilisation()).as(style + " " + post.id()).isPositive();
    }

    @ParameterizedTest
    @MethodSource("styles")
    void moreHeightNeverCostsLess(String style) {
        long low = built(style, "4'").quote().price().total().cents();
        long high = built(style, "6'").quote().price().total().cents();
        assertThat(high).as(style).isGreaterThan(low);
    }

    @ParameterizedTest
    @MethodSource("styles")
    void fillLiesInsideItsBay(String style) {
        for (Bay bay : built(style, "6'").layout().bays()) {
            double clear = bay.slopeLength().inches();
            boolean inside = bay.fill()
                    .match(
                            open -> true,
                            pickets -> true,
                            lying -> lying.boards().stream()
                                    .allMatch(board -> board.cut().inches() <= clear + 1e-9),
                            panel -> panel.length().inches() < clear,
                            fabric -> fabric.length().inches() <= clear + 1e-9,
                            (BayFill.Mesh mesh) -> mesh.sheets().stream()
                                            .mapToDouble(sheet -> sheet.inches())
                                            .sum()
                                    < clear);
            assertThat(inside).as(style + " " + bay.id()).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("styles")
    void threeToTwelveFeetAreWorkedOut(String style) {
        for (String high : List.of("3'", "8'", "10'", "12'")) {
            Design design = built(style, high);
            assertThat(design.posts()).as(style + " " + high).isNotEmpty();
            assertThat(ResultFile.write(design)).doesNotContain("NaN", "Infinity");
        }
    }

    @ParameterizedTest
    @MethodSource("styles")
    void aGateStandsInIt(String style) {
        String gate = YARD.replace(
                "\"money\":",
                "\"gates\": [ { \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"12'\", \"opening\": \"4'\","
                        + " \"hinge\": \"left\", \"swing\": \"in\", \"leaf\": { \"infill\": \"5'\", \"bottomGap\": \"4\\\"\" } } ], \"money\":");
        Design design = new Yard(gate.replace("STYLE", style).replace("HIGH", "5'")).design();
        assertThat(design.gates()).hasSize(1);
        assertThat(design.posts()).as(style).anyMatch(post -> post.post().gate().equals("G1"));
        assertThat(ResultFile.write(design)).doesNotContain("NaN", "Infinity");
    }

    /** Boards, kick board, lattice and cap fill the height of the infill between them, no more and no less. */
    @ParameterizedTest
    @MethodSource("styles")
    void trimLiesInsideTheHeight(String style) {
        Design design = built(style, "6'");
        FenceStyle made = StandardCatalogue.load().style(style).orElseThrow();
        for (Bay bay : design.layout().bays())
            bay.pickets()
                    .pickets()
                    .forEach(picket -> assertThat(picket.length().inches()
                                    + made.trim().above().inches()
                                    + made.trim().below().inches())
                            .as(style)
                            .isCloseTo(72, within(1e-6)));
    }

    /** 62 ft of 8 ft panels: two legs, each with whole panels and one cut at its end. */
    @Test
    void panelGoodsTakeWholePanelsAndCutOne() {
        String level =
                YARD.replace("-18\\\"", "0\\\"").replace("-30\\\"", "0\\\"").replace("\"8'\" }", "\"8' 1\\\"\" }");
        Design design = new Yard(level.replace("STYLE", "metal-panel").replace("HIGH", "5'")).design();
        List<Boolean> cut = design.layout().bays().stream()
                .map(bay -> bay.fill()
                        .match(
                                open -> false,
                                pickets -> false,
                                lying -> false,
                                BayFill.Panel::cut,
                                fabric -> false,
                                mesh -> false))
                .toList();
        assertThat(cut).containsExactly(false, false, false, false, false, false, false, true);
    }
}
