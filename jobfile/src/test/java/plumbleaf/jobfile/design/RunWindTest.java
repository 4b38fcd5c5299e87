package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.NavigableMap;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WindTables;
import plumbleaf.jobfile.catalogue.StandardTables;

/** Where the ends of the walls are, as the wind finds them: not at a bend, not where a yard closes on itself, and at a free end even where a bend follows it soon. */
class RunWindTest {
    private static final String TURN = ", \"turn\": \"90 deg left\" }";

    private static Design fence(String legs, String more) {
        return new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Fold Green", "date": "2027-04-19",
                  "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "C" },
                    "frost": { "depth": "24\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                    { "id": "S2", "run": "R1", "station": "30'", "elevation": "0\\"" } ] },
                  "runs": [ { "id": "R1", "legs": [ LEGS ], "style": "wood-side-by-side", "infill": "6'" MORE } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("LEGS", legs).replace("MORE", more)).design();
    }

    /** Design wind on each post by its station. */
    private static NavigableMap<Double, Double> pounds(Design design) {
        NavigableMap<Double, Double> pounds = new TreeMap<>();
        for (PostDesign post : design.posts())
            pounds.put(
                    post.post().station().inches(),
                    post.wind().orElseThrow().on().force().pounds());
        return pounds;
    }

    @Test
    void allFourCornersOfASquareYardCarryTheSame() {
        Design square = fence(
                "{ \"length\": \"48'\" }, { \"length\": \"48'\"" + TURN + ", { \"length\": \"48'\"" + TURN
                        + ", { \"length\": \"48'\"" + TURN,
                ", \"ends\": [ \"free\", { \"kind\": \"joins\", \"run\": \"R1\" } ]");
        List<Double> corners = square.posts().stream()
                .filter(post -> post.post().role() == PostRole.CORNER)
                .map(post -> post.wind().orElseThrow().on().force().pounds())
                .toList();
        assertThat(corners).hasSize(4);
        for (double corner : corners) assertThat(corner).isCloseTo(corners.get(1), within(1e-6));
        Design open = fence("{ \"length\": \"48'\" }, { \"length\": \"48'\"" + TURN, "");
        assertThat(pounds(open).firstEntry().getValue()).isGreaterThan(1.5 * corners.get(0));
    }

    /** Its first post is one along a side of 48 ft, as the post on the side across is. */
    @Test
    void aYardThatBeginsInTheMiddleOfASideHasNoEndThere() {
        NavigableMap<Double, Double> square = pounds(fence(
                "{ \"length\": \"24'\" }, { \"length\": \"48'\"" + TURN + ", { \"length\": \"48'\"" + TURN
                        + ", { \"length\": \"48'\"" + TURN + ", { \"length\": \"24'\"" + TURN,
                ", \"ends\": [ \"free\", { \"kind\": \"joins\", \"run\": \"R1\" } ]"));
        assertThat(square).containsKeys(0.0, 288.0 + 576 + 288);
        assertThat(square.firstEntry().getValue()).isCloseTo(square.get(288.0 + 576 + 288), within(1e-6));
        assertThat(square.get(288.0)).isCloseTo(square.get(288.0 + 576), within(1e-6));
    }

    /** A leg entered in two pieces is one fence; so is one with a bend of three degrees. */
    @Test
    void aBendIsNoEnd() {
        NavigableMap<Double, Double> whole =
                pounds(fence("{ \"length\": \"64'\" }", ", \"set\": [ { \"id\": \"P90\", \"station\": \"8'\" } ]"));
        NavigableMap<Double, Double> pieces =
                pounds(fence("{ \"length\": \"8'\" }, { \"length\": \"56'\", \"turn\": \"3 deg left\" }", ""));
        assertThat(pieces.keySet()).isEqualTo(whole.keySet());
        whole.forEach((station, force) -> assertThat(pieces.get(station)).isCloseTo(force, within(1e-6)));
    }

    /** The chords of a curve of 40 ft radius, each shorter than twice the height, still have free ends at the curve's own. */
    @Test
    void aCurveIsOneWall() {
        NavigableMap<Double, Double> curve = pounds(
                fence("{ \"bearing\": \"0 deg\", \"arc\": { \"radius\": \"40'\", \"turn\": \"90 deg left\" } }", ""));
        double inside = curve.higherEntry(300.0).getValue();
        assertThat(curve.firstEntry().getValue()).isGreaterThan(inside);
        assertThat(curve.firstEntry().getValue()).isCloseTo(curve.lastEntry().getValue(), within(1e-6));
    }

    /** A share of a wall with three gates: worked out alone it is, to the last digit, what it is as a part of the whole wall. Seeded. */
    @Test
    void aShareAloneMeetsWhatItMeetsAsPartOfItsWall() {
        SiteWind site = fence("{ \"length\": \"64'\" }", "").job().site().wind();
        WindTables tables = StandardTables.load().wind();
        Screen boards = new Screen(0.9, false, Length.inches(5.5));
        WallStretch wall = new WallStretch(
                Length.feet(300), Length.feet(6), Length.inches(76), boards, Length.feet(40), Length.ZERO);
        List<Span> gates = List.of(
                new Span(Length.feet(60), Length.feet(64)),
                new Span(Length.feet(64), Length.feet(70)),
                new Span(Length.feet(220), Length.feet(230)));
        LegWind whole = LegWind.of(site, wall, gates, tables);
        LegWind gust = LegWind.gust(site, site.speed(), wall, gates, tables);
        Random random = new Random(29);
        for (int round = 0; round < 400; round++) {
            double fromIn = random.nextInt(3590);
            Span share =
                    new Span(Length.inches(fromIn), Length.inches(Math.min(3600, fromIn + 1 + random.nextInt(96))));
            assertThat(LegWind.of(site, wall, gates, tables, share).over(share)).isEqualTo(whole.over(share));
            assertThat(LegWind.gust(site, site.speed(), wall, gates, tables, share)
                            .over(share))
                    .isEqualTo(gust.over(share));
        }
    }
}
