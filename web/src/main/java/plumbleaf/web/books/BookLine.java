package plumbleaf.web.books;

/**
 * A price book in a line.
 *
 * @param own     whether it is of the house, and so may be changed
 * @param history whether its prices have a past
 */
public record BookLine(String name, boolean own, int materials, boolean history) {}
