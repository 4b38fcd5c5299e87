package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;

/**
 * @param priceBook id of the price book
 * @param overhead share of cost added for running the firm: 0.12 for 12 %
 * @param margin profit as a share of the price, never of the cost
 * @param contingency share of direct cost kept for the unknown
 * @param tax rate on what the price book marks as taxed
 */
public record MoneyTerms(
        String priceBook,
        double overhead,
        double margin,
        double contingency,
        double tax,
        Stated<LocalDate> validUntil,
        List<Stage> stages) {
    public MoneyTerms {
        stages = List.copyOf(stages);
    }
}
