/**
 * What concerns all jobs of the house at once: the days of its crews, and what done work makes of its rates.
 *
 * <p>Read {@link plumbleaf.web.house.CalendarDoor}, {@link plumbleaf.web.house.RatesDoor}.
 */
@NullMarked
package plumbleaf.web.house;

import org.jspecify.annotations.NullMarked;
