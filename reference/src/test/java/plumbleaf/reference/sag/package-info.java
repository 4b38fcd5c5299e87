/** The drop of a hung gate against closed forms and against what the trade knows. */
@NullMarked
package plumbleaf.reference.sag;

import org.jspecify.annotations.NullMarked;
