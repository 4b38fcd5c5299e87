package plumbleaf.engine.gate;

import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Where the closed leaves of a pair meet: the middle of their gap.
 *
 * @param at in plan
 * @param ground elevation there
 * @param frameA how far the frame of leaf a ends above the ground there
 * @param frameB the same of leaf b
 * @param infillBelow how far the infill hangs below the frames
 * @param topMiss how far their tops miss each other
 */
public record MeetingPlace(
        PlanPoint at, Offset ground, Offset frameA, Offset frameB, Length infillBelow, Offset topMiss) {
    /** What passes over the ground there: the lower of both leaves, infill and all. */
    public Offset clear() {
        return Offset.inches(Math.min(frameA.inches(), frameB.inches()) - infillBelow.inches());
    }

    /** From the ground to the lowest guide of a rod, at the bottom of the higher frame. */
    public Length toGuide() {
        return Length.inches(Math.max(0, Math.max(frameA.inches(), frameB.inches())));
    }
}
