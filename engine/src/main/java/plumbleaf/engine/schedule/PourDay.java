package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.job.Stated;

/**
 * What is poured on one day.
 *
 * @param number of the day of digging and setting, from 1
 * @param date of it, where a start was given
 * @param posts whose holes are filled, in the order of the work
 */
public record PourDay(int number, Stated<LocalDate> date, List<String> posts) {
    public PourDay {
        posts = List.copyOf(posts);
    }
}
