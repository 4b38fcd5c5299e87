package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.util.List;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.money.Money;

/**
 * What the customer owes. {@code contract = total + accepted changes}; {@code due = billed - retained - paid}; {@code balance = contract - paid}.
 *
 * @param changes that are signed
 * @param billed so far
 * @param retained of what was billed, kept by the customer until the end; each bill rounds
 * @param due now; below zero when more came in than was asked for
 * @param unbilled what no bill has asked for yet
 * @param balance what is still to come in until everything is paid, the retained part with it
 */
public record Statement(
        Money total,
        Money changes,
        Money contract,
        Money billed,
        Money retained,
        Money paid,
        Money due,
        Money unbilled,
        Money balance) {
    public static Statement of(Price price, List<Change> changes, Billing billing) {
        Money signed = Money.ZERO;
        for (Change change : changes) {
            if (change.accepted()) signed = signed.plus(change.price());
        }
        BigDecimal kept = Terms.exact(billing.retainage());
        Money billed = Money.ZERO;
        Money retained = Money.ZERO;
        for (Billing.Bill bill : billing.bills()) {
            billed = billed.plus(bill.amount());
            retained = retained.plus(bill.amount().times(kept));
        }
        Money paid = Money.ZERO;
        for (Billing.Paid each : billing.paid()) paid = paid.plus(each.amount());
        Money contract = price.total().plus(signed);
        // With everything billed the retained part falls due as well.
        Money held = billed.compareTo(contract) >= 0 ? Money.ZERO : retained;
        return new Statement(
                price.total(),
                signed,
                contract,
                billed,
                held,
                paid,
                billed.minus(held).minus(paid),
                contract.minus(billed),
                contract.minus(paid));
    }
}
