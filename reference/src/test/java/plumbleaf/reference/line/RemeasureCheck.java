package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.engine.line.RunLayout;

/**
 * Every post, rail and picket of the example jobs, and of forty jobs on random ground, measured again from its ends as they would be drawn: lengths by Pythagoras, gaps and heights every inch along
 * the ground, plan places from post to post, counts by counting.
 *
 * Source: plane geometry, closed forms.
 * Tolerance: 1e-6 in.
 */
class RemeasureCheck {
    private static final Offset<Double> HAIR = within(1e-6);

    static Stream<LaidOut> jobs() {
        return Stream.concat(
                Stream.of("kiln-yard.json", "nursery-lane.json").map(LaidOut::example),
                IntStream.range(0, 40).mapToObj(RemeasureCheck::rolling));
    }

    /** Sixty to ninety feet of ground that rises and falls by up to 8 % between shots ten feet apart, with a root in the way. */
    private static LaidOut rolling(int seed) {
        Random random = new Random(seed);
        int count = 7 + random.nextInt(4);
        double[] shots = new double[2 * count];
        int height = 0;
        for (int i = 0; i < count; i++) {
            shots[2 * i] = 10 * i;
            shots[2 * i + 1] = height;
            height += random.nextInt(19) - 9;
        }
        int root = 10 + random.nextInt(40);
        return LaidOut.run(
                "{ \"length\": \"" + 10 * (count - 1) + "'\" }",
                ", \"noDig\": [ { \"from\": \"" + root + "'\", \"to\": \"" + (root + 2) + "'\", \"why\": \"root\" } ]",
                shots);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void postsStandOnTheGroundApartAsTheBaysSay(LaidOut laid) {
        Map<String, Post> posts = new LinkedHashMap<>();
        for (Post post : laid.layout().posts()) {
            assertThat(posts.put(post.id(), post)).isNull();
            assertThat(post.id()).isEqualTo("P" + posts.size());
            Profile profile = laid.ground().profile(post.run());
            assertThat(post.grade().inches())
                    .isCloseTo(profile.elevationAt(post.station()).inches(), HAIR);
        }
        for (Bay bay : laid.layout().bays()) {
            Post from = Objects.requireNonNull(posts.get(bay.from()));
            Post to = Objects.requireNonNull(posts.get(bay.to()));
            assertThat(from.at().distanceTo(to.at()).inches())
                    .isCloseTo(bay.level().inches(), HAIR);
            assertThat(from.station().inches()).isCloseTo(bay.start().inches(), HAIR);
            double rise = bay.bottomTo().inches() - bay.bottomFrom().inches();
            assertThat(bay.slopeLength().inches())
                    .isCloseTo(Math.hypot(bay.level().inches(), rise), HAIR);
            double groundRise = to.grade().inches() - from.grade().inches();
            assertThat(bay.groundGrade().ratio() * bay.level().inches()).isCloseTo(groundRise, HAIR);
            assertThat(from.top().inches()).isGreaterThanOrEqualTo(bay.topFrom().inches() - 1e-9);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void openingsAreClearAndNoHoleIsWhereNoneMayBe(LaidOut laid) {
        for (Gate gate : laid.job().gates()) {
            Post first = laid.layout().gatePosts(gate.id()).get(0);
            Post second = laid.layout().gatePosts(gate.id()).get(1);
            double faceFrom = first.station().inches() + first.width().inches() / 2;
            double faceTo = second.station().inches() - second.width().inches() / 2;
            assertThat(faceFrom).isCloseTo(gate.station().inches(), HAIR);
            assertThat(faceTo - faceFrom).isCloseTo(gate.opening().inches(), HAIR);
        }
        for (Post post : laid.layout().posts()) {
            for (NoDig noDig : laid.job().run(post.run()).noDig()) {
                double radius = post.hole().inches() / 2;
                boolean before =
                        post.station().inches() + radius <= noDig.from().inches() + 1e-6;
                boolean after = post.station().inches() - radius >= noDig.to().inches() - 1e-6;
                assertThat(before || after || radius == 0).as("%s", post).isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void railsReachFromPostToPost(LaidOut laid) {
        for (Bay bay : laid.layout().bays()) {
            assertThat(bay.rails()).hasSize(3);
            for (RailPiece rail : bay.rails()) {
                double rise = rail.to().inches() - rail.from().inches();
                assertThat(rail.cut().inches()).isCloseTo(Math.hypot(bay.level().inches(), rise), HAIR);
                double end = rail.endsFromSquare().get(0).radians();
                if (end > 0)
                    assertThat(StrictMath.tan(end))
                            .isCloseTo(Math.abs(bay.grade().ratio()), within(1e-12));
                double bevel = 3.5 * StrictMath.tan(end);
                assertThat(rail.longPoint().inches() - rail.cut().inches()).isCloseTo(bevel, HAIR);
                assertThat(rail.from().inches())
                        .isBetween(bay.bottomFrom().inches(), bay.topFrom().inches());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void gapsAreThoseOfTheTrueGround(LaidOut laid) {
        for (Bay bay : laid.layout().bays()) {
            Profile profile = laid.ground().profile(bay.run());
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            int steps = 4000;
            for (int i = 0; i <= steps; i++) {
                double share = i / (double) steps;
                double bottom = bay.bottomFrom().inches()
                        + share * (bay.bottomTo().inches() - bay.bottomFrom().inches());
                double ground = profile.elevationAt(plumbleaf.engine.quantity.Offset.inches(
                                bay.start().inches() + share * bay.level().inches()))
                        .inches();
                least = Math.min(least, bottom - ground);
                most = Math.max(most, bottom - ground);
            }
            assertThat(bay.groundGapMin().inches()).isCloseTo(least, within(0.005));
            assertThat(bay.groundGapMax().inches()).isCloseTo(most, within(0.005));
            assertThat(bay.groundGapMin().inches()).isLessThanOrEqualTo(least + 1e-9);
            assertThat(bay.groundGapMax().inches()).isGreaterThanOrEqualTo(most - 1e-9);
            boolean fair = laid.layout().findings().stream()
                    .anyMatch(finding -> finding.id().equals("line.top") && finding.severity() == Severity.PASS);
            if (fair) assertThat(bay.groundGapMin().inches()).isGreaterThanOrEqualTo(1 - 1e-6);
            if (fair) assertThat(bay.groundGapMax().inches()).isLessThanOrEqualTo(4 + 1e-6);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void picketsStandEdgeToEdgeInEachStretch(LaidOut laid) {
        for (RunLayout run : laid.layout().runs()) {
            Run asked = laid.job().run(run.run());
            for (Bay bay : run.bays()) {
                List<FencePicket> pickets = bay.pickets().pickets();
                for (int j = 0; j < pickets.size(); j++) {
                    FencePicket picket = pickets.get(j);
                    double middle = picket.station().inches() + picket.width().inches() / 2;
                    assertThat(middle)
                            .isBetween(bay.start().inches() - 1.5, bay.end().inches() + 1.5);
                    assertThat(picket.length().inches())
                            .isCloseTo(asked.infill().inches(), HAIR);
                    if (j == 0) continue;
                    FencePicket before = pickets.get(j - 1);
                    double gap = picket.station().inches()
                            - before.station().inches()
                            - before.width().inches();
                    assertThat(gap).isCloseTo(bay.pickets().gap().inches(), HAIR);
                    assertThat(gap).isBetween(0.0625 - 1e-9, 0.25 + 1e-9);
                }
            }
        }
    }
}
