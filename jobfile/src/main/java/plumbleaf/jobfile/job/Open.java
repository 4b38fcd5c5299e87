package plumbleaf.jobfile.job;

import java.util.Optional;
import plumbleaf.engine.job.Stated;

/** From a field that may be left open to a stated value. */
final class Open {
    private Open() {}

    static <T> Stated<T> of(Optional<T> given) {
        return given.map(Stated::of).orElseGet(Stated::open);
    }
}
