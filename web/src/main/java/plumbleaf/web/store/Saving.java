package plumbleaf.web.store;

import java.util.function.Function;

/** What came of trying to change a job. */
public sealed interface Saving {
    <T> T match(Function<Saved, T> saved, Function<Stale, T> stale);

    /** It is written to disk. */
    record Saved(StoredJob now) implements Saving {
        @Override
        public <T> T match(Function<Saved, T> saved, Function<Stale, T> stale) {
            return saved.apply(this);
        }
    }

    /**
     * Someone else changed the job first; nothing was written.
     *
     * @param now  the job as they left it
     * @param what their change
     * @param who  they
     */
    record Stale(StoredJob now, String what, String who) implements Saving {
        @Override
        public <T> T match(Function<Saved, T> saved, Function<Stale, T> stale) {
            return stale.apply(this);
        }
    }
}
