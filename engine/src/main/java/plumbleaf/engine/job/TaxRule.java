package plumbleaf.engine.job;

import java.util.List;

/**
 * A tax on a part of the price.
 *
 * @param name what it is called on the bill, with its place: {@code county sales tax}
 * @param rate of the part of the price it falls on
 * @param on kinds of cost it falls on, by their keys; empty for what the price book marks as taxed
 */
public record TaxRule(String name, double rate, List<String> on) {
    public TaxRule {
        on = List.copyOf(on);
    }
}
