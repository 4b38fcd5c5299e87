package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
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
        for (String high : List.of("4'", "6'")) {
            Design design = built(style, high);
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
}
