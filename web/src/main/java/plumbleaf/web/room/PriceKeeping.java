package plumbleaf.web.room;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.KeptPrice;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.KeptPrices;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** A job keeps the prices it was quoted at until someone asks for the new ones, and says what those would make of it. */
final class PriceKeeping {
    private static final int MOST_SHOWN = 40;

    private PriceKeeping() {}

    static Panel panel(Opened opened, Bench bench) {
        Panel panel = Panel.of("Prices", "");
        if (opened.design().isEmpty()) return panel;
        Design design = opened.design().get();
        List<KeptPrice> kept = design.job().money().kept();
        if (kept.isEmpty())
            return panel.withRows(List.of(new Row(
                            "money.book",
                            "From the book as it stands",
                            design.job().money().priceBook(),
                            "",
                            "")))
                    .withPresses(List.of(new Panel.Press("Keep the prices of this quote", "keep-prices")));
        PriceBook today = bench.today(opened.taker(), design.job());
        List<KeptPrices.Moved> moved = KeptPrices.moved(today, kept);
        Panel shown = panel.withPresses(List.of(new Panel.Press("Take the new prices", "take-new-prices")));
        if (moved.isEmpty())
            return shown.withRows(
                    List.of(new Row("money.kept", "Kept since the quote", "the book has not moved", "", "")));
        Money was = design.quote().price().total();
        Money is = bench.pricedFrom(design.job(), today).quote().price().total();
        List<Table.Line> lines = new ArrayList<>();
        for (KeptPrices.Moved price : moved.subList(0, Math.min(MOST_SHOWN, moved.size())))
            lines.add(new Table.Line(
                    "", List.of(words(price.of()), value(price.of(), price.was()), value(price.of(), price.now()))));
        return shown.withRows(List.of(
                        Row.of("money.keptTotal", "As quoted", was.text()),
                        Row.of("money.todayTotal", "As the book stands today", is.text())))
                .withTables(List.of(new Table(
                        moved.size() + " prices or hours have moved since the quote",
                        List.of("Of", "Quoted", "Today"),
                        lines)));
    }

    static Edited on(Opened opened, Bench bench, boolean keep) {
        String title = opened.stored().title();
        if (!keep)
            return new Edited.Fine(
                    title, opened.text().without("money.kept").text(), "money.kept: the new prices taken");
        if (opened.design().isEmpty())
            return new Edited.Refused("", "The job has no price yet; put its file right first.");
        Design design = opened.design().get();
        List<String> prices = new ArrayList<>();
        for (KeptPrice price : KeptPrices.of(
                bench.book(opened.taker(), design.job()), design.quote().price()))
            prices.add("{ \"of\": " + DocumentText.quoted(price.of()) + ", \"price\": "
                    + DocumentText.quoted(price.value().toPlainString()) + " }");
        String list = "[ " + String.join(",\n        ", prices) + " ]";
        return new Edited.Fine(
                title, opened.text().with("money.kept", list).text(), "money.kept: the prices of this quote kept");
    }

    private static String words(String of) {
        List<String> words = new ArrayList<>();
        for (String word : of.split("/", -1)) if (!word.isEmpty() && !word.equals("0")) words.add(word);
        return String.join(", ", words);
    }

    private static String value(String of, BigDecimal value) {
        return of.startsWith("labor/") ? value.toPlainString() + " h" : "$" + value.toPlainString();
    }
}
