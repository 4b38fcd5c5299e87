package plumbleaf.engine.bars;

import java.util.function.Function;

/** How many bars of a kind can be had. */
public sealed interface Supply {
    <T> T match(Function<AsMany, T> asMany, Function<AtMost, T> atMost);

    static Supply asMany() {
        return new AsMany();
    }

    static Supply atMost(int bars) {
        return new AtMost(bars);
    }

    /** Ordered as needed. */
    record AsMany() implements Supply {
        @Override
        public <T> T match(Function<AsMany, T> asMany, Function<AtMost, T> atMost) {
            return asMany.apply(this);
        }
    }

    /** These are on hand and no more. */
    record AtMost(int bars) implements Supply {
        public AtMost {
            if (bars < 0) throw new IllegalArgumentException("Bars on hand must be zero or more, was " + bars);
        }

        @Override
        public <T> T match(Function<AsMany, T> asMany, Function<AtMost, T> atMost) {
            return atMost.apply(this);
        }
    }
}
