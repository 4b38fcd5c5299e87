package plumbleaf.engine.schedule;

import java.time.LocalDate;

/**
 * Days that are taken.
 *
 * @param key of its phase, or {@code cure}
 * @param who {@code crew 1}, {@code shop}; empty while concrete cures
 * @param afternoon whether it starts at noon of the first day
 * @param untilNoon whether it ends at noon of the last day
 */
public record Booking(
        String job,
        String key,
        String name,
        String who,
        LocalDate first,
        boolean afternoon,
        LocalDate last,
        boolean untilNoon) {}
