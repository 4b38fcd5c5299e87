package plumbleaf.engine.catalogue;

import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** What runs from post to post. */
public sealed interface FenceRails {
    <T> T match(Function<None, T> none, Function<Wood, T> wood, Function<Steel, T> steel);

    /** Nothing but the infill itself: boards that lie from post to post. */
    record None() implements FenceRails {
        @Override
        public <T> T match(Function<None, T> none, Function<Wood, T> wood, Function<Steel, T> steel) {
            return none.apply(this);
        }
    }

    /**
     * Sawn rails.
     *
     * @param rail its larger face stands upright
     * @param counts how many, by height of the infill
     * @param edge distance of the lowest rail's centre from the infill's bottom, and of the highest from its top
     */
    record Wood(Board rail, List<RailCount> counts, Length edge) implements FenceRails {
        public Wood {
            counts = List.copyOf(counts);
        }

        @Override
        public <T> T match(Function<None, T> none, Function<Wood, T> wood, Function<Steel, T> steel) {
            return wood.apply(this);
        }
    }

    /**
     * Rails of pipe or tube.
     *
     * @param section id of it
     * @param counts how many, by height of the infill
     * @param bottomWire whether a tension wire runs along the bottom; the lowest rail is then not at the bottom
     */
    record Steel(String section, List<RailCount> counts, Length edge, boolean bottomWire) implements FenceRails {
        public Steel {
            counts = List.copyOf(counts);
        }

        @Override
        public <T> T match(Function<None, T> none, Function<Wood, T> wood, Function<Steel, T> steel) {
            return steel.apply(this);
        }
    }

    private List<RailCount> allCounts() {
        return match(none -> List.of(), Wood::counts, Steel::counts);
    }

    /** How many rails an infill of this height takes: those of the first row that reaches it, else of the last row. */
    default int count(Length infill) {
        List<RailCount> counts = allCounts();
        for (RailCount row : counts) {
            if (infill.compareTo(row.upTo()) <= 0) return row.count();
        }
        return counts.isEmpty() ? 0 : counts.get(counts.size() - 1).count();
    }
}
