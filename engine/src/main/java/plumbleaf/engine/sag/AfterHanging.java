package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Offset;

/**
 * What the latch corner still loses in the years after hanging, + down: creep of the ground, wear of the hinges, the softest season, and
 * what a person's weight leaves behind.
 */
public record AfterHanging(Offset creep, Offset wear, Offset season, Offset residual) {
    public Offset total() {
        return creep.plus(wear).plus(season).plus(residual);
    }
}
