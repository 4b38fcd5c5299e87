package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayPickets;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;

/**
 * Stepped and level-top fences, corners, joining runs, buried lines, staked posts and metric entry, on slopes small enough to do in the head.
 *
 * Source: plane geometry; Wood Handbook FPL-GTR-190, equation 13-2 (from memory), for the seasons of a gap.
 * Tolerance: 1e-6 in.; the shrinkage row MX07's own 0.1 %.
 */
class FitsCheck {
    /** 10 % down over three bays of 80 in.: each step 8 in. down, 10 in. under each low end. */
    @Test
    void aSteppedFenceStepsByWholeInches() {
        LaidOut laid = LaidOut.run("{ \"length\": \"20'\" }", ", \"fit\": \"stepped\"", 0, 0, 20, -24);
        List<Bay> bays = laid.layout().bays();
        assertThat(bays).hasSize(3);
        assertThat(bays).extracting(bay -> bay.step().inches()).containsExactly(0.0, -8.0, -8.0);
        for (Bay bay : bays) {
            assertThat(bay.groundGapMin().inches()).isCloseTo(2, within(1e-6));
            assertThat(bay.groundGapMax().inches()).isCloseTo(10, within(1e-6));
            assertThat(bay.grade().isZero()).isTrue();
            assertThat(bay.rails().get(0).cut()).isEqualTo(bay.level());
            assertThat(bay.heightMax().inches()).isCloseTo(82, within(1e-6));
        }
        assertThat(finding(laid.layout(), "line.gap").severity()).isEqualTo(Severity.MUST_FIX);
    }

    /** Ten feet of rise in a hundred: racked to the corner at 40 ft, stepped from there; and the same change at 60 ft, in the middle of the second leg. */
    @Test
    void oneRunMayChangeItsFitAtACorner() {
        String legs = "{ \"length\": \"40'\" }, { \"length\": \"40'\", \"turn\": \"90 deg left\" }";
        LaidOut laid = LaidOut.run(
                legs, ", \"fits\": [ { \"from\": \"40'\", \"to\": \"80'\", \"fit\": \"stepped\" } ]", 0, 0, 80, 96);
        for (Bay bay : laid.layout().runs().get(0).bays()) {
            boolean stepped = bay.start().inches() >= 480 - 1e-6;
            assertThat(bay.fit()).isEqualTo(stepped ? Fit.STEPPED : Fit.RACKED);
            assertThat(bay.grade().ratio()).isCloseTo(stepped ? 0 : 0.1, within(1e-6));
        }
        assertThat(changes(laid)).containsExactly(Severity.PASS);
        LaidOut seen = LaidOut.run(
                legs, ", \"fits\": [ { \"from\": \"60'\", \"to\": \"80'\", \"fit\": \"stepped\" } ]", 0, 0, 80, 96);
        assertThat(changes(seen)).containsExactly(Severity.CAUTION);
        assertThat(seen.layout().posts())
                .anySatisfy(post -> assertThat(post.station().inches()).isCloseTo(720, within(1e-9)));
    }

    private static List<Severity> changes(LaidOut laid) {
        return laid.layout().findings().stream()
                .filter(finding -> finding.id().equals("line.fit-changes"))
                .map(Finding::severity)
                .toList();
    }

    @Test
    void aLevelTopIsCutToTheGround() {
        LaidOut laid = LaidOut.run("{ \"length\": \"20'\" }", ", \"fit\": \"level-top\"", 0, 0, 20, -24);
        for (Bay bay : laid.layout().bays()) {
            assertThat(bay.topFrom().inches()).isCloseTo(74, within(1e-6));
            assertThat(bay.topTo().inches()).isCloseTo(74, within(1e-6));
            assertThat(bay.groundGapMax().inches()).isCloseTo(2, within(1e-6));
            for (FencePicket picket : bay.pickets().pickets()) {
                double middle = picket.station().inches() + picket.width().inches() / 2;
                assertThat(picket.length().inches()).isCloseTo(72 + 0.1 * middle, within(1e-6));
            }
        }
    }

    @Test
    void aCornerOfAnyAngleTakesAPostOnItsBisector() {
        LaidOut laid = LaidOut.run(
                "{ \"length\": \"10'\", \"bearing\": \"90 deg\" }, { \"length\": \"10'\", \"turn\": \"60 deg left\" }",
                "",
                0,
                0,
                20,
                0);
        Post corner = laid.layout().posts().stream()
                .filter(post -> post.role() == PostRole.CORNER)
                .findFirst()
                .orElseThrow();
        assertThat(corner.station().inches()).isCloseTo(120, within(1e-9));
        assertThat(corner.facing().bearing().inDegrees()).isCloseTo(60, within(1e-9));
        Post last = laid.layout().posts().get(laid.layout().posts().size() - 1);
        assertThat(last.at().xIn()).isCloseTo(120 + 60, within(1e-9));
        assertThat(last.at().yIn()).isCloseTo(120 * Math.sqrt(3) / 2, within(1e-9));
    }

