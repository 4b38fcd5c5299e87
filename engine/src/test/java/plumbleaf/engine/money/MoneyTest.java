package plumbleaf.engine.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.quantity.Parsed;

class MoneyTest {
    private static String refused(Parsed<?> parsed) {
        return parsed.match(read -> "read", no -> no.problem() + "; " + no.cure());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "$1,240.00|124000",
                "$1240|124000",
                "$0.05|5",
                "-$12.30|-1230",
                "$ 7.5|750",
                "$1,234,567.89|123456789"
            })
    void readsAmountsExactly(String text, long cents) {
        assertThat(MoneyText.money(text).value()).contains(Money.cents(cents));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1240|this is not an amount of money; write $1,240.00",
                "$1,24|this is not an amount of money; write $1,240.00",
                "$1.005|an amount stops at the cent; write $1,240.00",
                "$|this is not an amount of money; write $1,240.00",
                "$1e5|this is not an amount of money; write $1,240.00",
            })
    void refusesWithACure(String text, String words) {
        assertThat(refused(MoneyText.money(text))).isEqualTo(words);
    }

    @Test
    void unitPricesKeepEveryPlace() {
        assertThat(MoneyText.unitPrice("$0.0855").value()).contains(UnitPrice.of("0.0855"));
        assertThat(UnitPrice.of("12.4").plain()).isEqualTo("12.40");
        assertThat(UnitPrice.of("0.085").times(new BigDecimal("1000"))).isEqualTo(Money.dollars(85));
        assertThat(refused(MoneyText.unitPrice("-$1.00"))).isEqualTo("a price is never negative; write $1,240.00");
    }

    @Test
    void linesRoundHalvesAwayFromZeroAndSumsNeverRound() {
        assertThat(Money.rounded(new BigDecimal("0.125"))).isEqualTo(Money.cents(13));
        assertThat(Money.rounded(new BigDecimal("-0.125"))).isEqualTo(Money.cents(-13));
        assertThat(Money.cents(1000).times(new BigDecimal("0.0625"))).isEqualTo(Money.cents(63));
        Money sum = Money.ZERO;
        for (int i = 0; i < 10; i++) sum = sum.plus(Money.cents(10));
        assertThat(sum).isEqualTo(Money.dollars(1));
    }

    @Test
    void sumsThatNoLongerFitAreAFaultNotAWrongNumber() {
        assertThatThrownBy(() -> Money.cents(Long.MAX_VALUE).plus(Money.cents(1)))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void whatIsPrintedReadsBackTheSame() {
        assertThat(Money.cents(-124050).text()).isEqualTo("-$1,240.50");
        assertThat(Money.cents(5).plain()).isEqualTo("0.05");
        Random random = new Random(3);
        for (int i = 0; i < 10_000; i++) {
            Money money = Money.cents(random.nextInt() / 7L);
            assertThat(MoneyText.money(money.text()).value()).as(money.text()).contains(money);
        }
    }

    @Test
    void anAmountThatNoJobCostsIsRefusedInWords() {
        assertThat(refused(MoneyText.money("$900,000,000,000,000,000,000")))
                .isEqualTo("this is more than any job costs; write at most $100,000,000");
        assertThat(MoneyText.money("$100,000,000").value()).contains(Money.dollars(100_000_000));
    }
}
