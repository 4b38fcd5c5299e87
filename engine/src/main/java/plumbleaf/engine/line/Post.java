package plumbleaf.engine.line;

import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.support.Support;

/**
 * A post where it stands.
 *
 * @param id numbered along the walk: {@code P7}
 * @param gate id of the gate it belongs to; empty for any other post
 * @param station of its centre
 * @param facing along the walk; at a corner, half way between the legs
 * @param width along the run
 * @param grade elevation of the finished ground at its centre
 * @param top elevation of its top
 */
public record Post(
        String id,
        String run,
        String gate,
        Offset station,
        PlanPoint at,
        Direction facing,
        PostRole role,
        Support support,
        Length width,
        Length hole,
        Offset grade,
        Offset top) {
    /** How much of it stands out of the ground. */
    public Length outOfGround() {
        return new Length(Math.max(0, top.inches() - grade.inches()));
    }
}
