package plumbleaf.jobfile.catalogue;

import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.jobfile.input.InputError;

/** A style file read: its styles, or all that is wrong with it. */
public sealed interface StyleReading {
    <T> T match(Function<Good, T> good, Function<Bad, T> bad);

    /** @param source who made the file and from what, as it says */
    record Good(String source, List<FenceStyle> styles) implements StyleReading {
        public Good {
            styles = List.copyOf(styles);
        }

        @Override
        public <T> T match(Function<Good, T> good, Function<Bad, T> bad) {
            return good.apply(this);
        }
    }

    record Bad(List<InputError> all) implements StyleReading {
        public Bad {
            all = List.copyOf(all);
        }

        @Override
        public <T> T match(Function<Good, T> good, Function<Bad, T> bad) {
            return bad.apply(this);
        }
    }
}
