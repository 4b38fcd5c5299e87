package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.Length;

/** A fence that goes past a retaining wall for a part of its length: there the ground within the wall's height holds no post. */
class BesideDropTest {
    private static Design yard(String soil, String rules) {
        return Yard.ofBoards(
                        "engineered",
                        "\"speed\": \"105 mph\", \"exposure\": \"B\"",
                        new int[][] {{0, 0}, {48, 0}},
                        "\"infill\": \"4'\", \"maxBay\": \"6'\", \"legs\": [ { \"length\": \"48'\" } ]",
                        "")
                .with("\"state\": \"medium\"", "\"state\": \"medium\"" + soil)
                .with("\"builds\"", rules + "\"builds\"")
                .design();
    }

    private static Length needed(PostDesign post) {
        return post.footing().orElseThrow().depthNeeded();
    }

    @Test
    void postsBesideADropAreDugBelowItAndTheOthersAreNot() {
        List<PostDesign> level = yard("", "").posts();
        List<PostDesign> all = yard(", \"besideDrop\": \"18\\\"\"", "").posts();
        List<PostDesign> part = yard(
                        "",
                        "\"rules\": { \"guards\": [ { \"run\": \"R1\", \"from\": \"15'\", \"to\": \"33'\", \"drop\": \"18\\\"\" } ] }, ")
                .posts();
        assertThat(part).hasSameSizeAs(level).hasSameSizeAs(all);
        int beside = 0;
        for (int i = 0; i < part.size(); i++) {
            double station = part.get(i).post().station().inFeet();
            boolean there = station >= 15 && station <= 33;
            if (there) beside++;
            assertThat(needed(part.get(i)))
                    .as(part.get(i).id())
                    .isEqualTo(needed(there ? all.get(i) : level.get(i)))
                    .isNotEqualTo(needed(there ? level.get(i) : all.get(i)));
        }
        assertThat(beside).isEqualTo(3);
    }
}
