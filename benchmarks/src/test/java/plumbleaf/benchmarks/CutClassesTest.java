package plumbleaf.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plumbleaf.engine.bars.StockBar;

/** Lists are what their classes say. */
class CutClassesTest {
    @ParameterizedTest
    @EnumSource(CutClasses.class)
    void theSameSeedDrawsTheSameListAndEveryPieceGoesIntoABar(CutClasses drawn) {
        for (int seed = 1; seed <= 3; seed++) {
            CutList list = drawn.list(seed);
            assertThat(list).isEqualTo(drawn.list(seed)).isNotEqualTo(drawn.list(seed + 3));
            long longest =
                    list.bars().stream().mapToLong(StockBar::lengthNm).max().orElseThrow();
            assertThat(list.lengths()).allMatch(length -> length > 0 && length <= longest);
            assertThat(new HashSet<>(list.bars()).stream().map(StockBar::id)).doesNotHaveDuplicates();
        }
    }

    /** Both kinds are as long as whole bars; the second has a piece more, one of the core being cut in two. */
    @Test
    void grownListsAreAsLongAsWholeBars() {
        for (int seed = 1; seed <= 3; seed++) {
            CutList more = GrownLists.oneBarMore(201, new Random(seed));
            CutList full = GrownLists.everyBarFull(202, new Random(seed));
            assertThat(more.lengths()).hasSize(201);
            assertThat(full.lengths()).hasSize(202);
            for (CutList list : new CutList[] {more, full})
                assertThat(sum(list) % list.bars().get(0).lengthNm()).isZero();
        }
    }

    @Test
    void barsCutAtRandomAreFull() {
        CutList list = OneLength.cutAtRandom(10_000, 402, new Random(1));
        assertThat(list.lengths()).hasSize(402);
        assertThat(sum(list)).isEqualTo(132 * 10_000L);
    }

    private static long sum(CutList list) {
        return list.lengths().stream().mapToLong(each -> each).sum();
    }
}
