package plumbleaf.jobfile.input;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.json.Place;

/**
 * The fields of one object of a file. Asking for a key makes it known; a key that nobody asked for is an error. Wrong values are
 * reported and something harmless stands in for them, so that reading goes on: whoever reads must look at the errors before using what
 * came out.
 */
public final class Fields {
    private final Intake intake;
    private final ObjectNode node;
    private final String path;
    private final String pattern;
    private final boolean there;
    private final boolean muted;
    private final Set<String> asked = new LinkedHashSet<>();
    private boolean incomplete;

    Fields(Intake intake, ObjectNode node, String path, String pattern) {
        this(intake, node, path, pattern, true, false);
    }

    private Fields(Intake intake, ObjectNode node, String path, String pattern, boolean there, boolean muted) {
        this.intake = intake;
        this.node = node;
        this.path = path;
        this.pattern = pattern;
        this.there = there;
        this.muted = muted;
        if (there) intake.opened(this);
    }

    /** Whether the object stood in the file at all. */
    public boolean there() {
        return there;
    }

    /** Where the object stands: {@code gates[0]}. */
    public String path() {
        return path;
    }

    public Place place() {
        return node.place();
    }

    public boolean has(String key) {
        return node.get(key).isPresent();
    }

    /** Whether a draft lacks something needed here. */
    public boolean incomplete() {
        return incomplete;
    }

    /** A value that must be there. */
    public <T> T needed(String key, TextKind<T> kind, T standIn) {
        Optional<Node> value = ask(key);
        if (value.isEmpty()) {
            missing(
                    key,
                    kind.what(),
                    "write \"" + key + "\": \"" + kind.example().replace("\"", "\\\"") + "\"");
            return standIn;
        }
        return read(key, value.get(), kind).orElse(standIn);
    }

    /** A value that is assumed, and listed as such, where nobody gave it. */
    public <T> T assumed(String key, TextKind<T> kind, T instead, String why) {
        Optional<Node> value = ask(key);
        if (value.isPresent()) return read(key, value.get(), kind).orElse(instead);
        leaveOut(key, kind.write().apply(instead), why);
        return instead;
    }

    /** A value that may be left open. */
    public <T> Optional<T> given(String key, TextKind<T> kind) {
        return ask(key).flatMap(value -> read(key, value, kind));
    }

    /** A text of any words, which is empty when left out. */
    public String words(String key) {
        return given(key, TextKind.WORDS).orElse("");
    }

    /** A whole number that is assumed, and listed as such, where nobody gave it. */
    public int assumedCount(String key, int least, int most, int instead, String why) {
        Optional<Node> value = ask(key);
        if (value.isPresent()) return count(key, value.get(), least, most).orElse(instead);
        leaveOut(key, Integer.toString(instead), why);
        return instead;
    }

    /** A whole number that may be left open. */
    public Optional<Integer> givenCount(String key, int least, int most) {
        return ask(key).flatMap(value -> count(key, value, least, most));
    }

    /** A whole number that must be there. */
    public int neededCount(String key, int least, int most, int standIn) {
        Optional<Node> value = ask(key);
        if (value.isPresent()) return count(key, value.get(), least, most).orElse(standIn);
        missing(key, "a number", "write \"" + key + "\": " + standIn);
        return standIn;
    }

    /** A plain number that may be left open: a factor or an amount of something counted. */
    public Optional<Double> givenNumber(String key, double least, double most) {
        return ask(key).flatMap(value -> number(key, value, least, most));
    }

    /** A plain number that is assumed, and listed as such, where nobody gave it. */
    public double assumedNumber(String key, double least, double most, double instead, String why) {
        Optional<Node> value = ask(key);
        if (value.isPresent()) return number(key, value.get(), least, most).orElse(instead);
        leaveOut(key, WrittenNumber.of(instead, "", text -> Double.parseDouble(text) == instead), why);
        return instead;
    }

    /** True or false; false where nobody says. */
    public boolean flag(String key) {
        Optional<Node> value = ask(key);
        if (value.isEmpty()) return false;
        Optional<Boolean> flag = value.get().asFlag();
        if (flag.isEmpty()) wrong(key, value.get(), "this is " + value.get().what(), "write true or false");
        return flag.orElse(false);
    }

    /** The fields of an object under this key; an empty object, which is not {@link #there}, where it was left out. */
    public Fields object(String key) {
        Optional<Node> value = ask(key);
        String childPath = Intake.join(path, key);
        String childPattern = Intake.join(pattern, key);
        if (value.isEmpty()) return absent(childPath, childPattern, muted);
        Optional<ObjectNode> object = value.get().asObject();
        if (object.isPresent()) return new Fields(intake, object.get(), childPath, childPattern, true, muted);
        wrong(key, value.get(), "this is " + value.get().what(), "write an object: \"" + key + "\": { ... }");
        return absent(childPath, childPattern, true);
    }

    /** The same of an object that plays no part here: what is taken for it where it is left out is no assumption. */
    public Fields idleObject(String key) {
        return has(key) ? object(key) : absent(Intake.join(path, key), Intake.join(pattern, key), true);
    }

