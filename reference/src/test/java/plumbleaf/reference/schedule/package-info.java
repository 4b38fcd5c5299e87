/** Days and calendars. */
@NullMarked
package plumbleaf.reference.schedule;

import org.jspecify.annotations.NullMarked;
