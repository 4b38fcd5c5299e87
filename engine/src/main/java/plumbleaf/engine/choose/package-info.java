/**
 * The search for the cheapest build that passes, and its proof. Knows candidates, prices and verdicts; what a build is and how it is judged come in from
 * outside. Read {@link plumbleaf.engine.choose.Cheapest}.
 */
@NullMarked
package plumbleaf.engine.choose;

import org.jspecify.annotations.NullMarked;
