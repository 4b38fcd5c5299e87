/** Checks of rules for barriers. */
@NullMarked
package plumbleaf.reference.rule;

import org.jspecify.annotations.NullMarked;
