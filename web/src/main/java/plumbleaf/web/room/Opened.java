package plumbleaf.web.room;

import plumbleaf.web.store.StoredJob;

/**
 * A job that a room shows.
 *
 * @param text  its file, with the place of every value
 * @param typed what was typed last and could not be kept
 */
record Opened(StoredJob stored, DocumentText text, Typed typed) {
    static Opened of(StoredJob stored, Typed typed) {
        return new Opened(stored, DocumentText.of(stored.document()), typed);
    }

    FieldMaker fields() {
        return new FieldMaker(text, typed);
    }
}
