package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.support.Support;

class PostNamesTest {
    private static Stop stop(String set) {
        return new Stop(0, PostRole.LINE, "", 2, 10, new Support.NewFooting(), set, "");
    }

    @Test
    void oneSeriesRunsThroughAllRuns() {
        PostNames names = new PostNames(List.of());
        assertThat(names.of(List.of(stop(""), stop("")))).containsExactly("P1", "P2");
        assertThat(names.of(List.of(stop("")))).containsExactly("P3");
    }

    @Test
    void stakedPostsKeepTheirNamesAndLaterOnesGetLetters() {
        PostNames names = new PostNames(List.of("P1", "P2", "P3"));
        assertThat(names.of(List.of(stop("P1"), stop(""), stop(""), stop("P2"), stop("P3"), stop(""))))
                .containsExactly("P1", "P1a", "P1b", "P2", "P3", "P3a");
        assertThat(names.of(List.of(stop(""), stop("")))).containsExactly("P4", "P5");
    }
}
