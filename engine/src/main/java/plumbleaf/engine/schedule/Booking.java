package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.List;

/**
 * Days that are taken.
 *
 * @param key of its phase, {@code cure}, {@code dry} or {@code rain}
 * @param who {@code crew 1}, {@code shop}; empty while concrete cures, wood dries, or days are kept for rain
 * @param afternoon whether it starts at noon of the first day
 * @param untilNoon whether it ends at noon of the last day
 * @param machines it takes, one of each
 * @param notes what the days ask for: frost, a ticket that has run out
 */
public record Booking(
        String job,
        String key,
        String name,
        String who,
        LocalDate first,
        boolean afternoon,
        LocalDate last,
        boolean untilNoon,
        List<String> machines,
        List<String> notes) {
    public Booking {
        machines = List.copyOf(machines);
        notes = List.copyOf(notes);
    }

    /** Nobody works on these days; they are waited through, or kept. */
    public boolean isWait() {
        return who.isEmpty();
    }
}
