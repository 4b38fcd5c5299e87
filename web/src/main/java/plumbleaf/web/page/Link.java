package plumbleaf.web.page;

/** Something to fetch. */
public record Link(String words, String address) {}
