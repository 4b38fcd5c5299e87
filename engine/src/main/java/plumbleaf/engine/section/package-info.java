/**
 * Steel and wood sections: their sizes, properties and yield. Knows shapes and materials; must not know what they are used for.
 *
 * <p>Read {@link plumbleaf.engine.section.Section}, {@link plumbleaf.engine.section.TubeProperties}, {@link plumbleaf.engine.section.Timber}.
 */
@NullMarked
package plumbleaf.engine.section;

import org.jspecify.annotations.NullMarked;
