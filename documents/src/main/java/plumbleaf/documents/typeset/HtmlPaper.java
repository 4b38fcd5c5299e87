package plumbleaf.documents.typeset;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.engine.quantity.WorkedLine;

/** A paper as a piece of HTML for a screen. The page around it brings the styles; drawings come as SVG within. */
public final class HtmlPaper implements Block.Cases<String> {
    private static final Pattern MEASURE =
            Pattern.compile("(?:\\d[\\d,]*' )?\\d+-\\d+/\\d+(?:\"| in\\.)?|\\d[\\d,]*' \\d+\"?");

    private HtmlPaper() {}

    public static String of(Paper paper) {
        StringBuilder html = new StringBuilder(4096);
        html.append("<article class=\"paper\"><h2>")
                .append(escaped(paper.title()))
                .append("</h2>\n");
        if (!paper.flag().isEmpty())
            html.append("<p class=\"paper-flag\">")
                    .append(escaped(paper.flag()))
                    .append("</p>\n");
        HtmlPaper cases = new HtmlPaper();
        for (Block block : paper.blocks()) html.append(block.match(cases)).append('\n');
        return html.append("</article>\n").toString();
    }

    @Override
    public String heading(Block.Heading block) {
        String tag = block.level() == 1 ? "h3" : "h4";
        return "<" + tag + ">" + escaped(block.text()) + "</" + tag + ">";
    }

    @Override
    public String paragraph(Block.Paragraph block) {
        String words = said(block.text());
        return "<p>" + (block.bold() ? "<strong>" + words + "</strong>" : words) + "</p>";
    }

    @Override
    public String table(Table block) {
        StringBuilder html = new StringBuilder("<table><thead><tr>");
        for (Table.Column column : block.columns())
            html.append("<th class=\"")
                    .append(align(column))
                    .append("\">")
                    .append(escaped(column.title()))
                    .append("</th>");
        html.append("</tr></thead><tbody>\n");
        for (Table.Row row : block.rows()) html.append(row(block, row));
        return html.append("</tbody></table>").toString();
    }

    private static String row(Table table, Table.Row row) {
        String of = row.of().isEmpty() ? "" : " data-of=\"" + escaped(row.of()) + "\"";
        if (row.kind() == Table.RowKind.GROUP)
            return "<tr class=\"group\"" + of + "><th colspan=\""
                    + table.columns().size() + "\">" + escaped(row.cells().get(0)) + "</th></tr>\n";
        StringBuilder html = new StringBuilder("<tr");
        if (row.kind() == Table.RowKind.TOTAL) html.append(" class=\"total\"");
        html.append(of).append('>');
        for (int i = 0; i < row.cells().size(); i++)
            html.append("<td class=\"")
                    .append(align(table.columns().get(i)))
                    .append("\">")
                    .append(said(row.cells().get(i)))
                    .append("</td>");
        return html.append("</tr>\n").toString();
    }

    private static String align(Table.Column column) {
        return switch (column.align()) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case CENTRE -> "centre";
        };
    }

    @Override
    public String note(Block.Note block) {
        return "<p class=\"note\">" + said(block.text()) + "</p>";
    }

    @Override
    public String caution(Block.Caution block) {
        return "<section class=\"caution\"><h4>\u25b3 " + escaped(block.title()) + "</h4>" + list("ul", block.lines())
                + "</section>";
    }

    @Override
    public String formula(Block.Formula block) {
        StringBuilder html = new StringBuilder("<section class=\"formula\"><p><strong>");
        html.append(escaped(block.what())).append("</strong> <span class=\"clause\">");
        html.append(escaped(block.clause())).append("</span></p>");
        for (String line : List.of(block.formula(), block.numbers(), block.result()))
            if (!line.isEmpty()) html.append("<p>").append(escaped(line)).append("</p>");
        return html.append("</section>").toString();
    }

    @Override
    public String worked(Block.Worked block) {
        StringBuilder html = new StringBuilder("<section class=\"formula\"><p><strong>");
        html.append(escaped(block.what())).append("</strong> <span class=\"clause\">");
        html.append(escaped(block.clause())).append("</span></p>");
        if (!block.where().isEmpty())
            html.append("<p class=\"note\">").append(escaped(block.where())).append("</p>");
        for (WorkedLine line : block.lines()) {
            html.append("<p>").append(escaped(line.text()));
            if (!line.note().isEmpty())
                html.append(" <span class=\"clause\">")
                        .append(escaped(line.note()))
                        .append("</span>");
            html.append("</p>");
        }
        return html.append("</section>").toString();
    }

    @Override
    public String picture(Block.Picture block) {
        return "<figure>" + SvgPlot.inPage(block.drawing()) + "<figcaption>" + escaped(block.caption())
                + "</figcaption></figure>";
    }

    @Override
    public String pageBreak(Block.PageBreak block) {
        return "<hr>";
    }

    @Override
    public String tickList(Block.TickList block) {
        return list(block.numbered() ? "ol" : "ul", block.items()).replaceFirst("l>", "l class=\"ticks\">");
    }

    @Override
    public String blank(Block.Blank block) {
        return "<p class=\"blank\">" + escaped(String.join(" \u00b7 ", block.labels())) + "</p>";
    }

    private static String list(String tag, List<String> items) {
        StringBuilder html = new StringBuilder("<" + tag + ">");
        for (String item : items) html.append("<li>").append(said(item)).append("</li>");
        return html.append("</").append(tag).append('>').toString();
    }

    /** Escaped, every measure kept on one line: a browser breaks {@code 2-3/8"} after its hyphen. */
    private static String said(String text) {
        Matcher measure = MEASURE.matcher(text);
        StringBuilder html = new StringBuilder();
        int from = 0;
        while (measure.find()) {
            html.append(escaped(text.substring(from, measure.start())))
                    .append("<span class=\"measure\">")
                    .append(escaped(measure.group()))
                    .append("</span>");
            from = measure.end();
        }
        return html.append(escaped(text.substring(from))).toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
