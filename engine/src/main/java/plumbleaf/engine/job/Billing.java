package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.money.Money;

/**
 * What was billed and what came in.
 *
 * @param retainage share of every bill that the customer keeps until the end: 0.1 for 10 %
 * @param notices that the law of the place asks for
 * @param measured the work by what stands and what lies ready, where bills go by progress
 * @param submittals that somebody has to look at before the work goes on
 */
public record Billing(
        double retainage,
        List<Bill> bills,
        List<Paid> paid,
        List<Notice> notices,
        List<Measured> measured,
        List<Submittal> submittals) {
    public Billing {
        bills = List.copyOf(bills);
        paid = List.copyOf(paid);
        notices = List.copyOf(notices);
        measured = List.copyOf(measured);
        submittals = List.copyOf(submittals);
    }

    public static Billing none() {
        return new Billing(0, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** A bill that went out. */
    public record Bill(LocalDate date, String what, Money amount) {}

    /**
     * One line of the schedule of values, as it stands today.
     *
     * @param unit it is counted in
     * @param quantity in the contract
     * @param each what one is worth to the customer, with tax
     * @param installed built in, of the quantity
     * @param stored on site or in the yard for this job, paid for and not yet built in
     */
    public record Measured(String what, String unit, double quantity, Money each, double installed, double stored) {}

    /** A sample, a data sheet or a drawing for somebody to look at. */
    public record Submittal(String what, Stated<LocalDate> sent, Stated<LocalDate> back) {
        /** Where it stands. */
        public String words() {
            if (!sent.isSaid()) return "not sent yet";
            String out = "sent on " + sent.or(LocalDate.ofEpochDay(0));
            return out + (back.isSaid() ? ", back on " + back.or(LocalDate.ofEpochDay(0)) : ", not back yet");
        }
    }

    /** Money that came in. */
    public record Paid(LocalDate date, String how, Money amount) {}
}