    /** Redcedar nailed wet at 28 % loses 0.1625 in. of 5-1/2 down to 9 % (row MX07 of the material examples). */
    @Test
    void aWetPicketOpensItsGap() {
        LaidOut laid = LaidOut.run("{ \"length\": \"20'\" }", "", 0, 0, 20, 0);
        BayPickets pickets = laid.layout().bays().get(0).pickets();
        double opened = pickets.gapDriest().inches() - pickets.gap().inches();
        assertThat(opened).isCloseTo(0.1625, within(0.1625 * 0.001));
        assertThat(pickets.gapWettest().inches())
                .isBetween(pickets.gap().inches(), pickets.gapDriest().inches());
    }

    @Test
    void aStretchNoPostCanSpanIsNamedWithTheBayItForces() {
        LaidOut laid = LaidOut.run(
                "{ \"length\": \"40'\" }",
                ", \"noDig\": [ { \"from\": \"15'\", \"to\": \"22' 6\\\"\", \"why\": \"septic tank\" } ]",
                0,
                0,
                40,
                0);
        Finding stuck = finding(laid.layout(), "line.no-layout");
        assertThat(stuck.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(stuck.message())
                .isEqualTo(
                        "No post of R1 may stand from station 14' 7\" to 22' 11\" (septic tank, hole counted): that forces a bay of "
                                + "8' 4\", 8' 0\" is the most there. Move the line, span it with a longer rail, or dig there by hand.");
        assertThat(laid.layout().bays()).anyMatch(bay -> Math.abs(bay.level().inches() - 100) < 1e-6);
    }

    @Test
    void stakedPostsStay() {
        LaidOut laid = LaidOut.run(
                "{ \"length\": \"24'\" }",
                ", \"set\": [ { \"id\": \"P1\", \"station\": \"0'\" }, { \"id\": \"P2\", \"station\": \"7'\" }, { \"id\": \"P3\", \"station\": \"24'\" } ]",
                0,
                0,
                24,
                0);
        assertThat(laid.layout().posts()).extracting(Post::id).containsExactly("P1", "P2", "P2a", "P2b", "P3");
        assertThat(laid.layout().posts().get(1).station().inches()).isEqualTo(84);
    }

    @Test
    void aRunThatJoinsAnotherUsesItsPost() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Tee\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"east\": \"0'\", \"north\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"east\": \"30'\", \"north\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S3\", \"east\": \"10'\", \"north\": \"20'\", \"elevation\": \"0\\\"\" } ] }, \"runs\": ["
                        + "{ \"id\": \"R1\", \"legs\": [ { \"length\": \"30'\", \"bearing\": \"90 deg\" } ], \"style\": \"wood-side-by-side\", \"maxBay\": \"8'\" },"
                        + "{ \"id\": \"R2\", \"start\": { \"east\": \"10'\", \"north\": \"20'\" }, \"legs\": [ { \"length\": \"20'\", \"bearing\": \"180 deg\" } ],"
                        + "\"ends\": [ \"free\", { \"kind\": \"joins\", \"run\": \"R1\" } ], \"style\": \"wood-side-by-side\", \"maxBay\": \"8'\" } ] }");
        Post tee = laid.layout().run("R1").posts().stream()
                .filter(post -> post.at().distanceTo(PlanPoint.inches(120, 0)).inches() < 1e-9)
                .findFirst()
                .orElseThrow();
        List<Bay> branch = laid.layout().run("R2").bays();
        assertThat(branch.get(branch.size() - 1).to()).isEqualTo(tee.id());
        assertThat(laid.layout().run("R2").posts()).hasSize(branch.size());
    }

    /** 1 ft is 304.8 mm exactly, so both entries are the same job. */
    @Test
    void metricAndFeetGiveTheSameFence() {
        LaidOut feet = LaidOut.run("{ \"length\": \"46'\" }", "", 0, 0, 20, -31);
        LaidOut metric = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Test slope\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0 mm\", \"elevation\": \"0 mm\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"6096 mm\", \"elevation\": \"-78.74 cm\" } ] }, \"runs\": [ { \"id\": \"R1\","
                        + "\"legs\": [ { \"length\": \"14.0208 m\" } ], \"style\": \"wood-side-by-side\", \"infill\": \"1828.8 mm\","
                        + "\"bottomGap\": \"50.8 mm\", \"maxBay\": \"2438.4 mm\" } ] }");
        assertThat(metric.layout().posts()).isEqualTo(feet.layout().posts());
        assertThat(metric.layout().bays()).isEqualTo(feet.layout().bays());
    }

    /** A lone gate has its two posts, face to face its opening, and no bays. */
    @Test
    void aLoneGateStandsOnTwoPosts() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Lone gate\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"6'\", \"elevation\": \"-3\\\"\" } ] }, \"runs\": [ { \"id\": \"R1\","
                        + "\"legs\": [ { \"length\": \"6'\" } ], \"style\": \"none\" } ],"
                        + "\"gates\": [ { \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"1'\", \"opening\": \"4'\" } ] }");
        assertThat(laid.layout().bays()).isEmpty();
        List<Post> posts = laid.layout().gatePosts("G1");
        assertThat(laid.layout().posts()).isEqualTo(posts).hasSize(2);
        assertThat(posts.get(1).station().inches() - posts.get(0).station().inches())
                .isCloseTo(48 + 2.875, within(1e-9));
        assertThat(posts.get(0).outOfGround().inches()).isGreaterThan(60);
    }

    /** Two openings with one post's room between them: all four posts are kept, the clash is named, and nothing hangs between. */
    @Test
    void twoGatesTooNearAreNamed() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Two gates\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"30'\", \"elevation\": \"0\\\"\" } ] }, \"runs\": [ { \"id\": \"R1\","
                        + "\"legs\": [ { \"length\": \"30'\" } ], \"style\": \"wood-side-by-side\" } ], \"gates\": ["
                        + "{ \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"10'\", \"opening\": \"4'\" },"
                        + "{ \"id\": \"G2\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"14' 3\\\"\", \"opening\": \"4'\" } ] }");
        assertThat(laid.layout().gatePosts("G1")).hasSize(2);
        assertThat(laid.layout().gatePosts("G2")).hasSize(2);
        assertThat(finding(laid.layout(), "line.holes-meet").part()).isEqualTo("R1");
        assertThat(laid.layout().bays()).noneMatch(bay -> bay.level().inches() < 12);
    }

    /** A drop of ten feet within an inch: laid out all the same, and what does not work is said. */
    @Test
    void aCliffIsNoFault() {
        for (String fit : List.of("racked", "stepped", "level-top")) {
            LaidOut laid = LaidOut.run(
                    "{ \"length\": \"40'\" }", ", \"fit\": \"" + fit + "\"", 0, 0, 20, 0, 20.0625, -120, 40, -120);
            assertThat(laid.layout().bays()).isNotEmpty();
            if (!fit.equals("level-top"))
                assertThat(laid.layout().findings()).anyMatch(finding -> finding.severity() == Severity.MUST_FIX);
        }
    }

    /** A buried line with 18 in. to either side and a 10 in. hole keeps posts 23 in. away; an old plug of 10 in., 11 in. with its inch of clear ground. */
    @Test
    void buriedLinesAndOldConcreteKeepPostsAway() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Old holes\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"32'\", \"elevation\": \"0\\\"\" } ] }, \"runs\": [ { \"id\": \"R1\","
                        + "\"legs\": [ { \"length\": \"32'\" } ], \"style\": \"wood-side-by-side\", \"maxBay\": \"8'\" } ], \"existing\": {"
                        + "\"lines\": [ { \"kind\": \"water\", \"run\": \"R1\", \"station\": \"16'\", \"tolerance\": \"18\\\"\" } ],"
                        + "\"plugs\": [ { \"run\": \"R1\", \"station\": \"8'\", \"diameter\": \"10\\\"\", \"depth\": \"30\\\"\" } ] } }");
        assertThat(laid.layout().bays()).hasSize(5);
        for (Post post : laid.layout().posts()) {
            assertThat(Math.abs(post.station().inches() - 192)).isGreaterThanOrEqualTo(23 - 1e-6);
            assertThat(Math.abs(post.station().inches() - 96)).isGreaterThanOrEqualTo(11 - 1e-6);
        }
    }

    /** Ground shot 4 ft to the inside lies 8 in. lower: a foot from the fence it is 2 in. lower, and the height counts from there. */
    @Test
    void heightCountsFromTheLowerSide() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Bank\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"8'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S3\", \"run\": \"R1\", \"station\": \"0'\", \"in\": \"4'\", \"elevation\": \"-8\\\"\" },"
                        + "{ \"id\": \"S4\", \"run\": \"R1\", \"station\": \"8'\", \"in\": \"4'\", \"elevation\": \"-8\\\"\" } ] }, \"runs\": ["
                        + "{ \"id\": \"R1\", \"legs\": [ { \"length\": \"8'\" } ], \"style\": \"wood-side-by-side\", \"infill\": \"6'\", \"bottomGap\": \"2\\\"\","
                        + "\"maxBay\": \"8'\" } ], \"rules\": { \"height\": { \"limit\": \"6' 3\\\"\", \"from\": \"lower-side\" } } }");
        Finding height = finding(laid.layout(), "line.height");
        assertThat(height.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(height.message())
                .isEqualTo(
                        "The fence stands 6' 4\" at its highest, B1 of R1, measured from the lower side; 6' 3\" allowed.");
        assertThat(finding(laid.layout(), "line.height-side").severity()).isEqualTo(Severity.CAUTION);
    }

    private static Finding finding(Layout layout, String id) {
        return layout.findings().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
