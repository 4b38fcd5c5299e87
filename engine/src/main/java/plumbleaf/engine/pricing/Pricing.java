package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import plumbleaf.engine.job.Allowance;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * Builds the price up: {@code cost = direct + contingency}, {@code price = (cost + overhead) / (1 - margin - reserve)}. Every line and every step is rounded to the cent
 * once, halves away from zero; totals only add. A tax falls on the share of the price that its lines are of direct cost.
 * Check: PricingTest.
 */
public final class Pricing {
    private Pricing() {}

    public static Price of(Takeoff takeoff, Labour labour, Counts counts, PriceBook book, Terms terms) {
        List<PriceLine> lines = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) {
            if (line.units() > 0) lines.add(material(line));
        }
        UnitPrice hourly = terms.wage().or(book.crew().hourly());
        for (TaskHours task : labour.tasks()) lines.add(hours(task, hourly));
        for (Charge charge : book.charges()) {
            double times = charge.per() == ChargePer.ALLOWANCE ? allowed(charge, terms) : counts.of(charge.per());
            if (times > 0) lines.add(charge(charge, times));
        }
        return of(lines, book, terms);
    }

    /** The build-up over given lines. */
    public static Price of(List<PriceLine> lines, HouseRules rules, Terms terms) {
        return of(lines, rules, List.of(), terms);
    }

    private static Price of(List<PriceLine> lines, PriceBook book, Terms terms) {
        return of(lines, book.rules(), book.charges(), terms);
    }

    private static Price of(List<PriceLine> lines, HouseRules rules, List<Charge> charges, Terms terms) {
        Money direct = sum(lines, line -> true);
        Money contingency = direct.times(terms.contingency());
        Money cost = direct.plus(contingency);
        Money overhead = terms.overhead()
                .match(of -> cost.times(of.share()), by -> by.each().times(by.days()));
        Money full = cost.plus(overhead);
        BigDecimal left = BigDecimal.ONE.subtract(terms.margin()).subtract(terms.reserve());
        Money asked = Money.rounded(full.inDollars().divide(left, MathContext.DECIMAL128));
        Money reserve = asked.times(terms.reserve());
        Money profit = asked.minus(full).minus(reserve);
        Money floor = rules.minimum().compareTo(asked) > 0 ? rules.minimum() : asked;
        Money price = roundedUp(floor, rules.roundTo());
        List<TaxAmount> taxes = new ArrayList<>();
        for (Tax each : terms.taxes())
            taxes.add(new TaxAmount(each.name(), tax(price, direct, sum(lines, each::fallsOn), each.rate())));
        Money tax = Money.ZERO;
        for (TaxAmount each : taxes) tax = tax.plus(each.amount());
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
                reserve,
                toMinimum,
                rounding,
                price,
                tax,
                taxes,
                total,
                payments(total, terms.stages()),
                waterfall(lines, contingency, overhead, profit, reserve, toMinimum, rounding, taxes),
                unitOffers(charges, terms));
    }

    private static double allowed(Charge charge, Terms terms) {
        return terms.allowances().stream()
                .filter(allowance -> allowance.charge().equals(charge.id()))
                .mapToDouble(Allowance::count)
                .sum();
    }

    /** Sold like everything else in the job, with the taxes that fall on it. */
    private static List<UnitOffer> unitOffers(List<Charge> charges, Terms terms) {
        List<UnitOffer> offers = new ArrayList<>();
        for (Charge charge : charges) {
            if (charge.per() != ChargePer.ALLOWANCE) continue;
            PriceLine one = charge(charge, 1);
            BigDecimal taxed = BigDecimal.ONE;
            for (Tax tax : terms.taxes()) if (tax.fallsOn(one)) taxed = taxed.add(tax.rate());
            Money each = Money.rounded(
                    charge.price().dollars().multiply(terms.factor()).multiply(taxed));
            offers.add(new UnitOffer(charge.id(), charge.name(), allowed(charge, terms), each));
        }
        return offers;
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

    private static PriceLine hours(TaskHours task, UnitPrice hourly) {
        Category category = task.phase() == Phase.TRAVEL ? Category.TRAVEL : Category.LABOUR;
        BigDecimal hours = Terms.exact(task.hours());
        return new PriceLine(
                category,
                task.rate().task(),
                task.rate().name(),
                task.hours(),
                "hour",
                hourly,
                hourly.times(hours),
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

    private static Money sum(List<PriceLine> lines, Predicate<PriceLine> which) {
        Money sum = Money.ZERO;
        for (PriceLine line : lines) {
            if (which.test(line)) sum = sum.plus(line.amount());
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
            Money reserve,
            Money toMinimum,
            Money rounding,
            List<TaxAmount> taxes) {
        List<Step> steps = new ArrayList<>();
        for (Category category : Category.values()) {
            add(steps, category.key(), category.words(), sum(lines, line -> line.category() == category));
        }
        add(steps, "contingency", "Contingency", contingency);
        add(steps, "overhead", "Overhead", overhead);
        add(steps, "profit", "Profit", profit);
        add(steps, "reserve", "Warranty reserve", reserve);
        add(steps, "to-minimum", "Up to the minimum charge", toMinimum);
        add(steps, "rounding", "Rounding", rounding);
        for (TaxAmount tax : taxes) add(steps, "tax", tax.name(), tax.amount());
        return steps;
    }

    private static void add(List<Step> steps, String key, String words, Money amount) {
        if (!amount.isZero()) steps.add(new Step(key, words, amount));
    }
}
