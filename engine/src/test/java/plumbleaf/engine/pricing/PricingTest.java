package plumbleaf.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

class PricingTest {
    private static final List<Category> CATEGORIES = List.of(Category.values());
    private static final HouseRules PLAIN = new HouseRules(Money.ZERO, Money.cents(1));

    @Test
    void priceIsCostAndOverheadOverOneLessMargin() {
        // 1000 direct, 5 % contingency: 1050 cost, 12 % overhead 126, 1176 / 0.8 = 1470.
        Price price = Pricing.of(
                List.of(line(Category.MATERIAL, "400.00", true), line(Category.LABOUR, "600.00", false)),
                PLAIN,
                terms("0.05", "0.12", "0.20", "0.10"));
        assertThat(price.cost()).isEqualTo(Money.dollars(1050));
        assertThat(price.overhead()).isEqualTo(Money.dollars(126));
        assertThat(price.profit()).isEqualTo(Money.dollars(294));
        assertThat(price.price()).isEqualTo(Money.dollars(1470));
        // 40 % of direct cost is taxed, so 588 of the price at 10 %.
        assertThat(price.tax()).isEqualTo(Money.cents(5880));
        assertThat(price.total()).isEqualTo(Money.cents(152880));
    }

    @Test
    void marginIsNeverMarkup() {
        assertThat(terms("0", "0", "0.20", "0").markup()).isEqualByComparingTo("0.25");
        assertThat(terms("0", "0", "0.5", "0").markup()).isEqualByComparingTo("1");
        assertThatThrownBy(() -> terms("0", "0", "1", "0"))
                .hasMessage("Margin and reserve must be from 0 to below 1 together, were 1 and 0");
    }

    @Test
    void overheadByTheDayDoesNotAskForMargin() {
        Terms byDay = Terms.plain(
                BigDecimal.ZERO,
                new Overhead.PerDay(Money.dollars(180), new BigDecimal("2.5")),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of());
        Price price = Pricing.of(List.of(line(Category.LABOUR, "1000.00", false)), PLAIN, byDay);
        assertThat(price.overhead()).isEqualTo(Money.dollars(450));
        assertThat(price.price()).isEqualTo(Money.dollars(1450));
    }

    @Test
    void aSmallJobIsLiftedToTheMinimumAndRoundedUpInTheOpen() {
        Price price = Pricing.of(
                List.of(line(Category.LABOUR, "100.10", false)),
                new HouseRules(Money.cents(85001), Money.dollars(5)),
                terms("0", "0", "0", "0"));
        assertThat(price.toMinimum()).isEqualTo(Money.cents(74991));
        assertThat(price.rounding()).isEqualTo(Money.cents(499));
        assertThat(price.price()).isEqualTo(Money.dollars(855));
    }

    @Test
    void aTaxFallsOnItsOwnKindsOfCost() {
        Terms terms = new Terms(
                BigDecimal.ZERO,
                new Overhead.OfCost(BigDecimal.ZERO),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of(
                        new Tax("state", new BigDecimal("0.05"), List.of()),
                        new Tax("work in town", new BigDecimal("0.02"), List.of(Category.LABOUR))),
                Stated.open(),
                List.of(),
                List.of());
        Price price = Pricing.of(
                List.of(line(Category.MATERIAL, "400.00", true), line(Category.LABOUR, "600.00", false)), PLAIN, terms);
        assertThat(price.taxes())
                .containsExactly(
                        new TaxAmount("state", Money.dollars(20)), new TaxAmount("work in town", Money.dollars(12)));
        assertThat(price.tax()).isEqualTo(Money.dollars(32));
    }

