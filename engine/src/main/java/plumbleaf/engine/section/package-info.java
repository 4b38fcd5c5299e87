/**
 * Steel and wood sections: their sizes, properties and yield. Knows shapes and materials; must not know what they are used for.
 * Read {@link plumbleaf.engine.section.Section}.
 */
@NullMarked
package plumbleaf.engine.section;

import org.jspecify.annotations.NullMarked;
