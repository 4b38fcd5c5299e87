package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.job.TaxRule;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.pricing.Category;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** {@code money}: the terms of the price. What is offered and what is billed are in {@link OfferForm}. */
final class MoneyForm {
    private static final TextKind<Double> PART = TextKind.shareUpTo(0.9);
    private static final TextKind<Category> CATEGORY =
            TextKind.oneOf("a kind of cost", List.of(Category.values()), Category::key);
    private static final Pattern BOOK = Pattern.compile("[a-z0-9][a-z0-9-]{0,40}");
    private static final double USUAL_OVERHEAD = 0.12;
    private static final double SHARE_ROUNDING = 1e-9;

    private MoneyForm() {}

    static MoneyTerms money(Fields money) {
        Optional<Double> byCost = money.given("overhead", TextKind.shareUpTo(3));
        Optional<Money> byDay = money.given("overheadPerDay", TextKind.MONEY);
        if (byDay.isPresent() && money.has("overhead"))
            money.refuse("overheadPerDay", "overhead is given twice, as a share and by the day", "keep one of the two");
        if (byDay.isEmpty() && !money.has("overhead")) money.leaveOut("overhead", "12%", Words.JUDGED);
        MoneyTerms terms = new MoneyTerms(
                priceBook(money),
                byDay.isPresent() ? 0 : byCost.orElse(USUAL_OVERHEAD),
                byDay.orElse(Money.ZERO),
                money.assumed("margin", PART, 0.18, Words.JUDGED),
                money.assumed("contingency", PART, 0.03, Words.JUDGED),
                money.given("reserve", PART).orElse(0.0),
                taxes(money),
                Open.of(money.given("wage", TextKind.MONEY).map(rate -> new UnitPrice(rate.inDollars()))),
                Open.of(money.given("validUntil", TextKind.DATE)),
                stages(money),
                OfferForm.offer(money),
                OfferForm.billing(money.object("billing")),
                OfferForm.kept(money));
        double sum = terms.stages().stream().mapToDouble(Stage::share).sum();
        if (money.has("stages") && Math.abs(sum - 1) > SHARE_ROUNDING)
            money.refuse("stages", "the shares make " + TextKind.SHARE.write().apply(sum), "let them make 100%");
        if (terms.margin() + terms.reserve() >= 1)
            money.refuse("reserve", "margin and reserve leave nothing of the price for the cost", "lower one of them");
        return terms;
    }

    private static String priceBook(Fields money) {
        String book = money.assumed("priceBook", TextKind.WORDS, "example-2027", "invented prices, to try things with");
        if (!BOOK.matcher(book).matches())
            money.refuse(
                    "priceBook",
                    "a price book goes by small letters, digits and hyphens",
                    "write " + PriceBooks.STANDARD.get(0));
        return book;
    }

    /** One rate on all that the price book marks, or a list of taxes each on its own kinds of cost. */
    private static List<TaxRule> taxes(Fields money) {
        List<TaxRule> taxes = new ArrayList<>();
        for (Fields tax : money.objects("taxes"))
            taxes.add(new TaxRule(
                    tax.needed("name", TextKind.WORDS, ""),
                    tax.needed("rate", PART, 0.0),
                    tax.values("on", CATEGORY).stream().map(Category::key).toList()));
        Optional<Double> one = money.given("tax", PART);
        if (!taxes.isEmpty() && money.has("tax"))
            money.refuse("tax", "taxes are given one by one as well", "keep one of the two");
        if (taxes.isEmpty()) {
            if (!money.has("tax")) money.leaveOut("tax", "0%", "not asked; ask the office");
            taxes.add(new TaxRule("Tax", one.orElse(0.0), List.of()));
        }
        return taxes;
    }

    private static List<Stage> stages(Fields money) {
        if (!money.has("stages")) {
            money.leaveOut("stages", "half on signing, half when done", Words.CUSTOM);
            return List.of(new Stage("on signing", 0.5), new Stage("when done", 0.5));
        }
        List<Stage> stages = new ArrayList<>();
        for (Fields fields : money.objects("stages"))
            stages.add(new Stage(
                    fields.needed("when", TextKind.WORDS, ""), fields.needed("share", TextKind.shareUpTo(1), 0.0)));
        return stages;
    }

    static void writeMoney(MoneyTerms money, Entries out) {
        out.words("priceBook", money.priceBook());
        if (money.overheadPerDay().isZero()) out.put("overhead", TextKind.SHARE, money.overhead());
        else out.put("overheadPerDay", TextKind.MONEY, money.overheadPerDay());
        out.put("margin", TextKind.SHARE, money.margin()).put("contingency", TextKind.SHARE, money.contingency());
        if (money.reserve() > 0) out.put("reserve", TextKind.SHARE, money.reserve());
        writeTaxes(money.taxes(), out);
        out.putIfAny("wage", TextKind.MONEY, money.wage().value().map(rate -> Money.rounded(rate.dollars())))
                .putIfAny("validUntil", TextKind.DATE, money.validUntil().value())
                .objects(
                        "stages",
                        money.stages(),
                        (stage, entries) ->
                                entries.words("when", stage.when()).put("share", TextKind.SHARE, stage.share()));
        OfferForm.write(money, out);
    }

    private static void writeTaxes(List<TaxRule> taxes, Entries out) {
        TaxRule first = taxes.get(0);
        if (taxes.size() == 1 && first.on().isEmpty() && first.name().equals("Tax")) {
            out.put("tax", TextKind.SHARE, first.rate());
            return;
        }
        out.objects(
                "taxes",
                taxes,
                (tax, entries) -> entries.words("name", tax.name())
                        .put("rate", TextKind.SHARE, tax.rate())
                        .values("on", TextKind.WORDS, tax.on()));
    }
}
