package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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
 * Every post, rail and picket of the example jobs measured again from its ends as they would be drawn: lengths by Pythagoras, gaps and heights every inch along
 * the ground, plan places from post to post, counts by counting.
 *
 * Source: plane geometry, closed forms.
 * Tolerance: 1e-6 in.
 */
class RemeasureCheck {
    private static final Offset<Double> HAIR = within(1e-6);

    @ParameterizedTest
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane.json"})
    void postsStandOnTheGroundApartAsTheBaysSay(String example) {
        LaidOut laid = LaidOut.example(example);
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
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane.json"})
    void openingsAreClearAndNoHoleIsWhereNoneMayBe(String example) {
        LaidOut laid = LaidOut.example(example);
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
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane.json"})
    void railsReachFromPostToPost(String example) {
        for (Bay bay : LaidOut.example(example).layout().bays()) {
            assertThat(bay.rails()).hasSize(3);
            for (RailPiece rail : bay.rails()) {
                double rise = rail.to().inches() - rail.from().inches();
                assertThat(rail.cut().inches()).isCloseTo(Math.hypot(bay.level().inches(), rise), HAIR);
                double bevel = 3.5 * StrictMath.tan(rail.endsFromSquare().get(0).radians());
                assertThat(rail.longPoint().inches() - rail.cut().inches()).isCloseTo(bevel, HAIR);
                assertThat(rail.from().inches())
                        .isBetween(bay.bottomFrom().inches(), bay.topFrom().inches());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane.json"})
    void gapsAreThoseOfTheTrueGround(String example) {
        LaidOut laid = LaidOut.example(example);
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
            assertThat(bay.groundGapMin().inches()).isGreaterThanOrEqualTo(1 - 1e-6);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane.json"})
    void picketsStandEdgeToEdgeInEachStretch(String example) {
        LaidOut laid = LaidOut.example(example);
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
