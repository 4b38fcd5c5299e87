package plumbleaf.web.desk;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plumbleaf.engine.money.Money;
import plumbleaf.web.room.Sight;
import plumbleaf.web.room.Veil;

/**
 * A job on the desk, as printed.
 *
 * @param severity of its verdict, as a mark shows it; empty where its file is wrong
 * @param next     the one next thing to do
 * @param day      the next day that matters, with what it is; empty where none is written down
 * @param isPast   whether that day is over
 */
public record DeskLine(
        String id,
        String title,
        String customer,
        String place,
        String price,
        String standing,
        String severity,
        String verdict,
        String next,
        String day,
        boolean isPast,
        String changed) {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("MMM d, yyyy HH:mm 'UTC'", Locale.US).withZone(ZoneOffset.UTC);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);

    static DeskLine of(DeskCards.Laid laid, LocalDate today, Sight sight) {
        DeskCard card = laid.card();
        boolean money = sight == Sight.EVERYTHING;
        Due due = Due.of(laid.stands(), card, today);
        return new DeskLine(
                laid.id().text(),
                laid.title(),
                card.customer(),
                card.place(),
                money && card.cents().isPresent()
                        ? Money.cents(card.cents().getAsLong()).text()
                        : "",
                laid.stands().words(),
                card.severity(),
                card.verdict(),
                money ? next(laid) : Veil.words(next(laid)),
                due.words(),
                due.isPast(),
                MOMENT.format(laid.changedAt()));
    }

    /** A job that was accepted, or lies with its customer, by its link alone is further than its own words know. */
    private static String next(DeskCards.Laid laid) {
        boolean mustFix = laid.card().severity().equals("must-fix");
        if (laid.stands() == Standing.OFFERED && !mustFix) return "ask the customer";
        if (laid.stands() == Standing.SOLD && laid.card().next().equals("send the offer")) return "order, cut and weld";
        return laid.card().next();
    }

    /** The day that matters next. */
    private record Due(String words, boolean isPast) {
        static Due of(Standing stands, DeskCard card, LocalDate today) {
            return switch (stands) {
                case SETTLE, OFFER, OFFERED -> day(card.priceHolds(), "price holds until", "price held until", today);
                case SOLD, BUILDING ->
                    !card.digFrom().isEmpty() && LocalDate.parse(card.digFrom()).isAfter(today)
                            ? day(card.digFrom(), "dig from", "dig from", today)
                            : day(card.digThrough(), "locate ticket ends", "locate ticket ended", today);
                case OWED, PAID -> new Due("", false);
            };
        }

        private static Due day(String day, String ahead, String past, LocalDate today) {
            if (day.isEmpty()) return new Due("", false);
            LocalDate date = LocalDate.parse(day);
            boolean over = date.isBefore(today);
            String year = date.getYear() == today.getYear() ? "" : ", " + date.getYear();
            return new Due((over ? past : ahead) + " " + DAY.format(date) + year, over);
        }
    }
}
