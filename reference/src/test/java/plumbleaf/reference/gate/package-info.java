/** Cuts, weights and swings of gates against closed forms, printed weights and what the trade knows. */
@NullMarked
package plumbleaf.reference.gate;

import org.jspecify.annotations.NullMarked;
