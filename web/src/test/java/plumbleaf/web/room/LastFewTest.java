package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LastFewTest {
    private final AtomicInteger made = new AtomicInteger();
    private final LastFew<String, Integer> few = new LastFew<>(2);

    private int ask(String question) {
        return few.of(question, made::incrementAndGet);
    }

    @Test
    void theOneAskedForLongestAgoIsForgotten() {
        assertThat(ask("a")).isEqualTo(1);
        assertThat(ask("b")).isEqualTo(2);
        assertThat(ask("a")).isEqualTo(1);
        assertThat(ask("c")).isEqualTo(3);
        assertThat(few.known("b")).isEmpty();
        assertThat(few.known("a")).contains(1);
        assertThat(few.known("c")).contains(3);
    }

    @Test
    void whatCouldNotBeMadeIsTriedAgain() {
        assertThatThrownBy(() -> few.of("a", () -> {
                    throw new IllegalArgumentException("no");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no");
        assertThat(ask("a")).isEqualTo(1);
    }

    @Test
    void whoAsksMeanwhileWaitsForTheSameAndForNoOther() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch mayEnd = new CountDownLatch(1);
        CompletableFuture<Integer> first = CompletableFuture.supplyAsync(() -> few.of("slow", () -> {
            begun.countDown();
            await(mayEnd);
            return made.incrementAndGet() + 100;
        }));
        await(begun);
        CompletableFuture<Integer> second = new CompletableFuture<>();
        Thread waits = new Thread(() -> second.complete(ask("slow")));
        waits.start();
        assertThat(ask("quick")).isEqualTo(1);
        assertThat(few.known("slow")).isEmpty();
        assertThat(second).isNotDone();
        mayEnd.countDown();
        assertThat(first.get(1, TimeUnit.MINUTES)).isEqualTo(102);
        assertThat(second.get(1, TimeUnit.MINUTES)).isEqualTo(102);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(1, TimeUnit.MINUTES)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
