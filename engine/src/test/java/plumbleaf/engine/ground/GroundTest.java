package plumbleaf.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.Edge;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

class GroundTest {
    private static final GroundBook YARD = yard();

    /** A small yard in all three entry forms: rod readings, station and elevation, falls, east and north, off-run. */
    private static GroundBook yard() {
        return new GroundBook(
                new Benchmark("nail in the gate stump", Offset.ZERO),
                List.of(new Setup("H1", "benchmark", Length.inches(55.5))),
                List.of(
                        rod("S1", 0, 47, ""),
                        rod("S2", 18, 62, ""),
                        Books.station("S3", 22, -10),
                        new Shot(
                                "S4",
                                new ShotPlace.After("R1", "S3", Length.feet(12), TapeLay.UNSAID, Offset.ZERO),
                                new ShotHeight.Falls("S3", new Offset(10)),
                                ""),
                        Books.station("S5", 46, -30),
                        Books.inside("S6", 18, 4, -7.5),
                        Books.inside("S7", 22, 4, -11),
                        Books.at("S8", 552, 240, -33)),
                List.of(),
                List.of(new LaterGround("R1", Length.feet(17), Length.feet(23), Length.inches(2), "pavers")));
    }

    private static Shot rod(String id, double feet, double readingIn, String note) {
        return new Shot(
                id,
                new ShotPlace.OnRun("R1", Length.feet(feet), Offset.ZERO),
                new ShotHeight.Rod("H1", Length.inches(readingIn)),
                note);
    }

    @Test
    void allThreeEntryFormsReduceToHeights() {
        Ground ground = Ground.of(YARD, List.of(Books.east(46)));
        Profile profile = ground.profile("R1");
        assertThat(profile.points()).extracting(ProfilePoint::shot).containsExactly("S1", "S2", "S3", "S4", "S5");
        assertThat(profile.points())
                .extracting(point -> point.elevation().inches())
                .containsExactly(8.5, -6.5, -10.0, -20.0, -30.0);
        assertThat(profile.points().get(3).station()).isEqualTo(Offset.feet(34));
        assertThat(ground.findings()).isEmpty();
    }

    @Test
    void theProfileIsStraightBetweenShots() {
        Profile profile = Ground.of(YARD, List.of(Books.east(46))).profile("R1");
        assertThat(profile.elevationAt(Length.feet(9)).inches()).isCloseTo(1, within(1e-12));
        assertThat(profile.gradeAfter(Offset.feet(9)).ratio()).isCloseTo(-15 / 216.0, within(1e-12));
        assertThat(profile.gradeBetween(Offset.ZERO, Offset.feet(46)).ratio()).isCloseTo(-38.5 / 552, within(1e-12));
    }

    /** The first point shot again from the last setup closes the loop; from the same setup it is one reading too many. */
    @Test
    void aShotTakenAgainFromAnotherSetupClosesTheLoop() {
        List<Setup> setups =
                List.of(new Setup("H1", "benchmark", Length.inches(40)), new Setup("H2", "S1", Length.inches(30)));
        Shot again = new Shot("S3", rod("S0", 0, 50, "").place(), new ShotHeight.Rod("H2", Length.inches(20.25)), "");
        Levelled moved = Levelled.of(new GroundBook(
                new Benchmark("hydrant", new Offset(100)),
                setups,
                List.of(rod("S0", 0, 50, ""), rod("S1", 120, 60, ""), again),
                List.of(),
                List.of()));
        assertThat(moved.findings()).hasSize(1);
        assertThat(moved.findings().get(0).severity()).isEqualTo(Severity.PASS);
        assertThat(moved.findings().get(0).message()).isEqualTo("The level comes back to S0 1/4\" off after 2 setups.");
        assertThat(moved.shots()).extracting(LevelledShot::id).containsExactly("S0", "S1");
        Levelled twice = Levelled.of(new GroundBook(
                new Benchmark("hydrant", new Offset(100)),
                setups,
                List.of(rod("S0", 0, 50, ""), rod("S1", 120, 60, ""), rod("S3", 0, 50.25, "")),
                List.of(),
                List.of()));
        assertThat(twice.findings()).isEmpty();
        assertThat(twice.shots()).hasSize(3);
    }

