package plumbleaf.engine.pricing;

import java.util.List;
import plumbleaf.engine.money.Money;

/**
 * The price of a job. {@code cost = direct + contingency}; {@code price = cost + overhead + profit + reserve + toMinimum + rounding}; {@code total = price + tax}.
 *
 * @param profit what the margin asks: {@code (cost + overhead) / (1 - margin - reserve)} less cost, overhead and reserve, to the cent
 * @param reserve share of the price kept for calls under warranty
 * @param toMinimum what lifts it to the least price of the house
 * @param rounding what lifts it to the next round amount
 * @param tax all taxes together
 * @param waterfall every dollar of the total, in order; adds to it to the cent
 * @param unitOffers what one more of each allowance costs
 */
public record Price(
        List<PriceLine> lines,
        Money direct,
        Money contingency,
        Money cost,
        Money overhead,
        Money profit,
        Money reserve,
        Money toMinimum,
        Money rounding,
        Money price,
        Money tax,
        List<TaxAmount> taxes,
        Money total,
        List<Payment> stages,
        List<Step> waterfall,
        List<UnitOffer> unitOffers) {
    public Price {
        taxes = List.copyOf(taxes);
        unitOffers = List.copyOf(unitOffers);
        lines = List.copyOf(lines);
        stages = List.copyOf(stages);
        waterfall = List.copyOf(waterfall);
    }

    public Money direct(Category category) {
        Money sum = Money.ZERO;
        for (PriceLine line : lines) {
            if (line.category() == category) sum = sum.plus(line.amount());
        }
        return sum;
    }

    /** The lines a part of the job is a cause of. */
    public List<PriceLine> causedBy(String part) {
        return lines.stream().filter(line -> line.causes().contains(part)).toList();
    }
}
