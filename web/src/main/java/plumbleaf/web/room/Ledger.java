package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.engine.job.ComplaintCause;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Entry;

/** What can be written down in a job one by one: hours, materials, bills, payments, changes, calls, readings, options. */
enum Ledger {
    HOURS(
            "actuals",
            "Hours on a task",
            "Write hours down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("task", "Task", Kind.PICKED),
            blank("quantity", "Done", Kind.NUMBER),
            blank("hours", "Hours of one person", Kind.NUMBER),
            blank("note", "Note", Kind.WORDS)),
    USED(
            "used",
            "Material used",
            "Write material down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("item", "Item", Kind.PICKED),
            blank("units", "Units used", Kind.NUMBER),
            blank("returned", "Of these returned", Kind.NUMBER)),
    BILL(
            "money.billing.bills",
            "A bill that went out",
            "Write bill down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("what", "For", Kind.WORDS),
            blank("amount", "Amount", Kind.MONEY)),
    PAID(
            "money.billing.paid",
            "Money that came in",
            "Write payment down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("how", "How", Kind.WORDS),
            blank("amount", "Amount", Kind.MONEY)),
    CHANGE(
            "changes",
            "A change after acceptance",
            "Write change down",
            "C",
            blank("date", "Day", Kind.DATE),
            blank("what", "What changes", Kind.WORDS),
            blank("price", "Adds to the price, with tax", Kind.MONEY),
            blank("days", "Adds days", Kind.NUMBER)),
    CALL(
            "warranty",
            "A call under warranty",
            "Write call down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("what", "What was the matter", Kind.WORDS),
            blank("cause", "Cause", Kind.PICKED),
            blank("hours", "Hours of one person", Kind.NUMBER),
            blank("cost", "Bought for it", Kind.MONEY)),
    MOISTURE(
            "moisture",
            "A moisture reading",
            "Write reading down",
            "",
            blank("date", "Day", Kind.DATE),
            blank("where", "Where", Kind.WORDS),
            blank("moisture", "Moisture", Kind.SHARE)),
    OPTION(
            "money.options",
            "An option for the customer",
            "Add option",
            "O",
            blank("name", "What it is", Kind.WORDS),
            blank("kind", "Kind", Kind.PICKED),
            blank("edits", "Changes to the job", Kind.EDITS)),
    ALLOWANCE(
            "money.allowances",
            "An allowance in the price",
            "Add allowance",
            "",
            blank("charge", "For", Kind.PICKED),
            blank("count", "How many", Kind.NUMBER),
            blank("why", "Why so many", Kind.WORDS)),
    PART(
            "parts",
            "Parts from a maker's sheet",
            "Add parts",
            "",
            blank("file", "Which sheet", Kind.WORDS),
            blank("rows", "Table, headings first", Kind.ROWS));

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,7}(\\.\\d{1,4})?");
    private static final List<Choice> CAUSES = causes();
    private static final List<Choice> OFFERS = List.of(
            new Choice(OfferKind.EXTRA.key(), "something to tick beside the rest"),
            new Choice(OfferKind.BUILD.key(), "another build of the whole job"));

    private final String list;
    private final String heading;
    private final String words;
    private final String ids;

    @SuppressWarnings("ImmutableEnumChecker") // A copy that nobody can change.
    private final List<Blank> blanks;

    Ledger(String list, String heading, String words, String ids, Blank... blanks) {
        this.list = list;
        this.heading = heading;
        this.words = words;
        this.ids = ids;
        this.blanks = List.of(blanks);
    }

    private enum Kind {
        DATE,
        WORDS,
        PICKED,
        NUMBER,
        MONEY,
        SHARE,
        EDITS,
        ROWS
    }

    private record Blank(String key, String label, Kind kind) {}

    private static Blank blank(String key, String label, Kind kind) {
        return new Blank(key, label, kind);
    }

    static Optional<Ledger> of(String list) {
        for (Ledger ledger : values()) if (ledger.list.equals(list)) return Optional.of(ledger);
        return Optional.empty();
    }

    /** What shop and crew write down on site; none of it holds an amount. */
    boolean isForHands() {
        return this == HOURS || this == USED || this == MOISTURE;
    }

    /** The form, with what was typed and refused. */
    Entry entry(Opened opened) {
        Typed typed = opened.typed();
        boolean mine = typed.path().equals(list);
        List<Entry.Blank> shown = new ArrayList<>();
        for (Blank blank : blanks)
            shown.add(new Entry.Blank(
                    blank.key(),
                    blank.label(),
                    input(blank.kind()),
                    mine ? typed.form().getOrDefault(blank.key(), "") : "",
                    hint(blank.kind()),
                    choices(blank, opened)));
        return new Entry(list, heading, words, shown, isForHands(), mine ? typed.problem() : "");
    }

    /** The job with one more item. */
    DocumentText added(DocumentText text, Map<String, String> typed) {
        List<String> members = new ArrayList<>();
        if (!ids.isEmpty()) members.add("\"id\": " + DocumentText.quoted(nextId(text)));
        for (Blank blank : blanks) {
            String value = typed.getOrDefault(blank.key(), "").strip();
            if (!value.isEmpty()) members.add(DocumentText.quoted(blank.key()) + ": " + json(blank.kind(), value));
        }
        return text.appended(list, "{ " + String.join(", ", members) + " }");
    }

    /** For the history: what was written down, without amounts. */
    String what() {
        return heading.substring(0, 1).toLowerCase(Locale.ROOT) + heading.substring(1) + " written down";
    }

    private static String json(Kind kind, String value) {
        return switch (kind) {
            case DATE, WORDS, PICKED -> DocumentText.quoted(value);
            case NUMBER -> NUMBER.matcher(value).matches() ? value : DocumentText.quoted(value);
            case MONEY -> DocumentText.quoted(dollars(value));
            case SHARE -> DocumentText.quoted(value.endsWith("%") ? value : value + "%");
            case EDITS -> {
                List<String> edits = new ArrayList<>();
                for (String edit : value.split("[;\\n]", -1))
                    if (!edit.isBlank()) edits.add(DocumentText.quoted(edit.strip()));
                yield "[" + String.join(", ", edits) + "]";
            }
            case ROWS -> {
                List<String> rows = new ArrayList<>();
                for (String row : value.split("\\R", -1))
                    if (!row.isBlank() && !row.startsWith("#")) rows.add(DocumentText.quoted(row.strip()));
                yield "[" + String.join(", ", rows) + "]";
            }
        };
    }

    private static String input(Kind kind) {
        return switch (kind) {
            case DATE -> "date";
            case ROWS -> "textarea";
            case WORDS, PICKED, NUMBER, MONEY, SHARE, EDITS -> "text";
        };
    }

    private static String dollars(String value) {
        if (value.contains("$")) return value;
        return value.startsWith("-") ? "-$" + value.substring(1) : "$" + value;
    }

    private static String hint(Kind kind) {
        return switch (kind) {
            case MONEY -> "dollars";
            case SHARE -> "%";
            case ROWS -> "id,name,pin_offset_in,pin_swing_side_in,capacity_pair_lb,source";
            case EDITS -> "builds.G1.hingePost=F1083-REG-3; one after the other with a semicolon";
            case DATE, WORDS, PICKED, NUMBER -> "";
        };
    }

    private List<Choice> choices(Blank blank, Opened opened) {
        if (blank.kind() != Kind.PICKED) return List.of();
        return switch (this) {
            case CALL -> CAUSES;
            case OPTION -> OFFERS;
            case HOURS ->
                opened.design().stream()
                        .flatMap(design -> design.quote().labour().tasks().stream())
                        .map(task -> new Choice(
                                task.rate().task(),
                                task.rate().name() + ", by the " + task.rate().per()))
                        .toList();
            case USED ->
                opened.design().stream()
                        .flatMap(design -> design.quote().takeoff().lines().stream())
                        .map(line -> new Choice(line.item(), line.sold().name()))
                        .toList();
            case ALLOWANCE ->
                opened.design().stream()
                        .flatMap(design -> design.quote().price().unitOffers().stream())
                        .map(offer -> new Choice(offer.charge(), offer.name()))
                        .toList();
            case BILL, PAID, CHANGE, MOISTURE, PART -> List.of();
        };
    }

    private String nextId(DocumentText text) {
        int largest = 0;
        for (int i = 0; i < text.count(list); i++) {
            String id = text.value(list + "[" + i + "].id").orElse("");
            if (id.matches(ids + "\\d{1,6}")) largest = Math.max(largest, Integer.parseInt(id.substring(ids.length())));
        }
        return ids + (largest + 1);
    }

    private static List<Choice> causes() {
        List<Choice> choices = new ArrayList<>();
        for (ComplaintCause cause : ComplaintCause.values()) choices.add(new Choice(cause.key(), cause.words()));
        return choices;
    }
}
