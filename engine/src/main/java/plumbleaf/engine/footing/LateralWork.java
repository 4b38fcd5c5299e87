package plumbleaf.engine.footing;

import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;

/**
 * The case that asks for the deepest hole, and what its depth was worked out from, so that a reader can follow it with a pocket calculator.
 *
 * @param worst the case; not always the one that bends the post most, since a push low down asks for more depth than its moment alone
 * @param soil lateral bearing and loose top that the depth counts on
 * @param doubled whether the lateral bearing was doubled (IBC 2021 1806.3.4)
 * @param width of the hole
 * @param slab whether a slab holds it at grade
 */
public record LateralWork(CombinedAction worst, LateralSoil soil, boolean doubled, Length width, boolean slab) {
    /** About the top of the soil that counts: under a loose top the push has that much more arm. */
    public Moment moment() {
        return Moment.poundInches(worst.action().size().poundInches()
                + worst.action().push().pounds() * soil.looseTop().inches());
    }

    /** Depth in the soil that counts, below a loose top, by the formulas of {@link PoleDepth}. */
    public Length below() {
        if (moment().isZero()) return Length.ZERO;
        return slab
                ? PoleDepth.constrained(moment(), soil.perFoot(), width)
                : PoleDepth.nonconstrained(worst.action().push(), moment(), soil.perFoot(), width);
    }

    /** From the ground; nothing where nothing pushes. */
    public Length depth() {
        return moment().isZero() ? Length.ZERO : below().plus(soil.looseTop());
    }
}