    /** The objects of a list under this key; none where it was left out. */
    public List<Fields> objects(String key) {
        List<Fields> found = new ArrayList<>();
        List<Node> items = items(key);
        for (int i = 0; i < items.size(); i++) {
            String childPath = Intake.join(path, key) + "[" + i + "]";
            Node item = items.get(i);
            Optional<ObjectNode> object = item.asObject();
            if (object.isPresent())
                found.add(new Fields(intake, object.get(), childPath, Intake.join(pattern, key) + "[]", true, muted));
            else report(item.place(), childPath, shown(item), "this is " + item.what(), "write an object: { ... }");
        }
        return found;
    }

    /** The texts of a list under this key; none where it was left out. */
    public <T> List<T> values(String key, TextKind<T> kind) {
        List<T> found = new ArrayList<>();
        List<Node> items = items(key);
        for (int i = 0; i < items.size(); i++)
            readAt(Intake.join(path, key) + "[" + i + "]", items.get(i), kind).ifPresent(found::add);
        return found;
    }

    /** The objects under keys that the user chose, such as the ids of runs and gates. */
    public List<Named> named(String key, String namePattern) {
        List<Named> found = new ArrayList<>();
        Fields holder = object(key);
        for (Member member : holder.node.members()) {
            holder.asked.add(member.key());
            String childPath = Intake.join(holder.path, member.key());
            Optional<ObjectNode> object = member.value().asObject();
            if (object.isPresent())
                found.add(new Named(
                        member.key(),
                        member.place(),
                        new Fields(
                                intake,
                                object.get(),
                                childPath,
                                Intake.join(holder.pattern, namePattern),
                                true,
                                muted)));
            else
                report(
                        member.value().place(),
                        childPath,
                        shown(member.value()),
                        "this is " + member.value().what(),
                        "write an object: { ... }");
        }
        return found;
    }

    /** An object under a key that the user chose. */
    public record Named(String name, Place place, Fields fields) {}

    /** A word, bare or as the {@code kind} of an object whose other fields belong to it. */
    public record Choice(String kind, Fields fields) {}

    /** One of several words, bare or as the field named kind of an object; what is left out is taken as {@code instead} and listed as assumed. */
    public Choice assumedChoice(String key, List<String> kinds, String instead, String why) {
        if (!has(key)) leaveOut(key, instead, why);
        return choice(key, kinds)
                .orElse(new Choice(instead, absent(Intake.join(path, key), Intake.join(pattern, key), muted)));
    }

    /** One of several words, bare or as the field named kind of an object. */
    public Optional<Choice> choice(String key, List<String> kinds) {
        Optional<Node> value = ask(key);
        if (value.isEmpty()) return Optional.empty();
        return choiceOf(value.get(), key, Intake.join(path, key), Intake.join(pattern, key), kinds);
    }

    /** A whole number, bare, which stands as its digits; or one of several words as in {@link #choice}. */
    public Optional<Choice> countOrChoice(String key, int least, int most, List<String> kinds) {
        boolean number = node.get(key).flatMap(Node::asNumber).isPresent();
        if (!number) return choice(key, kinds);
        return givenCount(key, least, most)
                .map(count -> new Choice(
                        Integer.toString(count), absent(Intake.join(path, key), Intake.join(pattern, key), muted)));
    }

    /** A list of such choices. */
    public List<Choice> choices(String key, List<String> kinds) {
        List<Choice> found = new ArrayList<>();
        List<Node> items = items(key);
        for (int i = 0; i < items.size(); i++)
            choiceOf(items.get(i), key, Intake.join(path, key) + "[" + i + "]", Intake.join(pattern, key) + "[]", kinds)
                    .ifPresent(found::add);
        return found;
    }

    private Optional<Choice> choiceOf(
            Node value, String key, String childPath, String childPattern, List<String> kinds) {
        TextKind<String> kind = TextKind.oneOf("a kind of " + key, kinds, word -> word);
        Optional<ObjectNode> object = value.asObject();
        if (object.isEmpty())
            return readAt(childPath, value, kind).map(word -> new Choice(word, absent(childPath, childPattern, muted)));
        Fields fields = new Fields(intake, object.get(), childPath, childPattern, true, muted);
        String word = fields.needed("kind", kind, "");
        return word.isEmpty() ? Optional.of(new Choice("", fields.silenced())) : Optional.of(new Choice(word, fields));
    }

    /** Reports something wrong with a field that only shows once several values are known. */
    public void refuse(String key, String problem, String cure) {
        Optional<Node> value = key.isEmpty() ? Optional.empty() : node.get(key);
        report(
                value.map(Node::place).orElse(node.place()),
                key.isEmpty() ? path : Intake.join(path, key),
                value.map(Fields::shown).orElse(""),
                problem,
                cure);
    }

    /** Reports something wrong with a value anywhere below this object: {@code gates[0].station}. */
    public void refuseAt(String way, String problem, String cure) {
        NodePath to = NodePath.of(way);
        report(
                to.placeIn(node),
                Intake.join(path, way),
                to.find(node).map(Fields::shown).orElse(""),
                problem,
                cure);
    }

