package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;

/** The swing of both leaves of a pair from above, outside below. */
public final class PairSwing {
    private PairSwing() {}

    public static Drawing of(GateSubject a, GateSubject b, Scale scale) {
        List<Mark> marks = new ArrayList<>(leaf(List.of(), a, scale));
        double pins = pinsApartIn(a, b);
        List<Mark> other = leaf(lettering(marks, pins, scale), b, scale);
        marks.addAll(
                Shifted.by(other.stream().filter(mark -> !saysOutside(mark)).toList(), pins, 0, scale));
        return Drawing.of("Pair " + a.plan().gate() + ", swing from above", scale, marks);
    }

    /** From the pins of the first leaf, where the drawing has its origin, to those of the second, in real inches. */
    public static double pinsApartIn(GateSubject a, GateSubject b) {
        return a.plan().opening().clear().inches() + a.hingeFaceR() + b.hingeFaceR();
    }

    /** One word for both is enough. */
    private static boolean saysOutside(Mark mark) {
        return mark instanceof Text words && words.text().equals("outside");
    }

    /** Where the first leaf's words stand, as the second one sees them from its own pin. */
    private static List<Box> lettering(List<Mark> marks, double pins, Scale scale) {
        List<Box> boxes = new ArrayList<>();
        for (Mark mark : marks)
            for (Primitive part : mark.drawn(scale))
                if (part instanceof Text words)
                    boxes.add(words.placed(1, -pins, 0).extents(scale));
        return boxes;
    }

    private static List<Mark> leaf(List<Box> taken, GateSubject leaf, Scale scale) {
        return SwingPlan.beside(
                taken,
                leaf.mark(),
                leaf.swing(),
                leaf.leaf().outline().latchEdge().inches(),
                leaf.units(),
                scale);
    }
}
