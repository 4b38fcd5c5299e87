package plumbleaf.web.page;

/** One of the things a field may be. */
public record Choice(String value, String words) {}
