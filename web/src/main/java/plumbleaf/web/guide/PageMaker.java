package plumbleaf.web.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/** Sets one text of the guide as a page: links lead to pages, pictures come from the jar, tables may be moved sideways on a phone. */
final class PageMaker {
    private static final Pattern TO_PAGE = Pattern.compile("(?:\\.\\./)?([a-z-]+)\\.md(#.*)?");
    private static final Pattern PICTURE = Pattern.compile("(?:\\.\\./)?pictures/([a-z0-9-]+\\.(?:png|svg))");
    /** What a text says to those who keep it; it names the number that a test works out again. */
    private static final Pattern REMARK = Pattern.compile("[ \\n]*<!--.*?-->", Pattern.DOTALL);

    private static final List<Extension> EXTENSIONS =
            List.of(TablesExtension.create(), HeadingAnchorExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
    private static final HtmlRenderer HTML =
            HtmlRenderer.builder().extensions(EXTENSIONS).escapeHtml(true).build();
    private static final TextContentRenderer WORDS =
            TextContentRenderer.builder().extensions(EXTENSIONS).build();

    private PageMaker() {}

    /** @param known names of all pages; a link to anything else becomes its words */
    static Page page(String name, String text, List<String> known) {
        Node document = PARSER.parse(REMARK.matcher(text).replaceAll(""));
        List<Page.Part> parts = parts(document);
        document.accept(new Leading(known));
        String html = HTML.render(document)
                .replace("<table>", "<div class=\"wide\" role=\"group\" aria-label=\"Table\" tabindex=\"0\"><table>")
                .replace("</table>", "</table></div>")
                .replace("<th>", "<th scope=\"col\">")
                .replace("<pre>", "<pre tabindex=\"0\">");
        return new Page(name, parts.isEmpty() ? name : parts.get(0).heading(), html, parts);
    }

    private static List<Page.Part> parts(Node document) {
        List<Page.Part> parts = new ArrayList<>();
        IdGenerator anchors = IdGenerator.builder().build();
        String anchor = "";
        String heading = "";
        StringBuilder words = new StringBuilder();
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            if (!(node instanceof Heading)) {
                String said = WORDS.render(node);
                words.append(node instanceof TableBlock ? said.replace("|", " –") : said)
                        .append(' ');
                continue;
            }
            if (!heading.isEmpty()) parts.add(new Page.Part(anchor, heading, words.toString()));
            words.setLength(0);
            heading = WORDS.render(node);
            // The same counting of headings as the renderer's, so that both say one anchor.
            anchor = anchors.generateId(heading);
        }
        if (!heading.isEmpty()) parts.add(new Page.Part(anchor, heading, words.toString()));
        return parts;
    }

    /** Where a link of the text leads among the pages; nothing when it leads out of the guide. */
    static Optional<String> led(String destination, List<String> known) {
        if (destination.startsWith("#")) return Optional.of(destination);
        Matcher page = TO_PAGE.matcher(destination);
        if (!page.matches() || !known.contains(page.group(1))) return Optional.empty();
        String anchor = page.group(2) == null ? "" : page.group(2);
        return Optional.of("/guide/" + page.group(1) + anchor);
    }

    private static final class Leading extends AbstractVisitor {
        private final List<String> known;

        Leading(List<String> known) {
            this.known = known;
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            Optional<String> to = led(link.getDestination(), known);
            if (to.isPresent()) {
                link.setDestination(to.get());
                return;
            }
            Node child = link.getFirstChild();
            while (child != null) {
                Node next = child.getNext();
                link.insertBefore(child);
                child = next;
            }
            link.unlink();
        }

        @Override
        public void visit(Image image) {
            Matcher picture = PICTURE.matcher(image.getDestination());
            if (picture.matches()) image.setDestination("/guide/pictures/" + picture.group(1));
        }
    }
}
