package plumbleaf.engine.schedule;

import java.time.LocalDate;

/**
 * Days on which someone or something does not work.
 *
 * @param who {@code everyone}, {@code crew 2}, {@code shop} or a machine's name; one machine of its kind
 * @param through the last of them
 * @param why holiday, vacation, repair; may be empty
 */
public record DayOff(String who, LocalDate from, LocalDate through, String why) {
    public static final String EVERYONE = "everyone";

    boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(through);
    }
}
