package plumbleaf.web.people;

/**
 * A person as the owner lists them.
 *
 * @param closed   no longer comes in; what they did keeps their name
 * @param password whether they have set one
 */
public record PersonLine(Person person, boolean closed, boolean password) {}
