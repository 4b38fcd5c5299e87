package plumbleaf.engine.money;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;

/** Reads amounts as people write them: {@code $1,240.00}. */
public final class MoneyText {
    private static final Pattern AMOUNT = Pattern.compile("-?\\$ ?(\\d{1,3}(,\\d{3})+|\\d{1,12})(\\.\\d{1,6})?");
    /** So that no sum of products ever leaves what a whole number of cents can hold. */
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000_000);

    private static final String CURE = "write $1,240.00";

    private MoneyText() {}

    public static Parsed<Money> money(String text) {
        return exact(text)
                .then(dollars -> dollars.stripTrailingZeros().scale() > 2
                        ? new Refused<>("an amount stops at the cent", CURE)
                        : new Read<>(Money.rounded(dollars)));
    }

    public static Parsed<UnitPrice> unitPrice(String text) {
        return exact(text)
                .then(dollars -> dollars.signum() < 0
                        ? new Refused<>("a price is never negative", CURE)
                        : new Read<>(new UnitPrice(dollars)));
    }

    private static Parsed<BigDecimal> exact(String text) {
        String plain = text.strip();
        if (!AMOUNT.matcher(plain).matches()) return new Refused<>("this is not an amount of money", CURE);
        BigDecimal dollars =
                new BigDecimal(plain.replace("$", "").replace(",", "").replace(" ", ""));
        return dollars.abs().compareTo(MOST) > 0
                ? new Refused<>("this is more than any job costs", "write at most $100,000,000")
                : new Read<>(dollars);
    }
}
