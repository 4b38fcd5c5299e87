/** Checks of wind pressures, coefficients and what they put on posts. */
@NullMarked
package plumbleaf.reference.wind;

import org.jspecify.annotations.NullMarked;
