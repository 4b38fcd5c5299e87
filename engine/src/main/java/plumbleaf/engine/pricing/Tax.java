package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.util.List;

/**
 * A tax in exact decimals.
 *
 * @param on kinds of cost it falls on; empty for the lines that the price book marks as taxed
 */
public record Tax(String name, BigDecimal rate, List<Category> on) {
    public Tax {
        on = List.copyOf(on);
        if (rate.signum() < 0) throw new IllegalArgumentException("Tax must be zero or more");
    }

    boolean fallsOn(PriceLine line) {
        return on.isEmpty() ? line.taxed() : on.contains(line.category());
    }
}
