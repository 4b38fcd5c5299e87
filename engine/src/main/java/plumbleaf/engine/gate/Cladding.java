package plumbleaf.engine.gate;

import java.util.function.Function;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.material.WoodSpecies;

/** What fills the leaf. */
public sealed interface Cladding {
    <T> T match(Function<Open, T> open, Function<Wood, T> wood);

    /** Nothing: the bare frame. */
    record Open() implements Cladding {
        @Override
        public <T> T match(Function<Open, T> open, Function<Wood, T> wood) {
            return open.apply(this);
        }
    }

    /**
     * Plumb wood pickets on nailers that are bolted to the rails.
     *
     * @param face the side of the frame that the pickets are on; {@code both} counts as outside
     */
    record Wood(Boarding style, WoodSpecies pickets, WoodSpecies nailers, FinishedFace face) implements Cladding {
        @Override
        public <T> T match(Function<Open, T> open, Function<Wood, T> wood) {
            return wood.apply(this);
        }
    }
}
