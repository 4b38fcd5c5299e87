package plumbleaf.engine.finding;

import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.money.Money;

/**
 * A change that was computed to help.
 *
 * @param id          what to change, for a screen that can apply it: {@code hinge-side}, {@code raise-leaf}
 * @param words       what to do: {@code hang it on the left}
 * @param ratio       the finding's new ratio with this change
 * @param priceChange what it does to the price, once that is known
 * @param edit        the change to the job, where one press can make it: path and new value, {@code gates[G1].hinge=left}; several are joined by
 *                    {@link #AND_THEN}, and nothing after the sign takes the value out
 */
public record Remedy(
        String id, String words, OptionalDouble ratio, Optional<Money> priceChange, Optional<String> edit) {
    /** Prices are rounded to the cent line by line: what differs by less than this is said to cost the same. */
    private static final Money SAME = Money.dollars(1);

    /** Between the edits of a remedy that changes more than one thing. */
    public static final String AND_THEN = "; ";

    /** One press, of which nothing is worked out beforehand: the answer to a question, or a cure that does away with what is weighed. */
    public static Remedy ofEdit(String id, String words, String edit) {
        return new Remedy(id, words, OptionalDouble.empty(), Optional.empty(), Optional.of(edit));
    }

    /** {@code $41.63 more}, or {@code same price}; empty while that is not known. */
    public String priceWords() {
        return priceChange().map(Remedy::words).orElse("");
    }

    private static String words(Money change) {
        boolean less = change.compareTo(Money.ZERO) < 0;
        Money size = less ? Money.ZERO.minus(change) : change;
        if (size.compareTo(SAME) < 0) return "same price";
        return size.text() + (less ? " less" : " more");
    }
}
