package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;

class HeaveInYardTest {
    private static final String SAND = "\"kind\": \"sand\", \"state\": \"medium\"";
    private static final String FROST = "\"depth\": \"30\\\"\", \"source\"";

    private static List<Finding> heave(Yard yard) {
        return Yard.findings(yard.design(), "footing.heave");
    }

    @ParameterizedTest
    @ValueSource(strings = {"clay", "silt"})
    void fineSoilThatFreezesMayLiftOnePostOfTheGateAndOneOfTheRun(String kind) {
        Yard yard = Yard.nursery().with(SAND, "\"kind\": \"" + kind + "\", \"state\": \"firm\"");
        Design design = yard.design();
        List<Finding> heave = heave(yard);
        assertThat(heave).hasSize(2);
        assertThat(heave)
                .extracting(finding -> post(design, finding).post().gate())
                .containsExactlyInAnyOrder("G1", "");
        for (Finding finding : heave) {
            PostDesign post = post(design, finding);
            Measure measure = finding.measure().orElseThrow();
            double shaftIn2 = Math.PI * post.hole().inches() * 30;
            assertThat(measure.measured()).isCloseTo(shaftIn2 * 65 / 6.894757293168, within(1e-6));
            assertThat(measure.limit())
                    .isGreaterThanOrEqualTo(post.concrete().weight().pounds());
        }
    }

    private static PostDesign post(Design design, Finding finding) {
        return design.post("P" + finding.part().substring(1)).orElseThrow();
    }

    @Test
    void cleanSandAndGroundThatDoesNotFreezeLiftNothing() {
        assertThat(heave(Yard.nursery())).isEmpty();
        assertThat(heave(Yard.nursery().with("\"kind\": \"sand\"", "\"kind\": \"gravel\"")))
                .isEmpty();
        Yard warm = Yard.nursery()
                .with(SAND, "\"kind\": \"clay\", \"state\": \"firm\"")
                .with(FROST, "\"depth\": \"0\\\"\", \"source\"");
        assertThat(heave(warm)).isEmpty();
    }
}
