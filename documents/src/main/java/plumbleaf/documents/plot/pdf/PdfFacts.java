package plumbleaf.documents.plot.pdf;

import java.util.List;

/**
 * What a PDF says about itself. No date: the bytes depend on the content alone.
 *
 * @param bookmarks what the reader's side list shows, in page order
 */
public record PdfFacts(String title, String author, String subject, List<Bookmark> bookmarks) {
    public PdfFacts {
        bookmarks = List.copyOf(bookmarks);
    }

    /** A title and the page it leads to, counted from 0. */
    public record Bookmark(String title, int page) {}
}
