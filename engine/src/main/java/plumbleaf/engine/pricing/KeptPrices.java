package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.KeptPrice;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.takeoff.Sold;

/**
 * Prices as they were when a job was quoted. Each price of a book has a name: {@code material/ITEM/SUPPLIER/UNIT/CONTENTS}, {@code labor/TASK/SOIL/UP-TO},
 * {@code charge/ID}, {@code crew}.
 */
public final class KeptPrices {
    private KeptPrices() {}

    /** Every price of a book that a job with these lines depends on, and the hours it was worked out with. */
    public static List<KeptPrice> of(PriceBook book, Price price) {
        List<KeptPrice> kept = new ArrayList<>();
        kept.add(new KeptPrice("crew", book.crew().hourly().dollars()));
        for (Sold sold : book.materials()) {
            if (price.lines().stream().anyMatch(line -> line.item().equals(sold.item())))
                kept.add(new KeptPrice(key(sold), sold.price().dollars()));
        }
        for (LabourRate rate : book.labour()) {
            if (price.lines().stream().anyMatch(line -> line.item().equals(rate.task())))
                kept.add(new KeptPrice(key(rate), Terms.exact(rate.hours())));
        }
        for (Charge charge : book.charges())
            kept.add(new KeptPrice(key(charge), charge.price().dollars()));
        return kept;
    }

    /** The book as this job sees it: a kept price goes before the book's own; one that the book no longer has is not brought back. */
    public static PriceBook in(PriceBook book, List<KeptPrice> kept) {
        if (kept.isEmpty()) return book;
        Map<String, BigDecimal> by = new LinkedHashMap<>();
        for (KeptPrice price : kept) by.put(price.of(), price.value());
        List<Sold> materials = new ArrayList<>();
        for (Sold sold : book.materials()) {
            BigDecimal was = by.get(key(sold));
            materials.add(was == null ? sold : sold.at(new UnitPrice(was)));
        }
        List<LabourRate> labour = new ArrayList<>();
        for (LabourRate rate : book.labour()) {
            BigDecimal was = by.get(key(rate));
            labour.add(was == null ? rate : rate.with(was.doubleValue()));
        }
        List<Charge> charges = new ArrayList<>();
        for (Charge charge : book.charges()) {
            BigDecimal was = by.get(key(charge));
            charges.add(was == null ? charge : charge.at(new UnitPrice(was)));
        }
        BigDecimal hourly = by.get("crew");
        Crew crew = book.crew();
        return new PriceBook(
                book.id(),
                materials,
                labour,
                charges,
                hourly == null ? crew : crew.at(new UnitPrice(hourly)),
                book.rules(),
                book.onHand());
    }

    /** The kept prices that the book has changed since, with the book's value now; in the order they are kept. */
    public static List<Moved> moved(PriceBook book, List<KeptPrice> kept) {
        Map<String, BigDecimal> now = new LinkedHashMap<>();
        now.put("crew", book.crew().hourly().dollars());
        for (Sold sold : book.materials()) now.put(key(sold), sold.price().dollars());
        for (LabourRate rate : book.labour()) now.put(key(rate), Terms.exact(rate.hours()));
        for (Charge charge : book.charges()) now.put(key(charge), charge.price().dollars());
        List<Moved> moved = new ArrayList<>();
        for (KeptPrice price : kept) {
            BigDecimal value = now.get(price.of());
            if (value != null && value.compareTo(price.value()) != 0)
                moved.add(new Moved(price.of(), price.value(), value));
        }
        return moved;
    }

    /** A price that is not what it was. */
    public record Moved(String of, BigDecimal was, BigDecimal now) {}

    static String key(Sold sold) {
        return "material/" + sold.item() + "/" + sold.supplier() + "/"
                + sold.unit().key() + "/" + DecimalText.shortest(sold.contents());
    }

    static String key(LabourRate rate) {
        return "labor/" + rate.task() + "/" + rate.soil() + "/"
                + DecimalText.shortest(rate.upTo().inches());
    }

    static String key(Charge charge) {
        return "charge/" + charge.id();
    }
}
