package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.function.Function;

/** How far a gate is cleared for the shop. */
public sealed interface Release {
    <T> T match(Function<Priced, T> priced, Function<Hold, T> hold, Function<Released, T> released);

    /** Priced from the plan; not for the shop. */
    record Priced() implements Release {
        @Override
        public <T> T match(Function<Priced, T> priced, Function<Hold, T> hold, Function<Released, T> released) {
            return priced.apply(this);
        }
    }

    /** Held until the opening is measured as the posts stand. */
    record Hold() implements Release {
        @Override
        public <T> T match(Function<Priced, T> priced, Function<Hold, T> hold, Function<Released, T> released) {
            return hold.apply(this);
        }
    }

    /** Cleared for the shop under a revision letter; {@code beforePosts} when the customer signed for building before the posts stand. */
    record Released(String revision, LocalDate date, String by, boolean beforePosts) implements Release {
        @Override
        public <T> T match(Function<Priced, T> priced, Function<Hold, T> hold, Function<Released, T> released) {
            return released.apply(this);
        }
    }
}
