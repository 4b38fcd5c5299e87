package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing at its own scale on a sheet.
 *
 * @param lowerLeft where its frame's lower left corner lies on the paper
 * @param title     printed under it with the scale; empty for none
 */
public record Viewport(Drawing drawing, Point lowerLeft, String title) {
    /** Room the title takes under a drawing. */
    public static final double TITLE_IN = 0.42;

    /** In the middle of a room, at the drawing's own scale, the title below it. */
    public static Viewport centred(Drawing drawing, Box room, String title) {
        double foot = title.isEmpty() ? 0 : TITLE_IN;
        double x = room.centre().x() - drawing.paperWidthIn() / 2;
        double y = room.minY() + foot + (room.height() - foot - drawing.paperHeightIn()) / 2;
        return new Viewport(drawing, new Point(x, y), title);
    }

    public Box covers() {
        return Box.of(lowerLeft, lowerLeft.plus(drawing.paperWidthIn(), drawing.paperHeightIn()));
    }

    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(drawing.onPaper(lowerLeft));
        if (title.isEmpty()) return marks;
        Point at = lowerLeft.plus(drawing.paperWidthIn() / 2, -0.16);
        Text heading = Text.medium(at, title).bold().anchored(Text.Across.MIDDLE, Text.Up.MIDDLE);
        marks.add(heading);
        double half = heading.widthIn() / 2;
        marks.add(Stroke.line(at.plus(-half, -0.09), at.plus(half, -0.09), Look.visible(Layer.SHEET)));
        if (!drawing.scale().words().isEmpty())
            marks.add(Text.small(at.plus(0, -0.19), "Scale " + drawing.scale().words())
                    .anchored(Text.Across.MIDDLE, Text.Up.MIDDLE));
        return marks;
    }
}
