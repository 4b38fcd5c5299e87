package plumbleaf.engine.catalogue;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** How a piece of hardware is fixed to steel. */
public sealed interface Fastening {
    <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted);

    /** Fillets down both long sides of its plate. */
    record Welded(Length leg) implements Fastening {
        @Override
        public <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted) {
            return welded.apply(this);
        }
    }

    /**
     * Bolts in one row along the plate, through both walls of the tube behind it.
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
        public <T> T match(Function<Welded, T> welded, Function<Bolted, T> bolted) {
            return bolted.apply(this);
        }
    }
}
