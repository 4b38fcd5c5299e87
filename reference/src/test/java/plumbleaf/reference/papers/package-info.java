/** The papers of the example jobs, whole: repeatable, readable, nothing over anything else, drawings that open elsewhere. */
@NullMarked
package plumbleaf.reference.papers;

import org.jspecify.annotations.NullMarked;
