package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.web.page.Unit;

/** One value as someone typed, picked or dragged it. */
record Edit(String path, Unit unit, String value) {
    private static final String SUPPORT = ".support";

    /** The text with this change; empty takes the value out. */
    DocumentText on(DocumentText text) {
        String whole = unit.complete(value);
        if (whole.isEmpty()) return text.without(path);
        return onPlace(opened(text), whole);
    }

    /** A support said in one word takes fields of its own as an object with that word for its kind. */
    private DocumentText opened(DocumentText text) {
        int inside = path.indexOf(SUPPORT + ".");
        if (inside < 0) return text;
        String support = path.substring(0, inside + SUPPORT.length());
        if (text.value(support + ".kind").isPresent()) return text;
        String word = text.value(support).orElse("new-footing");
        return text.with(support, "{ \"kind\": " + DocumentText.quoted(word) + " }");
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
