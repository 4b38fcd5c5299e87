package plumbleaf.jobfile.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.job.Allowance;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.job.KeptPrice;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.Notice;
import plumbleaf.engine.job.NoticeFrom;
import plumbleaf.engine.job.Offer;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.engine.job.OfferOption;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** The parts of {@code money} that the customer sees: options, allowances, exclusions, bills; and the prices kept since the quote. */
final class OfferForm {
    private static final TextKind<OfferKind> KIND =
            TextKind.oneOf("a kind of option", List.of(OfferKind.values()), OfferKind::key);
    private static final TextKind<String> EDIT = new TextKind<>(
            "a change to the job",
            false,
            "builds.G1.hingePost=F1083-REG-3",
            text -> JobEdit.read(text).then(edit -> new Read<>(edit.text())),
            text -> text);
    private static final TextKind<BigDecimal> PRICE =
            new TextKind<>("a price", false, "12.50", OfferForm::price, BigDecimal::toPlainString);
    private static final TextKind<NoticeFrom> NOTICE_FROM =
            TextKind.oneOf("a day to count from", List.of(NoticeFrom.values()), NoticeFrom::key);
    private static final int MOST_DAYS = 1000;
    private static final double MOST_ALLOWED = 10_000;
    private static final double MOST_MEASURED = 1e6;
    private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

    private OfferForm() {}

