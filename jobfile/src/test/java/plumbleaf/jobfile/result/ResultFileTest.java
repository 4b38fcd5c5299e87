package plumbleaf.jobfile.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.schema.SchemaFile;

/** The result of the example job has every key that is promised, is as its schema says, and is the same to the byte each time. */
class ResultFileTest {
    private static final SchemaFile SCHEMA = SchemaFile.read("result.schema.json");
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final String NURSERY = example();
    private static final String RESULT = result(NURSERY);

    private static String example() {
        try {
            return Files.readString(Path.of("..", "examples", "nursery-lane.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Design design(String text) {
        Job job = JobFile.read("job", text, CATALOGUE).job().orElseThrow();
        StandardTables tables = StandardTables.load();
        return Designs.of(
                job, CATALOGUE, tables.standards(), PriceBooks.of(job).orElseThrow(), ResultFileTest::onePieceABar);
    }

    /** What a plan says does not matter here: every piece from a bar of its own. */
    private static CutAnswer onePieceABar(CutTask task) {
        StockBar bar = task.bars().get(task.bars().size() - 1);
        List<CutBar> bars = task.pieces().stream()
                .map(piece -> new CutBar(
                        bar.id(),
                        bar.lengthNm(),
                        bar.price(),
                        false,
                        0,
                        List.of(new Cut(piece.id(), piece.group(), piece.longPointNm())),
                        bar.lengthNm() - piece.longPointNm(),
                        true))
                .toList();
        Money cost = Money.cents(bar.price().cents() * bars.size());
        return new CutAnswer.Planned(new CutPlan(task.stock(), task.saw(), bars, cost, Money.ZERO, false, 0));
    }

    private static String result(String text) {
        return ResultFile.write(design(text));
    }

    private static Node tree(String text) {
        return JsonReader.read(text).match(tree -> tree.root(), broken -> Json.nothing());
    }

    private static double number(Node root, String path) {
        return Double.parseDouble(
                NodePath.of(path).find(root).flatMap(Node::asNumber).orElseThrow());
    }

    @Test
    void theSameJobGivesTheSameBytes() {
        assertThat(result(NURSERY)).isEqualTo(RESULT);
        assertThat(result(JobFile.write(design(NURSERY).job()))).isEqualTo(RESULT);
    }

    @Test
    void theResultIsAsItsSchemaSays() {
        assertThat(SCHEMA.errors(RESULT)).isEmpty();
    }

    /** Jobs of other kinds, made from the example by one change each. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"hinge\": \"left\", \"swing\": \"in\",|``",
                "\"hinge\": \"left\"|\"hinge\": \"right\"",
                "\"basis\": \"customary\"|\"basis\": \"engineered\"",
                "\"shape\": \"raked\"|\"shape\": \"square\"",
                "\"fit\": \"racked\"|\"fit\": \"stepped\"",
                "\"fit\": \"racked\"|\"fit\": \"level-top\"",
                "\"kind\": \"sand\", \"state\": \"medium\"|\"kind\": \"fill\", \"state\": \"medium\"",
                "\"kind\": \"swing\",|\"kind\": \"pair\",",
                "\"braces\": 1|\"braces\": 0",
            })
    void resultsOfOtherJobsAreToo(String from, String to) {
        assertThat(NURSERY).contains(from);
        String text = NURSERY.replace(from, to);
        if (to.contains("pair")) text = text.replace("\"hinge\": \"left\", ", "");
        assertThat(SCHEMA.errors(result(text))).isEmpty();
    }

    @Test
    void aJobWithoutAFirstDayLeavesTheDaysOfItsWorkOut() {
        String ticket = "{ \"number\": \"KR-0417\", \"digFrom\": \"2027-05-10\", \"validThrough\": \"2027-05-31\" }";
        assertThat(NURSERY).contains(ticket);
        String undated = result(NURSERY.replace(ticket, ""));
        assertThat(RESULT).contains("\"first\": \"2027-05-10\"");
        assertThat(undated).doesNotContain("\"first\": \"2027-05-10\"");
        assertThat(SCHEMA.errors(undated)).isEmpty();
    }

    @Test
    void everyPromisedKeyIsThere() {
        Map<String, Set<String>> keys = SCHEMA.keys();
        PROMISED.forEach((object, promised) ->
                assertThat(keys.get(object)).as("keys of " + object).containsAll(List.of(promised.split(" ", -1))));
    }

    private static final Map<String, String> PROMISED = Map.ofEntries(
            Map.entry("", "format version verdict assumed findings posts bays gates cutPlans money"),
            Map.entry("findings[]", "id severity part measured limit ratio unit basis remedies"),
            Map.entry(
                    "posts[]",
                    "id run stationIn xIn yIn gradeElevationIn topElevationIn lengthIn section role support holeDiameterIn depthIn depthNeededIn depthGovernedBy concreteFt3 bags momentAtGradeLbIn utilisation utilisations ratedGustMph"),
            Map.entry(
                    "bays[]",
                    "id from to levelLengthIn slopeLengthIn gradePct fit stepIn rails pickets groundGapMinIn groundGapMaxIn heightMaxIn"),
            Map.entry("bays[].rails[]", "cutLengthIn longPointIn endAnglesDeg"),
            Map.entry("bays[].pickets", "count gapIn ripIn gapDriestIn gapWettestIn lengthsIn"),
            Map.entry(
                    "gates[].leaves[]",
                    "widthIn outline members weightLb weightDryLb centreOfGravity diagonalsIn welds"),
            Map.entry("gates[].leaves[].outline[]", "rIn zIn"),
            Map.entry(
                    "gates[].leaves[].members[]",
                    "id name section cutLengthIn longPointIn endAnglesDeg ends weightLb holes"),
            Map.entry("gates[].leaves[].centreOfGravity", "rIn nIn zIn"),
            Map.entry(
                    "gates[].swing",
                    "minClearanceIn atRadiusIn atAngleDeg runningMinIn maxAngleDeg limitedBy shotErrorIn curve remedies"),
            Map.entry("gates[].sag", "totalIn byCause byTime hangAllowanceIn latchLiveIn soil limits"),
            Map.entry("gates[].sag.byCause", "leafIn hingeFlexIn hingeSlackIn postIn footingIn"),
            Map.entry("gates[].sag.byTime", "camberIn atReleaseIn afterHangingIn"),
            Map.entry("gates[].sag.soil", "soft likely stiff"),
            Map.entry("gates[].hinges[]", "id zIn horizontalLb cases utilisation"),
            Map.entry("gates[].hinges[].cases[]", "combination leaf wind horizontalLb acrossLb verticalLb"),
            Map.entry("gates[].hingePost", "post momentAtGradeLbIn"),
            Map.entry("gates[].hingePost.momentAtGradeLbIn[]", "along across size torsion"),
            Map.entry("gates[].latchPost", "post momentAtGradeLbIn"),
            Map.entry(
                    "gates[].footings",
                    "diameterIn depthIn depthNeededIn depthGovernedBy concreteFt3 bags rotationRad nextSixInches"),
            Map.entry("cutPlans[]", "stock kerfIn endTrimIn bars cost lowerBound proven"),
            Map.entry("cutPlans[].bars[]", "lengthIn fromOffcut cuts offcutIn"),
            Map.entry("cutPlans[].bars[].cuts[]", "member longPointIn flip"),
            Map.entry("money", "lines cost overhead price tax total stages"),
            Map.entry("gates[].loadPath[]", "link utilisation"));

    @Test
    void partsAddUpToTheirWhole() {
        Node root = tree(RESULT);
        double total = number(root, "gates[0].sag.totalIn");
        double byCause = 0;
        for (String cause : List.of("leafIn", "hingeFlexIn", "hingeSlackIn", "postIn", "footingIn"))
            byCause += number(root, "gates[0].sag.byCause." + cause);
        double byTime = number(root, "gates[0].sag.byTime.camberIn") + number(root, "gates[0].sag.byTime.atReleaseIn");
        assertThat(Math.abs(byCause - total)).isLessThan(1e-9);
        assertThat(Math.abs(byTime - total)).isLessThan(1e-9);
    }

    @Test
    void theFirstIdeaOfTheExampleStrikesTheGroundAndTheOtherHingeSideDoesNot() {
        Node root = tree(RESULT);
        assertThat(NodePath.of("verdict").find(root).flatMap(Node::asText)).contains("fails");
        assertThat(number(root, "gates[0].swing.minClearanceIn")).isNegative();
        Node turned = tree(result(NURSERY.replace("\"hinge\": \"left\"", "\"hinge\": \"right\"")));
        assertThat(number(turned, "gates[0].swing.minClearanceIn")).isPositive();
    }
}
