package plumbleaf.web.store;

/**
 * A job as it stands now.
 *
 * @param version  counts every change, undo and redo too; an edit names the version it was made on
 * @param revision the document's own number
 * @param document the job file's text
 * @param undo     whether there is a revision to go back to
 * @param redo     whether there is one to go forward to
 */
public record StoredJob(
        JobId id, String title, long version, long revision, String document, boolean undo, boolean redo) {
    /** The same with another text, which is not kept. */
    public StoredJob withDocument(String other) {
        return new StoredJob(id, title, version, revision, other, undo, redo);
    }
}
