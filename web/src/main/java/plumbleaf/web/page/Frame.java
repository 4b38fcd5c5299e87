package plumbleaf.web.page;

/**
 * What every page carries.
 *
 * @param look {@code light}, {@code dark} or empty for what the screen prefers
 * @param local whether one person works here without sign-in
 */
public record Frame(String title, String csrf, String person, boolean local, String look) {}
