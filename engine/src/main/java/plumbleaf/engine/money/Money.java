package plumbleaf.engine.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import plumbleaf.engine.quantity.DecimalText;

/** An amount of money in whole cents; negative amounts are credits. Sums are exact; rounding happens where a product becomes a line. */
public record Money(long cents) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);

    public static Money cents(long value) {
        return new Money(value);
    }

    public static Money dollars(long value) {
        return new Money(Math.multiplyExact(value, 100));
    }

    /** Rounds an exact amount in dollars to the cent, halves away from zero. */
    public static Money rounded(BigDecimal dollars) {
        return new Money(
                dollars.movePointRight(2).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(cents, other.cents));
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(cents, other.cents));
    }

    /** This amount times an exact factor, rounded to the cent, halves away from zero. */
    public Money times(BigDecimal factor) {
        return rounded(inDollars().multiply(factor));
    }

    public BigDecimal inDollars() {
        return BigDecimal.valueOf(cents, 2);
    }

    public boolean isZero() {
        return cents == 0;
    }

    /** As files hold it: {@code 1240.00}. */
    public String plain() {
        return inDollars().toPlainString();
    }

    /** As people read it: {@code $1,240.00}. */
    public String text() {
        long size = Math.abs(cents);
        String centText = size % 100 < 10 ? "0" + size % 100 : Long.toString(size % 100);
        double dollars = (double) (size - size % 100) / 100;
        return (cents < 0 ? "-$" : "$") + DecimalText.whole(dollars) + "." + centText;
    }

    /** As people read a change: {@code +$40.00}, {@code -$40.00}. */
    public String signedText() {
        return cents > 0 ? "+" + text() : text();
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(cents, other.cents);
    }
}
