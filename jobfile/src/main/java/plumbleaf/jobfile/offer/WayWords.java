package plumbleaf.jobfile.offer;

import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.money.Money;

/** Why one way of building a run costs more or less than another. */
public final class WayWords {
    private static final int REASONS = 2;

    private WayWords() {}

    /** The lines of direct cost that move most, before overhead, profit and tax; nothing where none does. */
    public static String reason(Difference change) {
        List<String> most = change.lines().stream()
                .filter(line -> !line.amount().isZero())
                .sorted(Comparator.comparingLong(
                        (Difference.LineChange line) -> -Math.abs(line.amount().cents())))
                .limit(REASONS)
                .map(line -> line.name() + " " + signed(line.amount()))
                .toList();
        return most.isEmpty() ? "" : ", most of it " + String.join(", ", most);
    }

    public static String signed(Money amount) {
        if (amount.isZero()) return "same";
        return amount.compareTo(Money.ZERO) > 0
                ? "+" + amount.text()
                : "\u2212" + Money.ZERO.minus(amount).text();
    }
}