    /** Notes in the list of assumed values one that no single key above stands for. */
    public void leaveOut(String key, String value, String why) {
        if (!muted) intake.leftOut(Intake.join(path, key), value, why);
    }

    private Fields absent(String childPath, String childPattern, boolean silent) {
        return new Fields(
                intake, new ObjectNode(node.place(), List.of(), List.of()), childPath, childPattern, false, silent);
    }

    /** The same object, about which nothing more is said. */
    private Fields silenced() {
        for (Member member : node.members()) asked.add(member.key());
        return new Fields(intake, node, path, pattern, false, true);
    }

    private Optional<Node> ask(String key) {
        asked.add(key);
        intake.knows(pattern, key);
        Optional<Node> value = node.get(key);
        boolean isNull = value.isPresent() && value.get() instanceof Node.NullNode;
        if (!isNull) return value;
        wrong(key, value.get(), "null says nothing", "leave the key away");
        return Optional.empty();
    }

    private List<Node> items(String key) {
        Optional<Node> value = ask(key);
        if (value.isEmpty()) return List.of();
        Optional<ArrayNode> array = value.get().asArray();
        if (array.isEmpty())
            wrong(key, value.get(), "this is " + value.get().what(), "write a list: \"" + key + "\": [ ... ]");
        return array.map(ArrayNode::items).orElse(List.of());
    }

    private void missing(String key, String what, String cure) {
        if (muted) return;
        if (intake.isDraft()) {
            incomplete = true;
            intake.gap(Intake.join(path, key), what);
            return;
        }
        intake.error(node.place(), Intake.join(path, key), "", "this is needed and missing", cure);
    }

    private <T> Optional<T> read(String key, Node value, TextKind<T> kind) {
        return readAt(Intake.join(path, key), value, kind);
    }

    private <T> Optional<T> readAt(String field, Node value, TextKind<T> kind) {
        Optional<String> text = value.asText();
        if (text.isEmpty()) {
            String example = "\"" + kind.example().replace("\"", "\\\"") + "\"";
            boolean bare = value.asNumber().isPresent();
            String problem = bare ? kind.what() + " needs its unit, and quotes round both" : "this is " + value.what();
            if (bare && !kind.measured()) problem = "this is a number";
            report(value.place(), field, shown(value), problem, "write " + example);
            return Optional.empty();
        }
        return kind.read().apply(text.get()).match(read -> Optional.of(read.is()), refused -> {
            report(value.place(), field, text.get(), refused.problem(), refused.cure());
            return Optional.empty();
        });
    }

    private Optional<Integer> count(String key, Node value, int least, int most) {
        Optional<String> digits = value.asNumber();
        boolean whole = digits.isPresent() && digits.get().length() <= 9 && isWhole(digits.get());
        if (!whole) {
            wrong(
                    key,
                    value,
                    "this is not a whole number",
                    "write a number from " + least + " to " + most + ", without quotes");
            return Optional.empty();
        }
        int number = Integer.parseInt(digits.get());
        if (number >= least && number <= most) return Optional.of(number);
        wrong(key, value, "this is not from " + least + " to " + most, "write a number from " + least + " to " + most);
        return Optional.empty();
    }

    private static boolean isWhole(String digits) {
        int from = digits.startsWith("-") ? 1 : 0;
        for (int i = from; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') return false;
        }
        return digits.length() > from;
    }

    private Optional<Double> number(String key, Node value, double least, double most) {
        String range = WrittenNumber.of(least, "", text -> Double.parseDouble(text) == least)
                + " to "
                + WrittenNumber.of(most, "", text -> Double.parseDouble(text) == most);
        Optional<String> digits = value.asNumber();
        if (digits.isEmpty()) {
            wrong(key, value, "this is " + value.what(), "write a number from " + range + ", without quotes");
            return Optional.empty();
        }
        double number = Double.parseDouble(digits.get());
        if (number >= least && number <= most) return Optional.of(number);
        wrong(key, value, "this is not from " + range, "write a number from " + range);
        return Optional.empty();
    }

    private void wrong(String key, Node value, String problem, String cure) {
        report(value.place(), Intake.join(path, key), shown(value), problem, cure);
    }

    private void report(Place place, String field, String value, String problem, String cure) {
        if (!muted) intake.error(place, field, value, problem, cure);
    }

    private static String shown(Node node) {
        Function<Object, String> none = any -> "";
        return node.match(
                none::apply,
                none::apply,
                Node.TextNode::text,
                Node.NumberNode::digits,
                flag -> Boolean.toString(flag.is()),
                x -> "null");
    }

    void reportUnknownKeys() {
        if (muted) return;
        for (Member member : node.members()) {
            if (asked.contains(member.key())) continue;
            String cure = Nearest.to(member.key(), asked)
                    .map(near -> "write " + near)
                    .orElse("leave it away; the keys here are " + String.join(", ", asked));
            intake.error(member.place(), Intake.join(path, member.key()), "", "this key is not known here", cure);
        }
    }
}
