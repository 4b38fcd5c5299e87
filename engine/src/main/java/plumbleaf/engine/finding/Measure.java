package plumbleaf.engine.finding;

import java.util.OptionalDouble;
import plumbleaf.engine.quantity.DecimalText;

/**
 * A number against its limit.
 *
 * @param measured in {@code unit}
 * @param limit    in {@code unit}
 * @param ratio    above 1 fails: demand over capacity, or needed over provided; empty where provided is zero or less
 * @param unit     as in result keys: {@code in}, {@code lb}, {@code lb-in}, {@code psi}, {@code deg}, {@code mph}, or empty
 */
public record Measure(double measured, double limit, OptionalDouble ratio, String unit) {
    /** A demand that must not exceed a capacity. */
    public static Measure demand(double demand, double capacity, String unit) {
        return new Measure(
                demand, capacity, capacity > 0 ? OptionalDouble.of(demand / capacity) : OptionalDouble.empty(), unit);
    }

    /** Something provided that must reach what is needed. */
    public static Measure provided(double provided, double needed, String unit) {
        return new Measure(
                provided, needed, provided > 0 ? OptionalDouble.of(needed / provided) : OptionalDouble.empty(), unit);
    }

    /** The ratio with two decimals, or a dash. */
    public String ratioText() {
        return ratio.isPresent() ? DecimalText.fixed(ratio.getAsDouble(), 2) : "\u2013";
    }
}
