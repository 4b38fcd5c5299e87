/**
 * Days as calendars read them (iCalendar, RFC 5545).
 *
 * <p>Read {@link plumbleaf.jobfile.calendar.CalendarFile}.
 */
@NullMarked
package plumbleaf.jobfile.calendar;

import org.jspecify.annotations.NullMarked;
