/**
 * The order of work in days: shop, dig and set, cure, build, hang, finish. Knows hours and the crew; must not know money.
 *
 * <p>Read {@link plumbleaf.engine.schedule.Schedules}.
 */
@NullMarked
package plumbleaf.engine.schedule;

import org.jspecify.annotations.NullMarked;
