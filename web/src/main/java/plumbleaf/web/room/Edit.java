package plumbleaf.web.room;

import plumbleaf.web.page.Unit;

/** One value as someone typed, picked or dragged it. */
record Edit(String path, Unit unit, String value) {
    /** The text with this change; empty takes the value out. */
    DocumentText on(DocumentText text) {
        String whole = unit.complete(value);
        if (whole.isEmpty()) return text.without(path);
        boolean count = unit == Unit.COUNT && whole.matches("\\d{1,9}");
        return text.with(path, count ? whole : DocumentText.quoted(whole));
    }
}
