package plumbleaf.engine.money;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A price per unit of sale in dollars, exact, with as many places as the supplier prints. */
public record UnitPrice(BigDecimal dollars) implements Comparable<UnitPrice> {
    public UnitPrice {
        if (dollars.signum() < 0)
            throw new IllegalArgumentException("Unit price must be zero or more, was " + dollars.toPlainString());
        dollars = dollars.stripTrailingZeros();
    }

    public static UnitPrice of(String dollars) {
        return new UnitPrice(new BigDecimal(dollars));
    }

    /** The line amount for a quantity, rounded to the cent, halves away from zero. */
    public Money times(BigDecimal quantity) {
        return Money.rounded(dollars.multiply(quantity));
    }

    /** Whole cents or more places when needed: {@code 0.085}, {@code 12.40}. */
    public String plain() {
        return dollars.scale() < 2
                ? dollars.setScale(2, RoundingMode.UNNECESSARY).toPlainString()
                : dollars.toPlainString();
    }

    @Override
    public int compareTo(UnitPrice other) {
        return dollars.compareTo(other.dollars);
    }
}
