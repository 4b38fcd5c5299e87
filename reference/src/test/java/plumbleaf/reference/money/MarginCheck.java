package plumbleaf.reference.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.HouseRules;
import plumbleaf.engine.pricing.Overhead;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.pricing.Pricing;
import plumbleaf.engine.pricing.Terms;

/**
 * Margin of the price against markup on the cost.
 *
 * <p>Source: B.R.R., Mark-Up and Gross Profit (a public page for shopkeepers): its chart of markups with the gross profit each gives, whole per cents, 28 for 40 cut
 * off and not rounded; and its worked example, cost $3.00 sold at $4.50.
 *
 * <p>Tolerance: 1 % of the price, the last printed digit; the example to the cent.
 */
class MarginCheck {
    private static final HouseRules PLAIN = new HouseRules(Money.ZERO, Money.cents(1));

    @ParameterizedTest
    @CsvSource({"25, 20", "33, 25", "40, 28", "50, 33", "75, 43", "100, 50", "150, 60", "200, 67", "300, 75"})
    void markupThatAMarginAmountsTo(double markupPct, double printedMarginPct) {
        double exactMargin = markupPct / (100 + markupPct);
        assertThat(exactMargin * 100).isCloseTo(printedMarginPct, within(1.0));
        Terms terms = terms(BigDecimal.valueOf(exactMargin));
        assertThat(terms.markup().doubleValue() * 100).isCloseTo(markupPct, within(1e-9));
    }

    @Test
    void threeDollarsSoldAtFourFifty() {
        Price price = Pricing.of(
                List.of(new PriceLine(
                        Category.MATERIAL,
                        "x",
                        "x",
                        1,
                        "each",
                        UnitPrice.of("3.00"),
                        Money.cents(300),
                        false,
                        List.of("P1"))),
                PLAIN,
                terms(new BigDecimal("0.3333333333")));
        assertThat(price.price()).isEqualTo(Money.cents(450));
        assertThat(price.profit()).isEqualTo(Money.cents(150));
    }

    private static Terms terms(BigDecimal margin) {
        return Terms.plain(BigDecimal.ZERO, new Overhead.OfCost(BigDecimal.ZERO), margin, BigDecimal.ZERO, List.of());
    }
}
