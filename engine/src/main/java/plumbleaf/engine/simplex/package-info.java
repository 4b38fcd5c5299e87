/**
 * Small linear programs: least cost within limits, with the duals that prove it. Knows variables, limits and nothing about fences. Dense, meant for some
 * hundreds of rows. Read {@link plumbleaf.engine.simplex.LinearProgram}, {@link plumbleaf.engine.simplex.Simplex},
 * {@link plumbleaf.engine.simplex.Answer}; where columns come one after another, {@link plumbleaf.engine.simplex.GrowingProgram}.
 */
@NullMarked
package plumbleaf.engine.simplex;

import org.jspecify.annotations.NullMarked;
