package plumbleaf.web.page;

/**
 * A drawing on the page.
 *
 * @param name what it shows, in a few words, read aloud by a screen reader
 * @param svg  safe markup, made by our own drawing code only
 */
public record Picture(String name, String svg) {}
