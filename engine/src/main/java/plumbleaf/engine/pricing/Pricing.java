package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * Builds the price up: {@code cost = direct + contingency}, {@code price = (cost + overhead) / (1 - margin)}. Every line and every step is rounded to the cent
 * once, halves away from zero; totals only add. The taxed part of the price is its share of taxed lines in direct cost.
 * Check: PricingTest.
 */
public final class Pricing {
    private Pricing() {}

    public static Price of(Takeoff takeoff, Labour labour, Counts counts, PriceBook book, Terms terms) {
        List<PriceLine> lines = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) lines.add(material(line));
        for (TaskHours task : labour.tasks()) lines.add(hours(task, book.crew()));
        for (Charge charge : book.charges()) {
            double times = counts.of(charge.per());
            if (times > 0) lines.add(charge(charge, times));
        }
        return of(lines, book.rules(), terms);
    }

    /** The build-up over given lines. */
    public static Price of(List<PriceLine> lines, HouseRules rules, Terms terms) {
        Money direct = sum(lines, false);
        Money contingency = direct.times(terms.contingency());
        Money cost = direct.plus(contingency);
        Money overhead = terms.overhead()
                .match(of -> cost.times(of.share()), by -> by.each().times(by.days()));
        Money full = cost.plus(overhead);
        Money asked =
                Money.rounded(full.inDollars().divide(BigDecimal.ONE.subtract(terms.margin()), MathContext.DECIMAL128));
        Money profit = asked.minus(full);
        Money floor = rules.minimum().compareTo(asked) > 0 ? rules.minimum() : asked;
        Money price = roundedUp(floor, rules.roundTo());
        Money tax = tax(price, direct, sum(lines, true), terms.tax());
        Money total = price.plus(tax);
        Money toMinimum = floor.minus(asked);
        Money rounding = price.minus(floor);
        return new Price(
                lines,
                direct,
                contingency,
                cost,
                overhead,
                profit,
                toMinimum,
                rounding,
                price,
                tax,
                total,
                payments(total, terms.stages()),
                waterfall(lines, contingency, overhead, profit, toMinimum, rounding, tax));
    }

    private static PriceLine material(TakeoffLine line) {
        return new PriceLine(
                Category.MATERIAL,
                line.item(),
                line.sold().name(),
                (double) line.units(),
                line.sold().unit().key(),
                line.sold().price(),
                line.cost(),
                line.sold().taxed(),
                line.causes().stream().map(Cause::part).toList());
    }

    private static PriceLine hours(TaskHours task, Crew crew) {
        Category category = task.phase() == Phase.TRAVEL ? Category.TRAVEL : Category.LABOUR;
        BigDecimal hours = Terms.exact(task.hours());
        return new PriceLine(
                category,
                task.rate().task(),
                task.rate().name(),
                task.hours(),
                "hour",
                crew.hourly(),
                crew.hourly().times(hours),
                false,
                task.causes());
    }

    private static PriceLine charge(Charge charge, double times) {
        return new PriceLine(
                charge.category(),
                charge.id(),
                charge.name(),
                times,
                charge.per().key(),
                charge.price(),
                charge.price().times(Terms.exact(times)),
                charge.taxed(),
                List.of("job"));
    }

    private static Money sum(List<PriceLine> lines, boolean taxedOnly) {
        Money sum = Money.ZERO;
        for (PriceLine line : lines) {
            if (!taxedOnly || line.taxed()) sum = sum.plus(line.amount());
        }
        return sum;
    }

    private static Money roundedUp(Money amount, Money to) {
        long over = Math.floorMod(amount.cents(), to.cents());
        return over == 0 ? amount : amount.plus(to).minus(Money.cents(over));
    }

    private static Money tax(Money price, Money direct, Money taxed, BigDecimal rate) {
        if (direct.isZero()) return Money.ZERO;
        BigDecimal share = taxed.inDollars().divide(direct.inDollars(), MathContext.DECIMAL128);
        return Money.rounded(price.inDollars().multiply(share).multiply(rate));
    }

    /** Each stage rounds, the last takes what is left. */
    static List<Payment> payments(Money total, List<Stage> stages) {
        List<Payment> payments = new ArrayList<>();
        Money left = total;
        for (int i = 0; i < stages.size(); i++) {
            boolean last = i == stages.size() - 1;
            Money amount = last ? left : total.times(Terms.exact(stages.get(i).share()));
            payments.add(new Payment(stages.get(i).when(), amount));
            left = left.minus(amount);
        }
        return payments;
    }

    private static List<Step> waterfall(
            List<PriceLine> lines,
            Money contingency,
            Money overhead,
            Money profit,
            Money toMinimum,
            Money rounding,
            Money tax) {
        List<Step> steps = new ArrayList<>();
        for (Category category : Category.values()) {
            Money sum = Money.ZERO;
            for (PriceLine line : lines) {
                if (line.category() == category) sum = sum.plus(line.amount());
            }
            add(steps, category.key(), category.words(), sum);
        }
        add(steps, "contingency", "Contingency", contingency);
        add(steps, "overhead", "Overhead", overhead);
        add(steps, "profit", "Profit", profit);
        add(steps, "to-minimum", "Up to the minimum charge", toMinimum);
        add(steps, "rounding", "Rounding", rounding);
        add(steps, "tax", "Tax", tax);
        return steps;
    }

    private static void add(List<Step> steps, String key, String words, Money amount) {
        if (!amount.isZero()) steps.add(new Step(key, words, amount));
    }
}
