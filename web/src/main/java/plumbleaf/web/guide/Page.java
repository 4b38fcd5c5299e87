package plumbleaf.web.guide;

import java.util.List;

/**
 * One page of the guide.
 *
 * @param name  its file without the ending, and the end of its address
 * @param html  set from the guide's own text; nothing in it comes from a visitor
 * @param parts its headings with the words under each, in order
 */
public record Page(String name, String title, String html, List<Part> parts) {
    public Page {
        parts = List.copyOf(parts);
    }

    /**
     * What stands under one heading.
     *
     * @param anchor empty above the first heading of the second rank
     */
    public record Part(String anchor, String heading, String words) {}
}
