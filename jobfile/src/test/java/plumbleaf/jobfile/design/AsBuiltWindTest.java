package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;

/** A terrace falls 3 ft half way along: under a level top the fence stands 9 ft high on its lower half, where 6 ft were asked for. */
class AsBuiltWindTest {
    private static Design designed(String fit, String basis) {
        return Yard.ofBoards(
                        basis,
                        "\"speed\": \"105 mph\", \"exposure\": \"B\"",
                        new int[][] {{0, 0}, {152, 0}, {160, -36}, {300, -36}},
                        "\"legs\": [ { \"length\": \"300'\" } ], \"infill\": \"6'\", \"bottomGap\": \"2\\\"\", \"fit\": \""
                                + fit + "\"",
                        "\"post\": \"F1083-REG-2.5\"")
                .design();
    }

    private static double bayAt(Design design, double feet) {
        return design.layout().bays().stream()
                .filter(bay -> bay.start().inFeet() <= feet && bay.end().inFeet() > feet)
                .mapToDouble(bay -> bay.level().inches())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anEngineeredFenceSetsItsPostsCloserWhereItStandsTaller() {
        Design level = designed("level-top", "engineered");
        Design racked = designed("racked", "engineered");
        assertThat(bayAt(level, 70)).isGreaterThan(bayAt(level, 230) + 12);
        assertThat(bayAt(racked, 230)).isGreaterThan(bayAt(level, 230) + 12);
        assertThat(level.posts())
                .extracting(post -> post.check().utilisation())
                .allSatisfy(use -> assertThat(use).isLessThanOrEqualTo(1.0));
    }

    @Test
    void aCustomaryFenceIsToldHowMuchLessGustItsTallPartStands() {
        Design level = designed("level-top", "customary");
        assertThat(ratedAt(level, 230)).isLessThan(0.8 * ratedAt(level, 70));
    }

    private static double ratedAt(Design design, double feet) {
        return design.posts().stream()
                .filter(post -> Math.abs(post.post().station().inFeet() - feet) < 4)
                .mapToDouble(post -> post.rated().orElseThrow().ultimate().mph())
                .findFirst()
                .orElseThrow();
    }
}
