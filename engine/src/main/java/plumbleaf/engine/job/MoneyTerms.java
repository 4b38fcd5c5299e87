package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

/**
 * @param priceBook id of the price book
 * @param overhead share of cost added for running the firm: 0.12 for 12 %; zero where it goes by the day
 * @param overheadPerDay for each crew-day on site instead, which is fairer to small jobs; zero where it goes by cost
 * @param margin profit as a share of the price, never of the cost
 * @param contingency share of direct cost kept for the unknown
 * @param reserve share of the price kept for calls under warranty
 * @param wage of one person with burden where a certified rate holds; else the price book's
 * @param kept prices as they were quoted; none while the price book holds
 */
public record MoneyTerms(
        String priceBook,
        double overhead,
        Money overheadPerDay,
        double margin,
        double contingency,
        double reserve,
        List<TaxRule> taxes,
        Stated<UnitPrice> wage,
        Stated<LocalDate> validUntil,
        List<Stage> stages,
        Offer offer,
        Billing billing,
        List<KeptPrice> kept) {
    public MoneyTerms {
        taxes = List.copyOf(taxes);
        stages = List.copyOf(stages);
        kept = List.copyOf(kept);
    }

    /** No terms at all: for what is worked out of a job without its money. */
    static MoneyTerms none() {
        return new MoneyTerms(
                "",
                0,
                Money.ZERO,
                0,
                0,
                0,
                List.of(),
                Stated.open(),
                Stated.open(),
                List.of(),
                Offer.none(),
                Billing.none(),
                List.of());
    }
}
