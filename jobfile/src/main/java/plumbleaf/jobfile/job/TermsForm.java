package plumbleaf.jobfile.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.HeightRule;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.Rules;
import plumbleaf.engine.job.Stage;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** {@code rules}, {@code money}, {@code actuals} and {@code changes}. */
final class TermsForm {
    private static final double MOST_COUNTED = 1e6;

    private TermsForm() {}

    private static String priceBook(Fields money) {
        String book = money.assumed("priceBook", TextKind.WORDS, "example-2027", "invented prices, to try things with");
        if (!PriceBooks.STANDARD.contains(book))
            money.refuse("priceBook", "there is no price book of this name", "write " + PriceBooks.STANDARD.get(0));
        return book;
    }

    static Rules rules(Fields rules) {
        List<HeightRule> heights = new ArrayList<>();
        Fields height = rules.object("height");
        if (height.there())
            heights.add(new HeightRule(
                    height.needed("limit", Words.HEIGHT, Length.feet(6)),
                    height.assumed("from", Words.FROM, MeasuredFrom.LOWER_SIDE, "on the safe side")));
        for (Fields other : rules.objects("otherHeights"))
            heights.add(new HeightRule(
                    other.needed("limit", Words.HEIGHT, Length.feet(6)),
                    other.assumed("from", Words.FROM, MeasuredFrom.LOWER_SIDE, "on the safe side")));
        if (heights.size() > (height.there() ? 1 : 0) && !height.there())
            rules.refuse("otherHeights", "there is no first height rule", "put the first one under height");
        Fields gap = rules.object("gap");
        return new Rules(
                heights,
                new GapRule(gap.assumed("largest", TextKind.SIZE, Length.inches(4), Words.CUSTOM), gap.words("why")));
    }

    static void writeRules(Rules rules, Entries out) {
        for (int i = 0; i < rules.heights().size() && i < 1; i++) {
            HeightRule first = rules.heights().get(0);
            out.object("height", entries -> writeHeight(first, entries));
        }
        List<HeightRule> others = rules.heights().isEmpty()
                ? List.of()
                : rules.heights().subList(1, rules.heights().size());
        out.objects("otherHeights", others, TermsForm::writeHeight);
        out.object(
                "gap",
                gap -> gap.put("largest", TextKind.LENGTH, rules.gap().largest())
                        .words("why", rules.gap().why()));
    }

    private static void writeHeight(HeightRule rule, Entries out) {
        out.put("limit", TextKind.LENGTH, rule.limit()).put("from", Words.FROM, rule.from());
    }

    static MoneyTerms money(Fields money) {
        TextKind<Double> share = TextKind.shareUpTo(0.9);
        MoneyTerms terms = new MoneyTerms(
                priceBook(money),
                money.assumed("overhead", TextKind.shareUpTo(3), 0.12, Words.JUDGED),
                money.assumed("margin", share, 0.18, Words.JUDGED),
                money.assumed("contingency", share, 0.03, Words.JUDGED),
                money.assumed("tax", share, 0.0, "not asked; ask the office"),
                Open.of(money.given("validUntil", TextKind.DATE)),
                stages(money));
        double sum = terms.stages().stream().mapToDouble(Stage::share).sum();
        if (money.has("stages") && Math.abs(sum - 1) > 1e-9)
            money.refuse("stages", "the shares make " + TextKind.SHARE.write().apply(sum), "let them make 100%");
        return terms;
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
        out.words("priceBook", money.priceBook())
                .put("overhead", TextKind.SHARE, money.overhead())
                .put("margin", TextKind.SHARE, money.margin())
                .put("contingency", TextKind.SHARE, money.contingency())
                .put("tax", TextKind.SHARE, money.tax())
                .putIfAny("validUntil", TextKind.DATE, money.validUntil().value())
                .objects(
                        "stages",
                        money.stages(),
                        (stage, entries) ->
                                entries.words("when", stage.when()).put("share", TextKind.SHARE, stage.share()));
    }

    static List<Actual> actuals(Fields job) {
        List<Actual> actuals = new ArrayList<>();
        for (Fields fields : job.objects("actuals"))
            actuals.add(new Actual(
                    fields.needed("task", TextKind.WORDS, ""),
                    fields.givenNumber("quantity", 0, MOST_COUNTED).orElse(0.0),
                    fields.givenNumber("hours", 0, MOST_COUNTED).orElse(0.0),
                    fields.words("note")));
        return actuals;
    }

    static void writeActual(Actual actual, Entries out) {
        out.words("task", actual.task())
                .number("quantity", actual.quantity())
                .number("hours", actual.hours())
                .words("note", actual.note());
    }

    static List<Change> changes(Fields job) {
        List<Change> changes = new ArrayList<>();
        for (Fields fields : job.objects("changes"))
            changes.add(new Change(
                    fields.needed("id", TextKind.WORDS, ""),
                    fields.needed("date", TextKind.DATE, LocalDate.of(2000, 1, 1)),
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("price", TextKind.MONEY, Money.ZERO),
                    fields.flag("accepted")));
        return changes;
    }

    static void writeChange(Change change, Entries out) {
        out.words("id", change.id())
                .put("date", TextKind.DATE, change.date())
                .words("what", change.what())
                .put("price", TextKind.MONEY, change.price())
                .flag("accepted", change.accepted());
    }
}
