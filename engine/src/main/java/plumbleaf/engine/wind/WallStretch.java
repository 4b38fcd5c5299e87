package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Length;

/**
 * A straight length of fence between its ends, as wind meets it. Station 0 is its start.
 *
 * @param length B
 * @param surface s, height of the infill
 * @param top h, top above ground; never below s
 * @param returnAtStart length of the fence that goes on round the corner there, zero for a free end
 * @param returnAtEnd likewise at the other end
 */
public record WallStretch(
        Length length, Length surface, Length top, Screen screen, Length returnAtStart, Length returnAtEnd) {
    public WallStretch {
        if (length.isZero() || surface.isZero())
            throw new IllegalArgumentException("A fence needs a length and a height");
        if (top.compareTo(surface) < 0)
            throw new IllegalArgumentException("The top of a fence is not below its height");
    }

    /** s/h, at most 1. */
    public double heightRatio() {
        return surface.inches() / top.inches();
    }

    /** B/s. */
    public double aspect() {
        return length.inches() / surface.inches();
    }

    /**
     * Height of the resultant above ground: 0.05 h above mid-height for a wall down to the ground (0.55 h), else the middle of the surface; the middle
     * also for an open screen. Source: ASCE 7-16 Figure 29.3-1 note 3. Check: WallWindCheck.
     */
    public Length resultantHeight() {
        double middleIn = top.inches() - surface.inches() / 2;
        boolean toGround = heightRatio() >= 1;
        return Length.inches(toGround && screen.isWall() ? 0.55 * top.inches() : middleIn);
    }

    WallStretch turnedRound() {
        return new WallStretch(length, surface, top, screen, returnAtEnd, returnAtStart);
    }
}
