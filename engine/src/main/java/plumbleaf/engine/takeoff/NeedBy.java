package plumbleaf.engine.takeoff;

import java.time.LocalDate;
import plumbleaf.engine.job.Stated;

/**
 * When a line of the order has to be there: the morning of the first day of the work that uses it first.
 *
 * @param work what it is for, in words; empty before the days are laid out
 * @param day open where the job has no first day yet
 */
public record NeedBy(String work, Stated<LocalDate> day) {
    public static final NeedBy UNKNOWN = new NeedBy("", Stated.open());
}
