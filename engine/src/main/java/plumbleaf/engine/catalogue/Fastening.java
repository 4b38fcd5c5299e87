package plumbleaf.engine.catalogue;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** How a piece of hardware is fixed to steel, or to a wood post. */
public sealed interface Fastening {
    <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted, Function<Lagged, T> lagged);

    /** Fillets down both long sides of its plate. */
    record Welded(Length leg) implements Fastening {
        @Override
        public <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted, Function<Lagged, T> lagged) {
            return welded.apply(this);
        }
    }

    /**
     * Bolts in one row along the plate, through both walls of the tube behind it, or through the wood.
     *
     * @param diameter of the bolt
     * @param hole it is drilled for
     * @param apart from one bolt to the next; of no account for one bolt
     */
    record Bolted(int count, Length diameter, Length hole, Length apart) implements Fastening {
        public Bolted {
            if (count < 1 || count > 12) throw new IllegalArgumentException("Bolts must be 1 to 12, were " + count);
            if (hole.compareTo(diameter) < 0) throw new IllegalArgumentException("A hole is no smaller than its bolt");
        }

        @Override
        public <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted, Function<Lagged, T> lagged) {
            return bolted.apply(this);
        }
    }

    /**
     * Lag screws in one row along the plate, into wood alone.
     *
     * @param lead the hole they are led in by
     * @param length under the head
     * @param apart from one to the next; of no account for one
     */
    record Lagged(int count, Length diameter, Length lead, Length length, Length apart) implements Fastening {
        public Lagged {
            if (count < 1 || count > 12)
                throw new IllegalArgumentException("Lag screws must be 1 to 12, were " + count);
            if (lead.compareTo(diameter) > 0) throw new IllegalArgumentException("A lag is led in by a smaller hole");
        }

        @Override
        public <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted, Function<Lagged, T> lagged) {
            return lagged.apply(this);
        }
    }
}
