package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.quantity.DecimalText;

/**
 * The terms of a job in exact decimals.
 *
 * @param contingency share of direct cost
 * @param margin profit as a share of the price before tax, below 1: margin, never markup
 * @param tax rate on the taxed part of the price
 * @param stages payments in order; shares of the total, the last takes what is left
 */
public record Terms(BigDecimal contingency, Overhead overhead, BigDecimal margin, BigDecimal tax, List<Stage> stages) {
    public Terms {
        stages = List.copyOf(stages);
        if (contingency.signum() < 0 || tax.signum() < 0)
            throw new IllegalArgumentException("Contingency and tax must be zero or more");
        if (margin.signum() < 0 || margin.compareTo(BigDecimal.ONE) >= 0)
            throw new IllegalArgumentException("Margin must be from 0 to below 1, was " + margin.toPlainString());
    }

    /** With overhead as the job's share of cost. */
    public static Terms of(MoneyTerms job) {
        return new Terms(
                exact(job.contingency()),
                new Overhead.OfCost(exact(job.overhead())),
                exact(job.margin()),
                exact(job.tax()),
                job.stages());
    }

    static BigDecimal exact(double share) {
        return new BigDecimal(DecimalText.shortest(share));
    }

    /** The markup on cost and overhead that this margin amounts to: {@code m / (1 - m)}; 20 % margin is 25 % markup. */
    public BigDecimal markup() {
        return margin.divide(BigDecimal.ONE.subtract(margin), MathContext.DECIMAL64);
    }
}
