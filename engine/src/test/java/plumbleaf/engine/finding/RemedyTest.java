package plumbleaf.engine.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.money.Money;

/** What a remedy is said to cost. */
class RemedyTest {
    private static String words(long cents) {
        return new Remedy("x", "x", OptionalDouble.empty(), Optional.of(Money.cents(cents)), Optional.empty())
                .priceWords();
    }

    @Test
    void centsOfRoundingAreTheSamePrice() {
        assertThat(words(-2)).isEqualTo("same price");
        assertThat(words(99)).isEqualTo("same price");
        assertThat(words(4163)).isEqualTo("$41.63 more");
        assertThat(words(-100)).isEqualTo("$1.00 less");
        assertThat(Remedy.ofEdit("x", "x", "").priceWords()).isEmpty();
    }
}
