package plumbleaf.engine.strength;

import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.WoodPost;

/**
 * A lag screw through a plate into the side of a wood post.
 *
 * @param size its root and point
 * @param length under the head
 * @param plate it goes through
 */
public record LagScrew(BoltSize size, Length length, Length plate) {
    /** Thread {@code L/2 + 1/2}, 6 in. at most, its point in it. Source: NDS 2018 Appendix L, Table L2, from memory. */
    private static final double LONGEST_THREAD_IN = 6;

    /** Less than this in the wood, in diameters, counts for nothing sideways; 8 for all. Source: NDS 2018 12.1.4.6. */
    private static final double LEAST_DEEP = 4;

    /** What lies in the wood without the point. */
    public Length inWood() {
        return Length.inches(
                Math.max(0, length.inches() - plate.inches() - size.lagTip().inches()));
    }

    /** Thread that holds: no point, nothing that stands in the plate. */
    public Length thread() {
        double thread = Math.min(LONGEST_THREAD_IN, length.inches() / 2 + 0.5)
                - size.lagTip().inches();
        return Length.inches(Math.min(thread, inWood().inches()));
    }

    /** Whether it goes deep enough to count. */
    public boolean isDeepEnough() {
        return inWood().inches() >= LEAST_DEEP * size.diameter().inches() - 1e-9;
    }

    /** {@code W p CD CM}. Source: NDS 2018 Equation 12.2-1, Table 11.3.3. Check: WithdrawalCheck, LagScrewTest. */
    public Force pulled(WoodPost post, double duration) {
        Force perInch = Withdrawal.lagPerInch(post.species().ovenDryGravity(), size.diameter());
        return Withdrawal.allowed(perInch, thread(), duration, WoodFixing.WET);
    }

    /** The dowel that it is sideways. */
    public WoodFixing dowel(WoodPost post, Length apart, Length toEnd) {
        return new WoodFixing(post, size.diameter(), size.lagRoot(), inWood(), plate, apart, toEnd);
    }

    /**
     * How much of it a push and a pull at once use: their sum over {@code Wp Z / (Wp cos2 + Z sin2)}. Source: NDS 2018 Equation 12.4-1. Check: LagScrewTest.
     *
     * @param sideways what it may be pushed with
     * @param out what it may be pulled with
     */
    public static double use(Force push, Force pull, Force sideways, Force out) {
        double both = Math.sqrt(push.pounds() * push.pounds() + pull.pounds() * pull.pounds());
        if (both == 0) return 0;
        double angle = StrictMath.toDegrees(StrictMath.atan2(pull.pounds(), push.pounds()));
        return both / YieldModes.combined(out, sideways, angle).pounds();
    }
}
