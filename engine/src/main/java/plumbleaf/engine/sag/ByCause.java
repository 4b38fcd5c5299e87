package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Offset;

/**
 * The drop of the free latch corner by what causes it, + down. All but the slack are shares by virtual work and add up to the elastic drop;
 * the slack is a rigid turn beside it.
 */
public record ByCause(Offset leaf, Offset hingeFlex, Offset hingeSlack, Offset post, Offset footing) {
    public Offset total() {
        return elastic().plus(hingeSlack);
    }

    /** Without the slack. */
    public Offset elastic() {
        return leaf.plus(hingeFlex).plus(post).plus(footing);
    }
}
