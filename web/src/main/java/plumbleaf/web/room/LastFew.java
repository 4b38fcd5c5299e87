package plumbleaf.web.room;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * The latest few answers by their questions: where there are too many, the one asked for longest ago is forgotten. For several threads: who asks while an answer is
 * being made waits for it, and for no other. What could not be made is tried again when it is asked again.
 */
final class LastFew<K, V> {
    private final Map<K, FutureTask<V>> kept;

    LastFew(int most) {
        this.kept = new LinkedHashMap<>(most, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, FutureTask<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** What is there already. */
    Optional<V> known(K question) {
        FutureTask<V> one;
        synchronized (kept) {
            one = kept.get(question);
        }
        return one == null || !one.isDone() ? Optional.empty() : Optional.of(outcome(question, one));
    }

    /** What is there, or what is made now. */
    V of(K question, Supplier<V> make) {
        FutureTask<V> mine = new FutureTask<>(make::get);
        FutureTask<V> one;
        synchronized (kept) {
            one = kept.computeIfAbsent(question, any -> mine);
        }
        if (one == mine) mine.run();
        return outcome(question, one);
    }

    private V outcome(K question, FutureTask<V> one) {
        try {
            return one.get();
        } catch (ExecutionException e) {
            synchronized (kept) {
                kept.remove(question, one);
            }
            if (e.getCause() instanceof RuntimeException fault) throw fault;
            throw new IllegalStateException("Could not be made", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Told to stop while waiting for what another makes", e);
        }
    }
}
