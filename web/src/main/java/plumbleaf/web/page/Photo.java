package plumbleaf.web.page;

/**
 * A photo that stands beside what it answers.
 *
 * @param address where its picture is
 * @param name of its file, read aloud by a screen reader
 */
public record Photo(String address, String name) {}
