package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.web.util.HtmlUtils;
import plumbleaf.documents.PaperFile;
import plumbleaf.web.page.Link;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Picture;

/** The papers: the real pages, and every file to take along. */
record PapersRoom(Opened opened, PaperShelf shelf, Sight sight) {
    List<Picture> pages() {
        Optional<PaperMaking> making = shelf.making(opened);
        if (making.isPresent()) return List.of(wait(making.get()));
        List<Picture> pages = new ArrayList<>();
        List<PaperShelf.PageSize> sizes = shelf.pages(opened, sight);
        String at = "/jobs/" + opened.stored().id() + "/papers/pages/";
        for (int i = 0; i < sizes.size(); i++) {
            int page = i + 1;
            String name = "Page " + page + " of " + sizes.size();
            String image = "<img class=\"page\" src=\"" + at + page + "?v="
                    + opened.stored().version() + "\" alt=\"" + name + "\" loading=\"lazy\" width=\""
                    + sizes.get(i).wide() + "\" height=\"" + sizes.get(i).high() + "\">";
            boolean wide = sizes.get(i).wide() > sizes.get(i).high();
            pages.add(new Picture(name, image, wide, List.of()));
        }
        return pages;
    }

    /** The page looks again by itself where scripts run; elsewhere a press does. */
    private Picture wait(PaperMaking making) {
        String at = "/jobs/" + opened.stored().id() + "/papers";
        String html = "<p class=\"making\" data-making role=\"status\">The papers of a job this long take a while. "
                + HtmlUtils.htmlEscape(making.words()) + " <a href=\"" + at + "\">Look again</a></p>";
        return new Picture("Being made", html, true, List.of());
    }

    List<Panel> panels() {
        List<Note> notes = Notes.pressing(Notes.asking(opened.findings()));
        return List.of(Panel.of(notes.isEmpty() ? "Ready to print" : "Marked on every page", "")
                .withNotes(notes));
    }

    List<Link> links() {
        List<Link> links = new ArrayList<>();
        if (shelf.making(opened).isEmpty())
            for (PaperFile paper : shelf.papers(opened, sight))
                links.add(new Link(paper.name(), "/jobs/" + opened.stored().id() + "/papers/files/" + paper.name()));
        links.add(new Link("the job file", "/jobs/" + opened.stored().id() + "/file"));
        return links;
    }
}
