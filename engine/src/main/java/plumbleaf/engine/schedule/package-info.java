/**
 * The order of work in days: shop, dig and set, cure, build, hang, finish; and, since trips follow from days, the whole quote of a job.
 *
 * <p>Read {@link plumbleaf.engine.schedule.Schedules}, then {@link plumbleaf.engine.schedule.Quotes}.
 */
@NullMarked
package plumbleaf.engine.schedule;

import org.jspecify.annotations.NullMarked;
