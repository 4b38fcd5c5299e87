package plumbleaf.reference.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.labour.Learning;

/**
 * How sure the interval between the k-th smallest and the k-th largest of n records holds the true median.
 *
 * <p>Source: Table A.7, Confidence Intervals for the Population Median, appendix of an introductory statistics textbook, p. 656 (the page was read, its title was not
 * shown); it prints the level in per cent to one place.
 *
 * <p>Tolerance: 0.05 %, half of the last printed digit, and a hair for levels that fall on it.
 */
class LearningCheck {
    @ParameterizedTest
    @CsvSource({
        "3, 1, 75.0",
        "4, 1, 87.5",
        "5, 1, 93.8",
        "6, 2, 78.1",
        "7, 2, 87.5",
        "8, 2, 93.0",
        "9, 2, 96.1",
        "10, 2, 97.9",
        "10, 3, 89.1",
        "13, 4, 90.8",
        "15, 4, 96.5",
        "15, 5, 88.2",
        "20, 6, 95.9",
    })
    void coverage(int n, int k, double printedPct) {
        assertThat(Learning.coverage(n, k) * 100).isCloseTo(printedPct, within(0.0501));
    }
}
