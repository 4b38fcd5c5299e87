package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One list of marks in real inches.
 *
 * @param name  what it is a drawing of; its title where it is read aloud
 * @param scale what it is drawn for: lettering and arrows are sized by it
 * @param frame what is shown of it; its own extents unless given
 * @param order which mark lies over which
 */
public record Drawing(String name, Scale scale, List<Mark> marks, Box frame, Order order) {
    private static final double MARGIN_IN = 0.08;

    /** Which mark lies over which. */
    public enum Order {
        /** Fills and hatches, then lines, then heads and balloons, then lettering. */
        GROUND_FIRST,
        /** As the list says: later marks lie over earlier ones. */
        AS_GIVEN
    }

    public Drawing {
        marks = List.copyOf(marks);
        if (frame.isNothing()) throw new IllegalArgumentException("A drawing needs a mark or a frame: " + name);
    }

    /** Shows all its marks and a little round them. */
    public static Drawing of(String name, Scale scale, List<Mark> marks) {
        return new Drawing(
                name,
                scale,
                marks,
                extents(arranged(marks, scale), scale).grown(scale.real(MARGIN_IN)),
                Order.GROUND_FIRST);
    }

    /** A page or sheet: full size, its frame the paper, later marks over earlier ones. */
    public static Drawing page(String name, double widthIn, double heightIn, List<Mark> marks) {
        return new Drawing(name, Scale.FULL, marks, new Box(0, 0, widthIn, heightIn), Order.AS_GIVEN);
    }

    public Drawing framed(Box newFrame) {
        return new Drawing(name, scale, marks, newFrame, order);
    }

    public double paperWidthIn() {
        return scale.paper(frame.width());
    }

    public double paperHeightIn() {
        return scale.paper(frame.height());
    }

    /** All its marks in what a plotter knows, in the order they are drawn. */
    public List<Primitive> primitives() {
        if (order == Order.GROUND_FIRST) return arranged(marks, scale);
        return marks.stream().flatMap(mark -> mark.drawn(scale).stream()).toList();
    }

    private static List<Primitive> arranged(List<Mark> marks, Scale scale) {
        List<Primitive> fills = new ArrayList<>();
        List<Primitive> lines = new ArrayList<>();
        List<Primitive> letters = new ArrayList<>();
        List<Primitive> heads = new ArrayList<>();
        for (Mark mark : marks) {
            boolean ground = mark instanceof Area || mark instanceof Fill;
            for (Primitive part : mark.drawn(scale)) {
                if (part instanceof Text) letters.add(part);
                else if (part instanceof Fill) (ground ? fills : heads).add(part);
                else if (part instanceof Dots) (ground ? fills : lines).add(part);
                else if (ground) fills.add(part);
                else if (mark instanceof Balloon || mark instanceof JointTag) heads.add(part);
                else lines.add(part);
            }
        }
        List<Primitive> all = new ArrayList<>(fills);
        all.addAll(lines);
        all.addAll(heads);
        all.addAll(letters);
        return List.copyOf(all);
    }

    /** What the primitives cover. */
    public static Box extents(List<Primitive> primitives, Scale scale) {
        Box box = Box.NOTHING;
        for (Primitive primitive : primitives) box = box.with(primitive.extents(scale));
        return box;
    }

    public Box extents() {
        return extents(primitives(), scale);
    }

    /** This drawing on paper: its marks as primitives in paper inches, its frame's lower left corner at a place. */
    public List<Primitive> onPaper(Point lowerLeft) {
        double factor = 1 / scale.realPerPaper();
        double dx = lowerLeft.x() - frame.minX() * factor;
        double dy = lowerLeft.y() - frame.minY() * factor;
        return primitives().stream()
                .<Primitive>map(part -> part.placed(factor, dx, dy))
                .toList();
    }
}
