package plumbleaf.documents.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A run is cut at its posts into strips that are neither slivers nor out of order. */
class StripEndsTest {
    private static final double MOST_IN = 480;

    @Test
    void aShortRunIsOneStrip() {
        assertThat(StripEnds.of(400, List.of(0.0, 96.0, 192.0, 400.0), MOST_IN)).containsExactly(0.0, 400.0);
    }

    @Test
    void aLongOneIsCutAtThePostsNearestToEqualParts() {
        assertThat(StripEnds.of(960, List.of(0.0, 96.0, 192.0, 470.0, 500.0, 960.0), MOST_IN))
                .containsExactly(0.0, 470.0, 960.0);
    }

    @Test
    void whereNoPostStandsInBetweenItIsNotCut() {
        assertThat(StripEnds.of(960, List.of(0.0, 40.0, 930.0, 960.0), MOST_IN)).containsExactly(0.0, 960.0);
    }

    @Test
    void noStripIsASliverAndEveryCutIsAPost() {
        SplittableRandom random = new SplittableRandom(11);
        for (int trial = 0; trial < 2000; trial++) {
            double length = random.nextDouble(300, 5000);
            TreeSet<Double> posts = new TreeSet<>(List.of(0.0, length));
            for (int i = random.nextInt(40); i > 0; i--) posts.add(random.nextDouble(length));
            List<Double> ends = StripEnds.of(length, List.copyOf(posts), MOST_IN);
            assertThat(ends).startsWith(0.0).endsWith(length).isSubsetOf(posts);
            double least = 0.5 * length / Math.ceil(length / MOST_IN);
            for (int i = 1; i < ends.size(); i++)
                assertThat(ends.get(i) - ends.get(i - 1)).isGreaterThanOrEqualTo(least * 0.999_999);
        }
    }
}
