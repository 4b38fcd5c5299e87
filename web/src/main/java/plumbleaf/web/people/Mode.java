package plumbleaf.web.people;

/** How the workspace runs. */
public enum Mode {
    /** One person, on this machine, without sign-in; other machines are refused. */
    LOCAL,
    /** Several people, each with a sign-in. */
    SERVED
}
