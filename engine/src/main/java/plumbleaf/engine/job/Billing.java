package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.money.Money;

/**
 * What was billed and what came in.
 *
 * @param retainage share of every bill that the customer keeps until the end: 0.1 for 10 %
 * @param notices that the law of the place asks for
 */
public record Billing(double retainage, List<Bill> bills, List<Paid> paid, List<Notice> notices) {
    public Billing {
        bills = List.copyOf(bills);
        paid = List.copyOf(paid);
        notices = List.copyOf(notices);
    }

    public static Billing none() {
        return new Billing(0, List.of(), List.of(), List.of());
    }

    /** A bill that went out. */
    public record Bill(LocalDate date, String what, Money amount) {}

    /** Money that came in. */
    public record Paid(LocalDate date, String how, Money amount) {}
}
