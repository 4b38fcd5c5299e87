package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.web.page.Unit;

/** One value as someone typed, picked or dragged it. */
record Edit(String path, Unit unit, String value) {
    /** What may be one word, or an object of that kind with fields of its own; and the word where nobody said one. */
    private static final Map<String, String> KINDS = Collections.unmodifiableMap(kinds());

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put(".support", "new-footing");
        kinds.put(".leaf.shape", "sloped");
        kinds.put(".leaf.top", "arched");
        kinds.put(".leaf.fill", "metal-pickets");
        kinds.put(".braces", "rod");
        kinds.put(".holdOpen", "stop");
        return kinds;
    }

    /** The text with this change; empty takes the value out. */
    DocumentText on(DocumentText text) {
        String whole = unit.complete(value);
        if (RunEndText.isAt(path)) return RunEndText.on(text, path, whole);
        if (UsesText.isAt(path) && !whole.isEmpty()) return UsesText.on(text, whole);
        if (SidesText.isAt(path) && !whole.isEmpty()) return SidesText.on(text, path, whole);
        if (SetPostText.isAt(path)) return SetPostText.on(text, path, whole);
        if (MidRailText.isAt(path) && !whole.isEmpty()) return MidRailText.on(text, path, whole);
        if (LegCurve.isAt(path) && !whole.isEmpty()) return LegCurve.on(text, path, whole);
        if (whole.isEmpty()) return text.without(path);
        return onPlace(opened(text), whole);
    }

    /** What was said in one word takes fields of its own as an object with that word for its kind. */
    private DocumentText opened(DocumentText text) {
        for (Map.Entry<String, String> kind : KINDS.entrySet()) {
            int inside = path.indexOf(kind.getKey() + ".");
            if (inside < 0) continue;
            String place = path.substring(0, inside + kind.getKey().length());
            if (text.value(place + ".kind").isPresent()) return text;
            String word = text.value(place).orElse(kind.getValue());
            return text.with(place, "{ \"kind\": " + DocumentText.quoted(word) + " }");
        }
        return text;
    }

    private DocumentText onPlace(DocumentText text, String whole) {
        boolean bare = unit == Unit.COUNT && whole.matches("\\d{1,9}|true|false");
        return text.with(path, bare ? whole : DocumentText.quoted(whole));
    }

    /** What a remedy asks for, one edit after the other: a count or a yes stands bare in the file, all else in quotes. */
    static List<Edit> ofRemedy(String edits) {
        List<Edit> all = new ArrayList<>();
        for (String edit : List.of(edits.split(Remedy.AND_THEN, -1))) {
            int equals = edit.indexOf('=');
            if (equals < 1) throw new IllegalArgumentException("Not an edit: " + edit);
            String value = edit.substring(equals + 1);
            boolean bare = value.matches("\\d{1,9}|true|false");
            all.add(new Edit(edit.substring(0, equals), bare ? Unit.COUNT : Unit.WORDS, value));
        }
        return all;
    }
}
