package plumbleaf.web.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OrderUnit;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.yard.HouseYard;

/** Bars of one thing that can be had: what lies in the yard, and what the first price book that sells it sells. */
@Component
class HouseBars {
    private final HouseBooks books;
    private final HouseYard yard;

    HouseBars(HouseBooks books, HouseYard yard) {
        this.books = books;
        this.yard = yard;
    }

    /** What is sold by the stick, by its code, and what it is called. */
    Map<String, String> items() {
        List<Sold> sticks = new ArrayList<>();
        for (String book : books.names()) sticks.addAll(sticks(book));
        return new ItemNames(sticks).all();
    }

    /** None where nothing is chosen or known. */
    List<StockBar> of(String item) {
        List<StockBar> bars = new ArrayList<>(yard.yard().onHand().barsOf(item));
        for (String book : books.names()) {
            Map<String, StockBar> sold = new LinkedHashMap<>();
            for (Sold stick : sticks(book))
                if (stick.item().equals(item)) sold.putIfAbsent(bar(stick).id(), bar(stick));
            bars.addAll(sold.values());
            if (!sold.isEmpty()) break;
        }
        return bars;
    }

    private static StockBar bar(Sold sold) {
        return new StockBar(
                sold.name() + ", " + sold.supplier(),
                Length.feet(sold.contents()).nanometres(),
                Money.rounded(sold.price().dollars()),
                Supply.asMany(),
                false);
    }

    private List<Sold> sticks(String book) {
        return books.book(book).stream()
                .flatMap(known -> known.materials().stream())
                .filter(sold -> sold.unit() == OrderUnit.STICK && sold.of() == NetUnit.FEET)
                .toList();
    }
}
