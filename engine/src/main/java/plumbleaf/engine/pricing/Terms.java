package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import plumbleaf.engine.job.Allowance;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.TaxRule;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.DecimalText;

/**
 * The terms of a job in exact decimals.
 *
 * @param contingency share of direct cost
 * @param margin profit as a share of the price before tax: margin, never markup
 * @param reserve share of the price before tax kept for calls under warranty; with the margin below 1
 * @param taxes each on its part of the price
 * @param wage of one person with burden where a certified rate holds
 * @param allowances what is in the price up to a number
 * @param stages payments in order; shares of the total, the last takes what is left
 */
public record Terms(
        BigDecimal contingency,
        Overhead overhead,
        BigDecimal margin,
        BigDecimal reserve,
        List<Tax> taxes,
        Stated<UnitPrice> wage,
        List<Allowance> allowances,
        List<Stage> stages) {
    public Terms {
        taxes = List.copyOf(taxes);
        allowances = List.copyOf(allowances);
        stages = List.copyOf(stages);
        if (contingency.signum() < 0) throw new IllegalArgumentException("Contingency must be zero or more");
        if (margin.signum() < 0 || reserve.signum() < 0 || margin.add(reserve).compareTo(BigDecimal.ONE) >= 0)
            throw new IllegalArgumentException("Margin and reserve must be from 0 to below 1 together, were "
                    + margin.toPlainString() + " and " + reserve.toPlainString());
    }

    /** Overhead, margin, one tax on marked lines, stages; nothing kept, nothing allowed for. */
    public static Terms plain(
            BigDecimal contingency, Overhead overhead, BigDecimal margin, BigDecimal tax, List<Stage> stages) {
        return new Terms(
                contingency,
                overhead,
                margin,
                BigDecimal.ZERO,
                List.of(new Tax("Tax", tax, List.of())),
                Stated.open(),
                List.of(),
                stages);
    }

    /** @param days on site, for overhead by the day */
    public static Terms of(MoneyTerms job, double days) {
        return new Terms(
                exact(job.contingency()),
                job.overheadPerDay().isZero()
                        ? new Overhead.OfCost(exact(job.overhead()))
                        : new Overhead.PerDay(job.overheadPerDay(), exact(days)),
                exact(job.margin()),
                exact(job.reserve()),
                job.taxes().stream().map(Terms::tax).toList(),
                job.wage(),
                job.offer().allowances(),
                job.stages());
    }

    private static Tax tax(TaxRule rule) {
        return new Tax(
                rule.name(),
                exact(rule.rate()),
                rule.on().stream().flatMap(key -> Category.of(key).stream()).toList());
    }

    static BigDecimal exact(double share) {
        return new BigDecimal(DecimalText.shortest(share));
    }

    /** The markup on cost and overhead that this margin amounts to: {@code m / (1 - m)}; 20 % margin is 25 % markup. */
    public BigDecimal markup() {
        return margin.divide(BigDecimal.ONE.subtract(margin), MathContext.DECIMAL64);
    }

    /** What a dollar of direct cost is sold at: contingency, overhead by cost, margin and reserve; overhead by the day is not in it. */
    public BigDecimal factor() {
        BigDecimal cost = BigDecimal.ONE.add(contingency);
        BigDecimal withOverhead = overhead.match(of -> cost.multiply(BigDecimal.ONE.add(of.share())), by -> cost);
        return withOverhead.divide(BigDecimal.ONE.subtract(margin).subtract(reserve), MathContext.DECIMAL64);
    }
}
