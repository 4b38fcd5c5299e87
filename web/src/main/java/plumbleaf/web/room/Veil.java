package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.web.page.Bar;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Picture;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/**
 * Takes every cost and price out of what goes to someone who is not to see money. It goes by how money is written, not by where: on pages
 * an amount has its dollar sign, in our JSON it is the only number written as a text. So what a room says about money tomorrow is veiled
 * too.
 */
public final class Veil {
    private static final Pattern AMOUNT = Pattern.compile("[-\u2212+]?\\s?\\$\\s?\\d[\\d,]*(\\.\\d+)?");
    private static final Pattern DECIMAL_TEXT = Pattern.compile("[-+]?\\d+(\\.\\d+)?");
    private static final Pattern TERMS = Pattern.compile("(money|changes|actuals|priceBook|builds\\.price)\\b.*");
    private static final Set<String> TERM_KEYS =
            Set.of("money", "changes", "actuals", "priceBook", "priceChange", "cost", "lowerBound");
    private static final String GONE = "\u2026";

    private Veil() {}

    /** A sentence without its amounts. */
    public static String words(String text) {
        return AMOUNT.matcher(text).replaceAll(GONE);
    }

    /** One line of a history: that the terms changed, not to what. */
    static String step(String what) {
        return TERMS.matcher(what).matches() ? "a change of the terms" : words(what);
    }

    static RoomView over(RoomView view) {
        return new RoomView(
                view.room(),
                view.job(),
                view.verdict(),
                view.pictures().stream().map(Veil::picture).toList(),
                view.panels().stream()
                        .map(Veil::panel)
                        .filter(panel -> !panel.equals(Panel.of(panel.heading(), panel.of())))
                        .toList(),
                view.links(),
                List.of(),
                words(view.problem()));
    }

    private static Picture picture(Picture picture) {
        return new Picture(
                words(picture.name()), words(picture.svg()), picture.wide(), List.of(), words(picture.space()));
    }

    private static Panel panel(Panel panel) {
        return Panel.of(words(panel.heading()), panel.of())
                .withNotes(panel.notes().stream().map(Veil::note).toList())
                .withFields(fields(panel.fields()))
                .withStrips(panel.strips().stream()
                        .map(strip ->
                                new Panel.Strip(strip.of(), strip.path(), words(strip.note()), fields(strip.fields())))
                        .toList())
                .withBars(panel.bars().stream().filter(Veil::isFree).toList())
                .withRows(panel.rows().stream().filter(Veil::isFree).toList())
                .withTables(panel.tables().stream().map(Veil::table).toList())
                .withEntries(panel.entries().stream().filter(Entry::hands).toList())
                .withFolds(panel.folds().stream()
                        .filter(Veil::isFree)
                        .map(Veil::fold)
                        .toList());
    }

    private static Panel.Fold fold(Panel.Fold fold) {
        return new Panel.Fold(
                fold.of(),
                fold.key(),
                words(fold.words()),
                fold.value(),
                words(fold.about()),
                fold.lines().stream().map(Veil::table).toList());
    }

    private static Note note(Note note) {
        List<Note.Press> presses = note.presses().stream()
                .map(press -> new Note.Press(words(press.words()), gain(press.gain()), ""))
                .toList();
        return new Note(
                note.severity(),
                note.words(),
                note.part(),
                words(note.message()),
                words(note.basis()),
                note.ratio(),
                presses);
    }

    /** What a remedy does to the ratio, without what it does to the price. */
    private static String gain(String gain) {
        List<String> free = new ArrayList<>();
        for (String part : gain.split(", ", -1))
            if (!AMOUNT.matcher(part).find() && !part.endsWith("price")) free.add(part);
        return String.join(", ", free);
    }

    private static List<Field> fields(List<Field> fields) {
        return fields.stream()
                .filter(field -> !TERMS.matcher(field.path()).matches()
                        && !hasAmount(field.value())
                        && field.choices().stream().noneMatch(choice -> hasAmount(choice.words())))
                .map(field -> new Field(
                        field.path(),
                        field.label(),
                        field.value(),
                        field.assumed(),
                        field.unit(),
                        field.choices(),
                        field.of(),
                        words(field.note()),
                        words(field.problem())))
                .toList();
    }

    private static boolean isFree(Bar bar) {
        return !hasAmount(bar.value())
                && bar.parts().stream().noneMatch(part -> hasAmount(part.value()))
                && bar.limits().stream().noneMatch(limit -> hasAmount(limit.value()));
    }

    private static boolean isFree(Row row) {
        return !hasAmount(row.value()) && !hasAmount(row.note()) && !row.key().startsWith("money");
    }

    private static boolean isFree(Panel.Fold fold) {
        return !hasAmount(fold.value()) && !fold.key().startsWith("money");
    }

    /** Without every column of amounts alone; where one stands among other words, the words stay without it. */
    static Table table(Table table) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < table.heads().size(); i++) {
            if (!isMoney(table, i)) kept.add(i);
        }
        List<Table.Line> lines = table.lines().stream()
                .map(line -> new Table.Line(
                        line.of(),
                        kept.stream()
                                .filter(i -> i < line.cells().size())
                                .map(i -> words(line.cells().get(i)))
                                .toList()))
                .toList();
        return new Table(
                words(table.caption()), kept.stream().map(table.heads()::get).toList(), lines);
    }

    private static boolean isMoney(Table table, int column) {
        List<String> said = table.lines().stream()
                .filter(line -> column < line.cells().size())
                .map(line -> line.cells().get(column))
                .filter(cell -> !cell.isBlank())
                .toList();
        return !said.isEmpty() && said.stream().allMatch(Veil::hasAmount);
    }

    private static boolean hasAmount(String text) {
        return AMOUNT.matcher(text).find();
    }

    /** A job or a result as a file, without money: what speaks of money is left out, not emptied. */
    public static String json(String text) {
        return JsonReader.read(text)
                .match(tree -> JsonWriter.write(free(tree.root()).orElse(Json.nothing())), broken -> "{}\n");
    }

    private static Optional<Node> free(Node node) {
        return node.match(
                object -> {
                    List<Node.Member> members = new ArrayList<>();
                    for (Node.Member member : object.members())
                        if (!TERM_KEYS.contains(member.key()))
                            free(member.value())
                                    .ifPresent(
                                            value -> members.add(new Node.Member(member.key(), member.place(), value)));
                    return Optional.of(new Node.ObjectNode(object.place(), members, List.of()));
                },
                list -> Optional.of(new Node.ArrayNode(
                        list.place(),
                        list.items().stream()
                                .flatMap(item -> free(item).stream())
                                .toList())),
                said -> DECIMAL_TEXT.matcher(said.text()).matches()
                        ? Optional.empty()
                        : Optional.of(new Node.TextNode(said.place(), words(said.text()))),
                Optional::of,
                Optional::of,
                Optional::of);
    }
}