    @Test
    void theReserveIsAShareOfThePriceLikeTheMargin() {
        Terms terms = new Terms(
                BigDecimal.ZERO,
                new Overhead.OfCost(BigDecimal.ZERO),
                new BigDecimal("0.20"),
                new BigDecimal("0.05"),
                List.of(),
                Stated.open(),
                List.of(),
                List.of());
        Price price = Pricing.of(List.of(line(Category.LABOUR, "750.00", false)), PLAIN, terms);
        assertThat(price.price()).isEqualTo(Money.dollars(1000));
        assertThat(price.profit()).isEqualTo(Money.dollars(200));
        assertThat(price.reserve()).isEqualTo(Money.dollars(50));
    }

    @Test
    void theLastPaymentTakesWhatIsLeft() {
        List<Payment> payments = Pricing.payments(
                Money.cents(100_01), List.of(new Stage("a", 0.333), new Stage("b", 0.333), new Stage("c", 0.334)));
        assertThat(payments)
                .extracting(Payment::amount)
                .containsExactly(Money.cents(3330), Money.cents(3330), Money.cents(3341));
    }

    @Test
    void everyTotalReconcilesToTheCent() {
        Random random = new Random(23);
        for (int round = 0; round < 2000; round++) {
            List<PriceLine> lines = new ArrayList<>();
            for (int i = random.nextInt(30); i >= 0; i--) {
                Category category = CATEGORIES.get(random.nextInt(CATEGORIES.size()));
                lines.add(line(category, random.nextInt(4000) + "." + (10 + random.nextInt(90)), random.nextBoolean()));
            }
            List<Stage> stages =
                    List.of(new Stage("x", 0.4), new Stage("y", random.nextInt(60) / 100.0), new Stage("z", 0.1));
            Terms terms = new Terms(
                    share(random, 10),
                    new Overhead.OfCost(share(random, 40)),
                    share(random, 60),
                    share(random, 20),
                    List.of(
                            new Tax("state", share(random, 12), List.of()),
                            new Tax("county", share(random, 5), List.of(Category.MATERIAL, Category.EQUIPMENT))),
                    Stated.open(),
                    List.of(),
                    stages);
            HouseRules rules =
                    new HouseRules(Money.cents(random.nextInt(500_000)), Money.cents(1 + random.nextInt(1000)));
            Price price = Pricing.of(lines, rules, terms);
            Money sum = Money.ZERO;
            for (PriceLine line : price.lines()) sum = sum.plus(line.amount());
            assertThat(price.direct()).isEqualTo(sum);
            assertThat(price.cost()).isEqualTo(price.direct().plus(price.contingency()));
            assertThat(price.price())
                    .isEqualTo(price.cost()
                            .plus(price.overhead())
                            .plus(price.profit())
                            .plus(price.reserve())
                            .plus(price.toMinimum())
                            .plus(price.rounding()));
            assertThat(price.total()).isEqualTo(price.price().plus(price.tax()));
            Money steps = Money.ZERO;
            for (Step step : price.waterfall()) steps = steps.plus(step.amount());
            assertThat(steps).isEqualTo(price.total());
            Money paid = Money.ZERO;
            for (Payment payment : price.stages()) paid = paid.plus(payment.amount());
            assertThat(paid).isEqualTo(price.total());
            assertThat(price.price().cents() % rules.roundTo().cents()).isZero();
            assertThat(price.price()).isGreaterThanOrEqualTo(rules.minimum());
        }
    }

    private static BigDecimal share(Random random, int mostPct) {
        return BigDecimal.valueOf(random.nextInt(mostPct * 10), 3);
    }

    private static PriceLine line(Category category, String dollars, boolean taxed) {
        UnitPrice price = UnitPrice.of(dollars);
        return new PriceLine(category, "x", "x", 1, "each", price, price.times(BigDecimal.ONE), taxed, List.of("P1"));
    }

    private static Terms terms(String contingency, String overhead, String margin, String tax) {
        return Terms.plain(
                new BigDecimal(contingency),
                new Overhead.OfCost(new BigDecimal(overhead)),
                new BigDecimal(margin),
                new BigDecimal(tax),
                List.of());
    }
}
