package plumbleaf.jobfile.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every price of a book can be raised; the book reads as before and its history says what was. */
class PriceRiseTest {
    private static final LocalDate DAY = LocalDate.of(2027, 4, 1);

    @ParameterizedTest
    @EnumSource(PriceRise.Of.class)
    void aRiseOfFivePerCentIsInTheBookAndInItsHistory(PriceRise.Of of) {
        List<PriceBooks.Source> tables = PriceBooks.tables("example-2027");
        PriceBooks.Source old = tables.stream()
                .filter(table -> table.file().equals(of.table()))
                .findFirst()
                .orElseThrow();
        PriceRise.Raised raised = new PriceRise(of, new BigDecimal("0.05"), DAY, "their letter", "", "").on(old.text());
        assertThat(raised.changed()).isPositive();
        List<PriceBooks.Source> now = tables.stream()
                .map(table -> table.equals(old) ? new PriceBooks.Source(old.file(), raised.table()) : table)
                .toList();
        PriceBooks.Answer answer = PriceBooks.read("mine", now.get(0), now.get(1), now.get(2), now.get(3));
        assertThat(answer.errors()).isEmpty();
        String[] lines = raised.history().split("\n", -1);
        assertThat(lines).hasSize(raised.changed() + 1);
        for (int i = 0; i < raised.changed(); i++) {
            List<String> cells = List.of(lines[i].split(",", -1));
            BigDecimal was = new BigDecimal(cells.get(cells.size() - 3));
            BigDecimal is = new BigDecimal(cells.get(cells.size() - 2));
            assertThat(is.subtract(was.multiply(new BigDecimal("1.05"))).abs())
                    .isLessThanOrEqualTo(new BigDecimal("0.005"));
        }
    }
}