    @Test
    void turningPointsCarryTheHeightAndTheLoopCloses() {
        GroundBook book = new GroundBook(
                new Benchmark("hydrant", new Offset(100)),
                List.of(new Setup("H1", "benchmark", Length.inches(40)), new Setup("H2", "S1", Length.inches(30))),
                List.of(
                        rod("S1", 0, 60, ""),
                        new Shot(
                                "S2",
                                new ShotPlace.OnRun("R1", Length.feet(40), Offset.ZERO),
                                new ShotHeight.Rod("H2", Length.inches(50)),
                                ""),
                        new Shot(
                                "S3",
                                new ShotPlace.OnRun("R1", Length.feet(40), Offset.ZERO),
                                new ShotHeight.Rod("H2", Length.inches(10.5)),
                                "Benchmark")),
                List.of(),
                List.of());
        Levelled levelled = Levelled.of(book);
        assertThat(levelled.levels())
                .containsExactly(new StandingLevel("H1", new Offset(140)), new StandingLevel("H2", new Offset(110)));
        assertThat(levelled.shots())
                .extracting(shot -> shot.elevation().inches())
                .containsExactly(80.0, 60.0);
        Finding closure = levelled.findings().get(0);
        assertThat(closure.id()).isEqualTo("ground.closure");
        assertThat(closure.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(closure.message()).isEqualTo("The level comes back to the benchmark 1/2\" off after 2 setups.");
        assertThat(closure.measure().orElseThrow().limit()).isCloseTo(0.25 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void aChainThatBitesItsTailIsNamed() {
        GroundBook book = Books.book(
                new Shot(
                        "S1",
                        new ShotPlace.OnRun("R1", Length.ZERO, Offset.ZERO),
                        new ShotHeight.Falls("S2", new Offset(1)),
                        ""),
                new Shot(
                        "S2",
                        new ShotPlace.After("R1", "S1", Length.feet(3), TapeLay.UNSAID, Offset.ZERO),
                        new ShotHeight.Falls("S1", new Offset(1)),
                        ""));
        assertThat(ids(Ground.of(book, List.of(Books.east(10)))))
                .containsExactly("ground.reference S1", "ground.reference S2", "ground.missing R1");
    }

    @Test
    void whatIsWrongWithABookIsSaidAllAtOnce() {
        Ground ground = Ground.of(
                Books.book(
                        Books.station("S1", 2, 0),
                        Books.station("S2", 10, 30),
                        Books.station("S3", 20, 0),
                        Books.station("S4", 75, -15),
                        Books.station("S5", 75, -19),
                        Books.station("S6", 82, 5)),
                List.of(Books.east(90)));
        assertThat(ids(ground))
                .containsExactly(
                        "ground.one-place S5",
                        "ground.extrapolated R1",
                        "ground.extrapolated R1",
                        "ground.gap R1",
                        "ground.blunder S2",
                        "ground.low-point R1");
    }

    @Test
    void aShotWithinThreeInchesOfALineCountsOnIt() {
        Ground ground = Ground.of(
                Books.book(Books.at("S1", 0, 0, 0), Books.at("S2", 100, -2.5, 5), Books.at("S3", 120, 3.5, 9)),
                List.of(Books.east(10)));
        assertThat(ground.profile("R1").points()).extracting(ProfilePoint::shot).containsExactly("S1", "S2");
    }

    @Test
    void aShotBesideTheLineIsHeldAgainstItsNeighbours() {
        Ground ground = Ground.of(
                Books.book(
                        Books.station("S1", 0, 0),
                        Books.station("S2", 40, 0),
                        Books.inside("S3", 0, 40, 0),
                        Books.inside("S4", 40, 40, 0),
                        Books.inside("S5", 19, 21, 25)),
                List.of(Books.east(40)));
        assertThat(ids(ground)).containsExactly("ground.blunder S5");
    }

    /** S6 was meant at 60 ft, and its easting was read as 600 ft. A pair of shots far out has each other. */
    @Test
    void aShotFarOffAllOthersInPlanIsNamed() {
        List<Shot> shots = new ArrayList<>();
        for (int i = 1; i <= 5; i++) shots.add(Books.at("S" + i, 120 * i, 120 + 40 * (i % 2), i));
        shots.add(Books.at("S6", 7200, 120, 6));
        Ground slipped = Ground.of(Books.book(shots.toArray(Shot[]::new)), List.of());
        assertThat(slipped.findings()).hasSize(1);
        assertThat(slipped.findings().get(0).message())
                .isEqualTo(
                        "Shot S6 lies 550' 1/8\" from the nearest other shot, and no other shot more than 10' 6-1/2\""
                                + " from its own. Read its place again: a digit of its northing or easting may be wrong.");
        shots.add(Books.at("S7", 7200, 240, 6));
        assertThat(ids(Ground.of(Books.book(shots.toArray(Shot[]::new)), List.of())))
                .isEmpty();
    }

    @Test
    void theSurfaceKeepsTheProfileAsAnEdge() {
        Ground ground = Ground.of(YARD, List.of(Books.east(46)));
        PlanPoint pin = PlanPoint.inches(264, 0);
        Surface surface = ground.surfaceNear(pin, Length.inches(96), Books.east(46), Slope.ZERO);
        for (double x = 170; x <= 360; x += 3.7) {
            SurfaceHeight height = surface.heightAt(PlanPoint.inches(x, 0));
            assertThat(height.isExtrapolated()).isFalse();
            assertThat(height.elevation().inches())
                    .isCloseTo(ground.profile("R1").elevationAt(new Offset(x)).inches(), within(1e-9));
        }
        assertThat(surface.triangles().edges()).contains(new Edge(0, 3));
        assertThat(surface.heightAt(PlanPoint.inches(264, 60)).isExtrapolated()).isTrue();
        assertThat(surface.extrapolation("G1", PlanPoint.inches(264, 60), DisplayUnits.US)
                        .orElseThrow()
                        .message())
                .isEqualTo(
                        "The ground at G1 is needed 1' 0\" beyond the outermost shots: the nearest triangle was carried on. "
                                + "Take a shot there.");
    }

    /** A pin half an inch past the last shot needs no word; a place a foot past it does. The hull's edge lies 48 in. inside the line here. */
    @Test
    void groundWithinThreeInchesOfTheShotsNeedsNoWord() {
        Surface surface = Ground.of(YARD, List.of(Books.east(46)))
                .surfaceNear(PlanPoint.inches(264, 0), Length.inches(96), Books.east(46), Slope.ZERO);
        for (double past : new double[] {0.5, 2.99, 3.01, 12}) {
            PlanPoint place = PlanPoint.inches(264, 48 + past);
            assertThat(surface.heightAt(place).beyond().inches()).isCloseTo(past, within(1e-9));
            assertThat(surface.extrapolation("G1", place, DisplayUnits.US).isPresent())
                    .as(past + " in.")
                    .isEqualTo(past > 3);
        }
    }

    @Test
    void withoutShotsBesideTheLineTheRunIsTiltedAcross() {
        Ground ground =
                Ground.of(Books.book(Books.station("S1", 0, 0), Books.station("S2", 20, 24)), List.of(Books.east(20)));
        Surface surface =
                ground.surfaceNear(PlanPoint.inches(120, 0), Length.inches(96), Books.east(20), Slope.ratio(-0.05));
        assertThat(surface.heightAt(PlanPoint.inches(140, 30)).elevation().inches())
                .isCloseTo(14 - 1.5, within(1e-12));
        assertThat(surface.heightAt(PlanPoint.inches(100, -40)).elevation().inches())
                .isCloseTo(10 + 2, within(1e-12));
        assertThat(surface.findings()).extracting(Finding::id).containsExactly("ground.cross-slope");
    }

    /** A kerb with a break line stays sharp; without it the triangles would cut across. */
    @Test
    void noTriangleCrossesABreakLine() {
        List<Shot> shots = List.of(
                Books.station("S1", 0, 0),
                Books.station("S2", 20, 0),
                Books.inside("S3", 0, 3, 0),
                Books.inside("S4", 20, 3, 0),
                Books.inside("S5", 10, 3.5, 6),
                Books.inside("S6", 0, 8, 6),
                Books.inside("S7", 20, 8, 6));
        GroundBook book = new GroundBook(
                new Benchmark("", Offset.ZERO),
                List.of(),
                shots,
                List.of(new Breakline("kerb", List.of("S3", "S4"))),
                List.of());
        Surface surface = Ground.of(book, List.of(Books.east(20)))
                .surfaceNear(PlanPoint.inches(120, 0), Length.feet(12), Books.east(20), Slope.ZERO);
        assertThat(surface.heightAt(PlanPoint.inches(120, 35.9)).elevation().inches())
                .isEqualTo(0);
    }

    /** Places on a slanted line are rounded to the grid, some a hair to its left and some to its right: no plane may be made of three of them. */
    @ParameterizedTest
    @ValueSource(ints = {0, 7, 22, 30, 45, 60, 74, 101, 150, 197, 240, 283, 330, 351})
    void theGroundOfASlantedLineIsThatOfTheSameLineDueEast(int turnDegrees) {
        Shot[] shots = {
            Books.station("S1", 0, 0),
            Books.station("S2", 5, -9),
            Books.station("S3", 9, -2),
            Books.station("S4", 13, -14),
            Books.station("S5", 17, -11),
            Books.station("S6", 20, -25),
            Books.inside("S7", 6, 4, -3),
            Books.inside("S8", 14, 5, -8)
        };
        Direction way = Direction.EAST.turnedLeft(Angle.degrees(turnDegrees));
        for (int lineOnly = 0; lineOnly < 2; lineOnly++) {
            GroundBook book = Books.book(lineOnly == 1 ? Arrays.copyOf(shots, 6) : shots);
            Surface east = around(book, Direction.EAST);
            Surface slanted = around(book, way);
            assertThat(slanted.findings()).isEqualTo(east.findings());
            for (double along = 1; along < 240; along += 7.3) {
                for (double across = -50; across <= 50; across += 12.5) {
                    SurfaceHeight there = slanted.heightAt(at(way, along, across));
                    SurfaceHeight here = east.heightAt(at(Direction.EAST, along, across));
                    assertThat(there.elevation().inches())
                            .isCloseTo(here.elevation().inches(), within(1e-4));
                    assertThat(there.isExtrapolated()).isEqualTo(here.isExtrapolated());
                }
            }
            for (SurfacePiece piece : slanted.along(at(way, 1, 0), at(way, 239, 0)))
                assertThat(piece.extrapolated()).isFalse();
            for (SurfaceFacet facet : slanted.facetsCovering(at(way, 120, 0), Length.inches(90))) {
                assertThat(facet.plane().toEast()).isBetween(-1.0, 1.0);
                assertThat(facet.plane().toNorth()).isBetween(-1.0, 1.0);
            }
        }
    }

    private static Surface around(GroundBook book, Direction way) {
        RunLine run = new RunLine("R1", new PlanLine(PlanPoint.ORIGIN, List.of(way), List.of(Length.feet(20))), true);
        return Ground.of(book, List.of(run)).surfaceNear(at(way, 120, 0), Length.feet(12), run, Slope.ratio(0.03));
    }

    private static PlanPoint at(Direction way, double alongIn, double acrossIn) {
        return PlanPoint.ORIGIN.moved(way, new Offset(alongIn)).moved(way.left(), new Offset(acrossIn));
    }

    /** A break line that passes a hair from a shot goes through it: the ground there is the shot's. */
    @Test
    void aBreakLineThroughAShotButForRoundingBendsThere() {
        for (double off : new double[] {-1e-3, -1e-6, 0, 1e-6, 1e-3}) {
            GroundBook book = new GroundBook(
                    new Benchmark("", Offset.ZERO),
                    List.of(),
                    List.of(
                            Books.station("S1", 0, 0),
                            Books.station("S2", 20, 0),
                            Books.at("S3", 0, 40, 0),
                            Books.at("S4", 120, 40 + off, 8),
                            Books.at("S5", 240, 40, 0),
                            Books.at("S6", 120, 80, 0)),
                    List.of(new Breakline("kerb", List.of("S3", "S5"))),
                    List.of());
            Surface surface = Ground.of(book, List.of(Books.east(20)))
                    .surfaceNear(PlanPoint.inches(120, 0), Length.feet(20), Books.east(20), Slope.ZERO);
            assertThat(surface.heightAt(PlanPoint.inches(60, 40)).elevation().inches())
                    .isCloseTo(4, within(0.01));
            assertThat(surface.heightAt(PlanPoint.inches(120, 39.9)).elevation().inches())
                    .isCloseTo(8, within(0.05));
        }
    }

    @Test
    void laterRiseIsTheMostThatTouchesTheStretch() {
        Ground ground = Ground.of(YARD, List.of(Books.east(46)));
        assertThat(ground.laterRise("R1", Offset.feet(20), Offset.feet(30))).isEqualTo(Length.inches(2));
        assertThat(ground.laterRise("R1", Offset.feet(24), Offset.feet(30))).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aWalkOverTheSurfaceAgreesWithItsHeights(int seed) {
        Random random = new Random(seed);
        Surface surface = randomSurface(random);
        PlanPoint from = PlanPoint.inches(random.nextInt(300) - 150, random.nextInt(300) - 150);
        PlanPoint to = PlanPoint.inches(random.nextInt(300) - 150.5, random.nextInt(300) - 150);
        double length = from.distanceTo(to).inches();
        double reached = 0;
        for (SurfacePiece piece : surface.along(from, to)) {
            assertThat(piece.from().inches()).isCloseTo(reached, within(1e-9));
            reached = piece.to().inches();
            for (double share : new double[] {0.01, 0.3, 0.99}) {
                double at = piece.from().inches()
                        + share * (piece.to().inches() - piece.from().inches());
                double straight = piece.start().inches()
                        + share * (piece.end().inches() - piece.start().inches());
                SurfaceHeight height = surface.heightAt(from.towards(to, at / length));
                assertThat(height.elevation().inches()).isCloseTo(straight, within(1e-6));
                assertThat(height.isExtrapolated()).isEqualTo(piece.extrapolated());
            }
        }
        assertThat(reached).isCloseTo(length, within(1e-9));
    }

    /** Every place of the disc lies in some facet that has the surface's height there. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void facetsCoverTheDisc(int seed) {
        Random random = new Random(seed);
        Surface surface = randomSurface(random);
        PlanPoint centre = PlanPoint.inches(random.nextInt(200) - 100, random.nextInt(200) - 100);
        List<SurfaceFacet> facets = surface.facetsCovering(centre, Length.inches(90));
        for (int i = 0; i < 2000; i++) {
            double radius = 90 * Math.sqrt(random.nextDouble());
            double angle = 2 * Math.PI * random.nextDouble();
            PlanPoint place = PlanPoint.inches(
                    centre.xIn() + radius * StrictMath.cos(angle), centre.yIn() + radius * StrictMath.sin(angle));
            double expected = surface.heightAt(place).elevation().inches();
            assertThat(facets)
                    .anyMatch(facet -> holds(facet, place)
                            && Math.abs(facet.plane().heightAt(place).inches() - expected) < 1e-6);
        }
    }

    private static boolean holds(SurfaceFacet facet, PlanPoint place) {
        for (int i = 0; i < facet.corners().size(); i++) {
            PlanPoint a = facet.corners().get(i).plan();
            PlanPoint b = facet.corners().get((i + 1) % facet.corners().size()).plan();
            double turn = (b.xIn() - a.xIn()) * (place.yIn() - a.yIn()) - (b.yIn() - a.yIn()) * (place.xIn() - a.xIn());
            if (turn < -1e-6) return false;
        }
        return true;
    }

    private static Surface randomSurface(Random random) {
        Shot[] shots = new Shot[12];
        for (int i = 0; i < shots.length; i++)
            shots[i] = Books.at(
                    "S" + (i + 1),
                    random.nextInt(200) - 100 + 0.25,
                    random.nextInt(200) - 100 + 0.5,
                    random.nextInt(40));
        return Ground.of(Books.book(shots), List.of(Books.east(20)))
                .surfaceNear(PlanPoint.ORIGIN, Length.feet(20), Books.east(20), Slope.ZERO);
    }

    private static List<String> ids(Ground ground) {
        return ground.findings().stream()
                .map(finding -> finding.id() + " " + finding.part())
                .toList();
    }
}
