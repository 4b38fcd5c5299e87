package plumbleaf.engine.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

class LearningTest {
    private static final LabourRate DIG = new LabourRate("dig", "dig", Phase.SET, "clay", Length.ZERO, "ft", 0.20, "");

    @Test
    void fiveRecordsAreTheFewestThatAreSure() {
        assertThat(Learning.coverage(4, 1)).isEqualTo(0.875);
        assertThat(Learning.coverage(5, 1)).isEqualTo(0.9375);
        assertThat(Learning.sureOrder(4)).isEqualTo(1);
        assertThat(Learning.sureOrder(9)).isEqualTo(2);
    }

    @Test
    void aRateThatFiveDaysContradictIsSaidWithItsSpread() {
        LearnedRate learned =
                Learning.of(days(0.30, 0.25, 0.33, 0.28, 0.29), List.of(DIG)).get(0);
        assertThat(learned.records()).isEqualTo(5);
        assertThat(learned.median()).isCloseTo(0.29, within(1e-12));
        assertThat(learned.low()).isCloseTo(0.25, within(1e-12));
        assertThat(learned.high()).isCloseTo(0.33, within(1e-12));
        assertThat(learned.suggestsAnother()).isTrue();
    }

    @Test
    void fourDaysAreNotEnoughHoweverTheyAgree() {
        assertThat(Learning.of(days(0.30, 0.30, 0.30, 0.30), List.of(DIG))
                        .get(0)
                        .suggestsAnother())
                .isFalse();
    }

    @Test
    void aRateInsideTheSpreadStays() {
        assertThat(Learning.of(days(0.15, 0.19, 0.22, 0.21, 0.30), List.of(DIG))
                        .get(0)
                        .suggestsAnother())
                .isFalse();
    }

    @Test
    void anotherSoilAndWorkWithoutAQuantitySayNothing() {
        List<Actual> hours = List.of(
                new Actual(Stated.open(), "dig", "sand", 10, 9, ""),
                new Actual(Stated.open(), "dig", "clay", 0, 9, ""));
        assertThat(Learning.of(hours, List.of(DIG))).isEmpty();
    }

    @Test
    void onlyTheLatestFifteenCount() {
        double[] rates = new double[20];
        for (int i = 0; i < rates.length; i++) rates[i] = i < 5 ? 9 : 0.2;
        LearnedRate learned = Learning.of(days(rates), List.of(DIG)).get(0);
        assertThat(learned.records()).isEqualTo(15);
        assertThat(learned.high()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void whatWasDoneIsHeldAgainstItsShareOfTheEstimate() {
        Labour estimate = new Labour(List.of(new TaskHours(DIG, 40, 8, List.of("P1"))), List.of());
        List<TaskVariance> tasks = Variances.of(
                estimate,
                List.of(
                        new Actual(Stated.open(), "dig", "clay", 10, 3, ""),
                        new Actual(Stated.open(), "pump water", "", 0, 2, "")));
        assertThat(tasks.get(0).earnedHours()).isEqualTo(2);
        assertThat(tasks.get(0).overHours()).isEqualTo(1);
        assertThat(tasks.get(1).task()).isEqualTo("pump water");
        assertThat(tasks.get(1).overHours()).isEqualTo(2);
    }

    private static List<Actual> days(double... rates) {
        List<Actual> days = new ArrayList<>();
        for (int i = 0; i < rates.length; i++)
            days.add(new Actual(Stated.of(LocalDate.of(2027, 4, 1).plusDays(i)), "dig", "clay", 10, rates[i] * 10, ""));
        return days;
    }
}
