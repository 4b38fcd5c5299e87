package plumbleaf.web.people;

/** Someone who works with jobs. The password's hash stays in {@link People}. */
public record Person(String id, String signIn, String name, Role role) {
    /** The one person of a workspace that runs for this machine alone. */
    static final Person HERE = new Person("here", "here", "you", Role.OWNER);
}
