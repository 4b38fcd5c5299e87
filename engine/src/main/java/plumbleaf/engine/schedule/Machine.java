package plumbleaf.engine.schedule;

import java.util.List;
import plumbleaf.engine.labour.Phase;

/**
 * Something the house has so many of, and work cannot go without: one of them is on one job a day.
 *
 * @param name as the house says it: {@code auger}
 * @param phases of work that take one
 */
public record Machine(String name, int count, List<Phase> phases) {
    public Machine {
        phases = List.copyOf(phases);
        if (name.isBlank() || count < 0)
            throw new IllegalArgumentException("A machine has a name, and there are none or some of it: " + count);
    }

    boolean isFor(String key) {
        return phases.stream().anyMatch(phase -> phase.key().equals(key));
    }
}
