package plumbleaf.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

class StatementTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 3);
    private static final Price TEN_THOUSAND = Pricing.of(
            List.of(new PriceLine(
                    Category.LABOUR,
                    "x",
                    "x",
                    1,
                    "each",
                    UnitPrice.of("10000"),
                    Money.dollars(10_000),
                    false,
                    List.of("P1"))),
            new HouseRules(Money.ZERO, Money.cents(1)),
            Terms.plain(
                    BigDecimal.ZERO,
                    new Overhead.OfCost(BigDecimal.ZERO),
                    BigDecimal.ZERO,
                    BigDecimal.ZERO,
                    List.of()));

    @Test
    void retainageIsKeptFromEachBillUntilAllIsBilled() {
        Statement half = Statement.of(
                TEN_THOUSAND,
                List.of(change("500.00", true), change("999.00", false)),
                new Billing(
                        0.10,
                        List.of(new Billing.Bill(DAY, "on signing", Money.dollars(5000))),
                        List.of(new Billing.Paid(DAY, "check", Money.dollars(4500))),
                        List.of(),
                        List.of(),
                        List.of()));
        assertThat(half.contract()).isEqualTo(Money.dollars(10_500));
        assertThat(half.retained()).isEqualTo(Money.dollars(500));
        assertThat(half.due()).isEqualTo(Money.ZERO);
        assertThat(half.unbilled()).isEqualTo(Money.dollars(5500));
        assertThat(half.balance()).isEqualTo(Money.dollars(6000));

        Statement done = Statement.of(
                TEN_THOUSAND,
                List.of(),
                new Billing(
                        0.10,
                        List.of(
                                new Billing.Bill(DAY, "on signing", Money.dollars(5000)),
                                new Billing.Bill(DAY, "when done", Money.dollars(5000))),
                        List.of(new Billing.Paid(DAY, "check", Money.dollars(4500))),
                        List.of(),
                        List.of(),
                        List.of()));
        assertThat(done.retained()).isEqualTo(Money.ZERO);
        assertThat(done.due()).isEqualTo(Money.dollars(5500));
        assertThat(done.due()).isEqualTo(done.balance());
    }

    private static Change change(String dollars, boolean accepted) {
        return new Change("C1", DAY, "wider", Money.rounded(new BigDecimal(dollars)), 0, accepted);
    }
}
