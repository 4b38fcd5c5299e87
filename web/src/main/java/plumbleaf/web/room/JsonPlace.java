package plumbleaf.web.room;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A value in a text and where it stands.
 *
 * @param start   of its first character
 * @param end     after its last
 * @param scalar  the value without quotes, for a string, a number or a word; empty for objects and lists
 * @param members by key, in the order of the text
 */
public record JsonPlace(
        int start, int end, Kind kind, String scalar, Map<String, Member> members, List<JsonPlace> items) {
    enum Kind {
        OBJECT,
        LIST,
        SCALAR
    }

    /** @param keyStart where the key's opening quote stands */
    record Member(int keyStart, JsonPlace value) {}

    public JsonPlace {
        members = new LinkedHashMap<>(members);
        items = List.copyOf(items);
    }

    /** The thing of that name inside this one. */
    Optional<JsonPlace> inside(FieldPath.Step step) {
        if (!step.item()) return Optional.ofNullable(members.get(step.name())).map(Member::value);
        if (step.name().matches("\\d{1,6}")) {
            int index = Integer.parseInt(step.name());
            return index < items.size() ? Optional.of(items.get(index)) : Optional.empty();
        }
        return items.stream()
                .filter(item -> item.members.containsKey("id")
                        && item.members.get("id").value().scalar().equals(step.name()))
                .findFirst();
    }
}
