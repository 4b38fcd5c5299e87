package plumbleaf.jobfile.json;

/** Where a value stands in its file, both counted from 1; a value that never stood in a file has 0 and 0. */
public record Place(int line, int column) {
    public static final Place NONE = new Place(0, 0);
}
