package plumbleaf.engine.design;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.labour.Labours;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.OpenBook;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.takeoff.BarNeed;
import plumbleaf.engine.takeoff.Need;
import plumbleaf.engine.takeoff.Needs;
import plumbleaf.engine.takeoff.NetUnit;

/**
 * What a build costs by its own material and hours, without the rounding to sticks and bags that only a whole order has: fair between builds. Material by the foot,
 * piece and pound with its waste, hours at the crew's rate.
 */
final class BuildPrice {
    private record Sale(String item, NetUnit unit) {}

    private static final double VARIETY_HOURS = 0.25;

    private final OpenBook book;
    private final double hourly;
    private final Map<Sale, Double> prices = new LinkedHashMap<>();

    BuildPrice(PriceBook book) {
        this.book = OpenBook.of(book);
        this.hourly = book.crew().hourly().dollars().doubleValue();
    }

    Money of(Needs needs, List<Work> works) {
        double dollars = 0;
        for (Need need : needs.loose()) dollars += need.quantity() * perUnit(need.item(), need.unit());
        for (BarNeed bar : needs.bars())
            dollars += bar.piece().longPointNm() / 304_800_000.0 * perUnit(bar.item(), NetUnit.FEET);
        dollars += Labours.of(works, book.rates()).hours() * hourly;
        return Money.rounded(BigDecimal.valueOf(Math.round(dollars * 1e6), 6));
    }

    /** What one more kind of hole on a site costs: the auger changed, the holes marked apart, one more thing to get wrong. Judgement: a quarter of an hour. */
    Money anotherKindOfHole() {
        double dollars = VARIETY_HOURS * hourly;
        return Money.rounded(BigDecimal.valueOf(Math.round(dollars * 1e6), 6));
    }

    /** The cheapest way a unit is sold; nothing where it has no price, as the order says too. */
    private double perUnit(String item, NetUnit unit) {
        return prices.computeIfAbsent(new Sale(item, unit), this::perUnit);
    }

    private double perUnit(Sale sale) {
        return book.of(sale.item()).stream()
                .filter(sold -> sold.of() == sale.unit())
                .mapToDouble(sold -> sold.price().dollars().doubleValue() * (1 + sold.waste()) / sold.contents())
                .min()
                .orElse(0);
    }
}
