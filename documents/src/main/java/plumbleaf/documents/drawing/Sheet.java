package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** A sheet of drawings: border with zones, our title block at the right edge, and drawings each at its own scale. */
public record Sheet(
        String name, PaperSize paper, boolean landscape, TitleBlock block, List<Viewport> viewports, List<Mark> loose) {
    private static final double EDGE_IN = 0.30;
    private static final double ZONE_IN = 0.20;
    private static final double PAD_IN = 0.15;
    private static final double ZONE_LONG_IN = 2.2;

    public Sheet {
        viewports = List.copyOf(viewports);
        loose = List.copyOf(loose);
    }

    public double widthIn() {
        return landscape ? paper.longIn() : paper.shortIn();
    }

    public double heightIn() {
        return landscape ? paper.shortIn() : paper.longIn();
    }

    /** Where drawings may go on such a sheet, on paper. */
    public static Box room(PaperSize paper, boolean landscape) {
        Box border = border(paper, landscape);
        return new Box(
                border.minX() + PAD_IN,
                border.minY() + PAD_IN,
                border.maxX() - blockWidth(paper) - PAD_IN,
                border.maxY() - PAD_IN);
    }

    private static Box border(PaperSize paper, boolean landscape) {
        double wide = landscape ? paper.longIn() : paper.shortIn();
        double high = landscape ? paper.shortIn() : paper.longIn();
        return new Box(0, 0, wide, high).grown(-EDGE_IN - ZONE_IN);
    }

    private static double blockWidth(PaperSize paper) {
        return paper == PaperSize.LETTER || paper == PaperSize.A4 ? 2.35 : 2.75;
    }

    /** The whole sheet as one page of marks; {@code number} such as {@code 1 of 3}. */
    public Drawing page(String number) {
        Box border = border(paper, landscape);
        List<Mark> marks = new ArrayList<>();
        for (Viewport viewport : viewports) marks.addAll(viewport.marks());
        marks.addAll(loose);
        marks.addAll(zones(border));
        marks.add(Stroke.box(border, Look.visible(Layer.SHEET).as(LineKind.HEAVY)));
        Box column = new Box(border.maxX() - blockWidth(paper), border.minY(), border.maxX(), border.maxY());
        marks.addAll(block.marks(column, number));
        return Drawing.page(name, widthIn(), heightIn(), marks);
    }

    private static List<Mark> zones(Box border) {
        List<Mark> marks = new ArrayList<>();
        Box outer = border.grown(ZONE_IN);
        Look thin = Look.thin(Layer.SHEET).in(Ink.SECOND);
        marks.add(Stroke.box(outer, thin));
        int across = (int) Math.max(2, Math.round(border.width() / ZONE_LONG_IN));
        int up = (int) Math.max(2, Math.round(border.height() / ZONE_LONG_IN));
        for (int i = 0; i < across; i++) {
            double x = border.minX() + border.width() * (i + 0.5) / across;
            String name = Integer.toString(i + 1);
            zone(marks, new Point(x, border.minY() - ZONE_IN / 2), name, thin);
            zone(marks, new Point(x, border.maxY() + ZONE_IN / 2), name, thin);
            if (i == 0) continue;
            double tick = border.minX() + border.width() * i / across;
            marks.add(Stroke.line(new Point(tick, outer.minY()), new Point(tick, border.minY()), thin));
            marks.add(Stroke.line(new Point(tick, border.maxY()), new Point(tick, outer.maxY()), thin));
        }
        for (int i = 0; i < up; i++) {
            double y = border.maxY() - border.height() * (i + 0.5) / up;
            String name = Character.toString((char) ('A' + i));
            zone(marks, new Point(border.minX() - ZONE_IN / 2, y), name, thin);
            zone(marks, new Point(border.maxX() + ZONE_IN / 2, y), name, thin);
            if (i == 0) continue;
            double tick = border.maxY() - border.height() * i / up;
            marks.add(Stroke.line(new Point(outer.minX(), tick), new Point(border.minX(), tick), thin));
            marks.add(Stroke.line(new Point(border.maxX(), tick), new Point(outer.maxX(), tick), thin));
        }
        return marks;
    }

    private static void zone(List<Mark> marks, Point at, String name, Look look) {
        marks.add(Text.small(at, name).centred().with(look));
    }
}
