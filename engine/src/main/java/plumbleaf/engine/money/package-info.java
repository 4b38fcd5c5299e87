/**
 * Amounts of money, exact to the cent, and unit prices with more places. Never a double.
 */
@NullMarked
package plumbleaf.engine.money;

import org.jspecify.annotations.NullMarked;
