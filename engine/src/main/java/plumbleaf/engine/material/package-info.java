/**
 * What things are made of: weight, stiffness, strength, and how wood moves. Knows materials alone; must not know shapes, sizes or uses.
 *
 * <p>Read {@link plumbleaf.engine.material.Steel}, {@link plumbleaf.engine.material.WoodSpecies}, {@link plumbleaf.engine.material.WoodMovement}.
 */
@NullMarked
package plumbleaf.engine.material;

import org.jspecify.annotations.NullMarked;
