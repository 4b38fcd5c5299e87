package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.quantity.DisplayUnits;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.json.JsonMapper;

/**
 * A job file's text, of which one value at a time is changed while everything else stays as it was written: its order, its breaks, its
 * numbers to the last digit.
 */
public record DocumentText(String text, JsonPlace root) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** @param text valid JSON; the store holds nothing else */
    public static DocumentText of(String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            parser.nextToken();
            return new DocumentText(text, read(parser));
        }
    }

    /** What stands there: a string without its quotes, a number or a word as written. */
    public Optional<String> value(String path) {
        return find(FieldPath.of(path))
                .filter(place -> place.kind() == JsonPlace.Kind.SCALAR)
                .map(JsonPlace::scalar);
    }

    /** The same path with the place of every list item instead of its id, as errors and assumptions name it. */
    String numbered(String path) {
        StringBuilder out = new StringBuilder();
        Optional<JsonPlace> at = Optional.of(root);
        for (FieldPath.Step step : FieldPath.of(path).steps()) {
            Optional<JsonPlace> next = at.flatMap(place -> place.inside(step));
            if (!step.item()) out.append(out.isEmpty() ? "" : ".").append(step.name());
            else
                out.append('[')
                        .append(
                                next.isPresent() && at.isPresent()
                                        ? at.get().items().indexOf(next.get())
                                        : step.name())
                        .append(']');
            at = next;
        }
        return out.toString();
    }

    /** What a person reads and types lengths in. */
    DisplayUnits units() {
        return value("display").orElse("us").equals("metric") ? DisplayUnits.METRIC : DisplayUnits.US;
    }

    /** Whether anything stands there. */
    boolean has(String path) {
        return find(FieldPath.of(path)).isPresent();
    }

    /** What stands there as it is written. */
    Optional<String> json(String path) {
        return find(FieldPath.of(path)).map(place -> text.substring(place.start(), place.end()));
    }

    /** The keys of the object there, in their order; none where there is no object. */
    List<String> keys(String path) {
        return find(FieldPath.of(path))
                .map(place -> List.copyOf(place.members().keySet()))
                .orElse(List.of());
    }

    /** How many things the list there holds; none where there is no list. */
    int count(String path) {
        return find(FieldPath.of(path)).map(place -> place.items().size()).orElse(0);
    }

    /**
     * With another value in that place; objects on the way that are missing are made.
     *
     * @param json the value as JSON
     */
    public DocumentText with(String path, String json) {
        FieldPath way = FieldPath.of(path);
        JsonPlace at = root;
        for (int i = 0; i < way.steps().size(); i++) {
            FieldPath.Step step = way.steps().get(i);
            Optional<JsonPlace> next = at.inside(step);
            if (next.isEmpty()) {
                if (at.kind() != JsonPlace.Kind.OBJECT || step.item())
                    throw new IllegalArgumentException("Nothing in the job at " + path);
                return added(
                        at,
                        step.name(),
                        wrapped(way.steps().subList(i + 1, way.steps().size()), json));
            }
            at = next.get();
        }
        return of(text.substring(0, at.start()) + json + text.substring(at.end()));
    }

    /** Without that value; as it was where there is none. */
    DocumentText without(String path) {
        FieldPath way = FieldPath.of(path);
        Optional<JsonPlace> parent = parentOf(way);
        if (parent.isEmpty() || parent.get().inside(way.last()).isEmpty()) return this;
        JsonPlace gone = parent.get().inside(way.last()).get();
        List<int[]> siblings = new ArrayList<>();
        int own = -1;
        if (way.last().item()) {
            for (JsonPlace item : parent.get().items()) {
                if (item.start() == gone.start()) own = siblings.size();
                siblings.add(new int[] {item.start(), item.end()});
            }
        } else {
            for (JsonPlace.Member member : parent.get().members().values()) {
                if (member.value().start() == gone.start()) own = siblings.size();
                siblings.add(new int[] {member.keyStart(), member.value().end()});
            }
        }
        int from = own == 0 ? siblings.get(0)[0] : siblings.get(own - 1)[1];
        int to = own == 0 && siblings.size() > 1 ? siblings.get(1)[0] : siblings.get(own)[1];
        return of(text.substring(0, from) + text.substring(to));
    }

    /** With one more item at the end of a list, which is made where it is missing. */
    public DocumentText appended(String path, String json) {
        Optional<JsonPlace> list = find(FieldPath.of(path));
        if (list.isEmpty()) return with(path, "[ " + json + " ]");
        JsonPlace at = list.get();
        if (at.kind() != JsonPlace.Kind.LIST) throw new IllegalArgumentException("Not a list: " + path);
        if (at.items().isEmpty())
            return of(text.substring(0, at.start()) + "[ " + json + " ]" + text.substring(at.end()));
        JsonPlace last = at.items().get(at.items().size() - 1);
        return of(text.substring(0, last.end()) + "," + gapBefore(last.start()) + json + text.substring(last.end()));
    }

    /** A text as JSON. */
    public static String quoted(String value) {
        return JSON.writeValueAsString(value);
    }

    private Optional<JsonPlace> find(FieldPath way) {
        Optional<JsonPlace> at = Optional.of(root);
        for (FieldPath.Step step : way.steps()) at = at.flatMap(place -> place.inside(step));
        return at;
    }

    private Optional<JsonPlace> parentOf(FieldPath way) {
        Optional<JsonPlace> at = Optional.of(root);
        for (FieldPath.Step step : way.steps().subList(0, way.steps().size() - 1))
            at = at.flatMap(place -> place.inside(step));
        return at;
    }

    private DocumentText added(JsonPlace object, String key, String json) {
        String member = quoted(key) + ": " + json;
        if (object.members().isEmpty())
            return of(text.substring(0, object.start()) + "{ " + member + " }" + text.substring(object.end()));
        JsonPlace.Member last =
                List.copyOf(object.members().values()).get(object.members().size() - 1);
        int end = last.value().end();
        return of(text.substring(0, end) + "," + gapBefore(last.keyStart()) + member + text.substring(end));
    }

    /** The space between the one before and this one, so that a new one stands under or beside it as the others do. */
    private String gapBefore(int start) {
        int from = start;
        while (from > 0 && Character.isWhitespace(text.charAt(from - 1))) from--;
        String gap = text.substring(from, start);
        return gap.contains("\n") ? gap : " ";
    }

    private static String wrapped(List<FieldPath.Step> steps, String json) {
        String value = json;
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i).item()) throw new IllegalArgumentException("An item needs its list first");
            value = "{ " + quoted(steps.get(i).name()) + ": " + value + " }";
        }
        return value;
    }

    private static JsonPlace read(JsonParser parser) {
        int start = (int) parser.currentTokenLocation().getCharOffset();
        JsonToken token = parser.currentToken();
        Map<String, JsonPlace.Member> members = new LinkedHashMap<>();
        List<JsonPlace> items = new ArrayList<>();
        if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                int keyStart = (int) parser.currentTokenLocation().getCharOffset();
                parser.nextToken();
                members.put(key, new JsonPlace.Member(keyStart, read(parser)));
            }
            return new JsonPlace(start, endOf(parser), JsonPlace.Kind.OBJECT, "", members, items);
        }
        if (token == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) items.add(read(parser));
            return new JsonPlace(start, endOf(parser), JsonPlace.Kind.LIST, "", members, items);
        }
        parser.finishToken();
        String scalar = parser.getString();
        return new JsonPlace(start, endOf(parser), JsonPlace.Kind.SCALAR, scalar, members, items);
    }

    private static int endOf(JsonParser parser) {
        return (int) parser.currentLocation().getCharOffset();
    }
}