    static Offer offer(Fields money) {
        List<OfferOption> options = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Fields option : money.objects("options")) {
            String id = option.needed("id", TextKind.WORDS, "");
            if (!ids.add(id)) option.refuse("id", "another option has this id", "give each its own");
            options.add(new OfferOption(
                    id,
                    option.needed("name", TextKind.WORDS, ""),
                    option.assumed("kind", KIND, OfferKind.EXTRA, Words.CUSTOM),
                    option.values("edits", EDIT)));
            if (!option.has("edits"))
                option.refuse(
                        "edits", "an option changes something", "list what it changes, such as " + EDIT.example());
        }
        List<Allowance> allowances = new ArrayList<>();
        for (Fields allowance : money.objects("allowances"))
            allowances.add(new Allowance(
                    allowance.needed("charge", TextKind.WORDS, ""),
                    allowance.givenNumber("count", 0, MOST_ALLOWED).orElse(0.0),
                    allowance.words("why")));
        return new Offer(options, allowances, money.values("exclusions", TextKind.WORDS));
    }

    static Billing billing(Fields billing) {
        List<Billing.Bill> bills = new ArrayList<>();
        for (Fields bill : billing.objects("bills"))
            bills.add(new Billing.Bill(
                    bill.needed("date", TextKind.DATE, SOME_DAY),
                    bill.needed("what", TextKind.WORDS, ""),
                    bill.needed("amount", TextKind.MONEY, Money.ZERO)));
        List<Billing.Paid> paid = new ArrayList<>();
        for (Fields each : billing.objects("paid"))
            paid.add(new Billing.Paid(
                    each.needed("date", TextKind.DATE, SOME_DAY),
                    each.words("how"),
                    each.needed("amount", TextKind.MONEY, Money.ZERO)));
        List<Notice> notices = new ArrayList<>();
        for (Fields each : billing.objects("notices"))
            notices.add(new Notice(
                    each.needed("what", TextKind.WORDS, ""),
                    each.neededCount("days", 0, MOST_DAYS, 0),
                    each.needed("from", NOTICE_FROM, NoticeFrom.FIRST_WORK),
                    Open.of(each.given("sent", TextKind.DATE))));
        return new Billing(
                billing.given("retainage", TextKind.shareUpTo(0.5)).orElse(0.0),
                bills,
                paid,
                notices,
                measured(billing),
                submittals(billing));
    }

    private static List<Billing.Measured> measured(Fields billing) {
        List<Billing.Measured> lines = new ArrayList<>();
        for (Fields line : billing.objects("measured")) {
            Billing.Measured each = new Billing.Measured(
                    line.needed("what", TextKind.WORDS, ""),
                    line.words("unit"),
                    line.givenNumber("quantity", 0, MOST_MEASURED).orElse(0.0),
                    line.needed("each", TextKind.MONEY, Money.ZERO),
                    line.givenNumber("installed", 0, MOST_MEASURED).orElse(0.0),
                    line.givenNumber("stored", 0, MOST_MEASURED).orElse(0.0));
            if (!line.has("quantity"))
                line.refuse("quantity", "nobody said how much of it the contract holds", "write the whole quantity");
            else if (each.installed() + each.stored() > each.quantity() * (1 + 1e-9))
                line.refuse(
                        "stored",
                        "more is installed and stored than the contract holds",
                        "take what is built in off the pile, or write the change down and raise the quantity");
            lines.add(each);
        }
        return lines;
    }

    private static List<Billing.Submittal> submittals(Fields billing) {
        List<Billing.Submittal> submittals = new ArrayList<>();
        for (Fields each : billing.objects("submittals")) {
            Billing.Submittal submittal = new Billing.Submittal(
                    each.needed("what", TextKind.WORDS, ""),
                    Open.of(each.given("sent", TextKind.DATE)),
                    Open.of(each.given("back", TextKind.DATE)));
            boolean early = submittal.back().isSaid()
                    && submittal.back().or(SOME_DAY).isBefore(submittal.sent().or(LocalDate.MAX));
            if (early)
                each.refuse(
                        "back",
                        "it came back before it was sent",
                        "write the day it was sent, and the day it came back");
            submittals.add(submittal);
        }
        return submittals;
    }

    static List<KeptPrice> kept(Fields money) {
        List<KeptPrice> kept = new ArrayList<>();
        for (Fields price : money.objects("kept"))
            kept.add(new KeptPrice(
                    price.needed("of", TextKind.WORDS, ""), price.needed("price", PRICE, BigDecimal.ZERO)));
        return kept;
    }

    static void write(MoneyTerms money, Entries out) {
        Offer offer = money.offer();
        out.objects(
                "options",
                offer.options(),
                (option, entries) -> entries.words("id", option.id())
                        .words("name", option.name())
                        .put("kind", KIND, option.kind())
                        .values("edits", EDIT, option.edits()));
        out.objects(
                "allowances",
                offer.allowances(),
                (allowance, entries) -> entries.words("charge", allowance.charge())
                        .number("count", allowance.count())
                        .words("why", allowance.why()));
        out.values("exclusions", TextKind.WORDS, offer.exclusions());
        out.object("billing", entries -> writeBilling(money.billing(), entries));
        out.objects(
                "kept",
                money.kept(),
                (price, entries) -> entries.words("of", price.of()).put("price", PRICE, price.value()));
    }

    private static void writeBilling(Billing billing, Entries out) {
        if (billing.retainage() > 0) out.put("retainage", TextKind.SHARE, billing.retainage());
        out.objects(
                "bills",
                billing.bills(),
                (bill, entries) -> entries.put("date", TextKind.DATE, bill.date())
                        .words("what", bill.what())
                        .put("amount", TextKind.MONEY, bill.amount()));
        out.objects(
                "paid",
                billing.paid(),
                (paid, entries) -> entries.put("date", TextKind.DATE, paid.date())
                        .words("how", paid.how())
                        .put("amount", TextKind.MONEY, paid.amount()));
        out.objects(
                "notices",
                billing.notices(),
                (notice, entries) -> entries.words("what", notice.what())
                        .count("days", notice.days())
                        .put("from", NOTICE_FROM, notice.from())
                        .putIfAny("sent", TextKind.DATE, notice.sent().value()));
        out.objects(
                "measured",
                billing.measured(),
                (line, entries) -> entries.words("what", line.what())
                        .words("unit", line.unit())
                        .number("quantity", line.quantity())
                        .put("each", TextKind.MONEY, line.each())
                        .number("installed", line.installed())
                        .number("stored", line.stored()));
        out.objects(
                "submittals",
                billing.submittals(),
                (submittal, entries) -> entries.words("what", submittal.what())
                        .putIfAny("sent", TextKind.DATE, submittal.sent().value())
                        .putIfAny("back", TextKind.DATE, submittal.back().value()));
    }

    private static Parsed<BigDecimal> price(String text) {
        if (!text.matches("\\d{1,7}(\\.\\d{1,6})?"))
            return new Refused<>("this is not a price", "write plain dollars, such as 12.50");
        return new Read<>(new BigDecimal(text));
    }
}
