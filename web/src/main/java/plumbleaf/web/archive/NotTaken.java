package plumbleaf.web.archive;

/** A file that was not taken in, and nothing of it was. The message is half a sentence that says why. */
public final class NotTaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NotTaken(String why) {
        super(why);
    }

    NotTaken(String why, Throwable cause) {
        super(why, cause);
    }
}
