package plumbleaf.engine.pricing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.labour.LabourRates;
import plumbleaf.engine.takeoff.Goods;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.engine.takeoff.Sold;

/** A price book laid open: its rows by item and by task, since one order asks it hundreds of times and a remedy's price orders the whole job again. */
public final class OpenBook implements Goods {
    private final PriceBook book;
    private final Map<String, List<Sold>> byItem = new LinkedHashMap<>();
    private final LabourRates rates;

    private OpenBook(PriceBook book) {
        this.book = book;
        for (Sold sold : book.materials())
            byItem.computeIfAbsent(sold.item(), item -> new ArrayList<>()).add(sold);
        this.rates = LabourRates.of(book.labour());
    }

    public static OpenBook of(PriceBook book) {
        return new OpenBook(book);
    }

    public PriceBook book() {
        return book;
    }

    public LabourRates rates() {
        return rates;
    }

    @Override
    public List<Sold> of(String item) {
        return byItem.getOrDefault(item, List.of());
    }

    @Override
    public OnHand onHand() {
        return book.onHand();
    }
}
