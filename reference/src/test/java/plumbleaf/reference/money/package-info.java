/** Margin, learning from done work, and what adds up to what. */
@NullMarked
package plumbleaf.reference.money;

import org.jspecify.annotations.NullMarked;
