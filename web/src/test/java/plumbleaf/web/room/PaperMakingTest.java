package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(value = 5, unit = TimeUnit.MINUTES)
class PaperMakingTest {
    @Test
    void saysWhatIsSetAndWhenItIsOver() throws Exception {
        CountDownLatch told = new CountDownLatch(1);
        CountDownLatch asked = new CountDownLatch(1);
        PaperMaking making = new PaperMaking();
        assertThat(making.words()).isEqualTo("The first paper is being set.");
        making.begin(tell -> {
            tell.accept("Site plan, 1 page");
            tell.accept("Unrolled profile, 61 pages");
            told.countDown();
            hold(asked);
        });
        assertThat(told.await(2, TimeUnit.MINUTES)).isTrue();
        assertThat(making.words()).isEqualTo("2 papers set, the last: Unrolled profile, 61 pages.");
        assertThat(making.isOver()).isFalse();
        asked.countDown();
        while (!making.isOver()) Thread.onSpinWait();
    }

    private static void hold(CountDownLatch latch) {
        try {
            assertThat(latch.await(2, TimeUnit.MINUTES)).isTrue();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
