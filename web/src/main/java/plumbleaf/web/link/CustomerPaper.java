package plumbleaf.web.link;

/** A paper that a customer may see. */
public record CustomerPaper(String file, String words, int pages) {}
