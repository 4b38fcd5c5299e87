package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Who issues a paper, as every title block and first page says it.
 *
 * @param lines  name first, then address, phone, license
 * @param emblem the own mark; empty for none
 * @param code   a square of side 1 that leads a phone to the job; empty where its address is not known
 */
public record Letterhead(List<String> lines, List<Emblem> emblem, List<Primitive> code) {
    private static final double CODE_IN = 0.85;

    public Letterhead {
        lines = List.copyOf(lines);
        emblem = List.copyOf(emblem);
        code = List.copyOf(code);
    }

    public static Letterhead of(List<String> lines) {
        return new Letterhead(lines, List.of(), List.of());
    }

    /** The code with its lower left corner at a place. */
    public List<Mark> codeAt(Point lowerLeft, double sideIn) {
        return code.stream()
                .<Mark>map(part -> part.placed(sideIn, lowerLeft.x(), lowerLeft.y()))
                .toList();
    }

    /** Height that mark and code take at the head of a page beside its title; 0 for none. */
    public double headIn() {
        return code.isEmpty() ? 0 : CODE_IN * 0.75;
    }

    /** Mark and code at the right of a title, flush with the margin. */
    public List<Mark> atRight(double right, double top) {
        List<Mark> marks = new ArrayList<>();
        double edge = right;
        if (!code.isEmpty()) {
            double side = CODE_IN * 0.75;
            marks.addAll(codeAt(new Point(right - side, top - side), side));
            edge -= side + 0.12;
        }
        for (Emblem each : emblem) {
            Box box = each.within(0, top, 1.5, code.isEmpty() ? 0.36 : CODE_IN * 0.75);
            marks.add(new Raster(each, box, Look.note().on(Layer.SHEET)).placed(1, edge - box.maxX(), 0));
        }
        return marks;
    }
}
