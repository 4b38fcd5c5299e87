package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.web.util.HtmlUtils;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Link;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Picture;
import plumbleaf.web.page.Unit;

/** The papers: the real pages, and every file to take along. */
record PapersRoom(Opened opened, PaperShelf shelf, Sight sight, Breadth breadth) {
    List<Picture> pages() {
        Optional<PaperMaking> making = shelf.making(opened);
        if (making.isPresent()) return List.of(wait(making.get()));
        List<Picture> pages = new ArrayList<>();
        order().ifPresent(order -> pages.add(packet(order)));
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

    /** Nothing while the papers are made, or for whom the packet is not put together. */
    private Optional<PacketOrder> order() {
        if (sight != Sight.EVERYTHING || shelf.making(opened).isPresent()) return Optional.empty();
        return shelf.order(opened);
    }

    private Picture packet(PacketOrder order) {
        List<Integer> counts =
                order.in().stream().map(paper -> shelf.count(opened, paper)).toList();
        double wideIn = breadth == Breadth.WIDE ? 9 : 3.9;
        PacketPicture picture = new PacketPicture(order, counts, wideIn);
        return new Picture("The packet in its order", SvgPlot.inPage(picture.drawing()), true, picture.handles());
    }

    /** The same as numbers: each paper's place, or none. */
    private Panel places(PacketOrder order) {
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < order.in().size(); i++) fields.add(place(order.in().get(i), Integer.toString(i + 1)));
        for (PacketPaper paper : order.out()) fields.add(place(paper, ""));
        return Panel.of("The packet", "packet").withFields(fields);
    }

    private Field place(PacketPaper paper, String now) {
        String path = PacketOrder.path(paper);
        boolean typed = opened.typed().path().equals(path);
        return new Field(
                path,
                PacketOrder.title(paper),
                typed ? opened.typed().value() : now,
                false,
                Unit.COUNT,
                List.of(),
                "packet." + paper.key(),
                now.isEmpty() ? "left out of the packet; give it a place to take it in" : "",
                typed ? opened.typed().problem() : "");
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
        List<Panel> panels = new ArrayList<>();
        panels.add(Panel.of(notes.isEmpty() ? "Ready to print" : "Marked on every page", "")
                .withNotes(notes));
        order().ifPresent(order -> panels.add(places(order)));
        return panels;
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
