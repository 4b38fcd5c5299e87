package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.paper.Block;

/** Blocks set in one column without page breaks, to stand beside a drawing on its sheet. */
public record Column(List<Primitive> marks, double highIn) {
    public Column {
        marks = List.copyOf(marks);
    }

    public static Column of(List<? extends Block> blocks, double wideIn) {
        Slabs slabs = new Slabs(wideIn, Spacing.OPEN);
        List<Primitive> marks = new ArrayList<>();
        double y = 0;
        for (Block block : blocks)
            for (Slab slab : block.match(slabs)) {
                for (Primitive mark : slab.marks()) marks.add(mark.placed(1, 0, y));
                y -= slab.high();
            }
        return new Column(marks, -y);
    }

    /** Its marks with the upper left corner at a place on the sheet. */
    public List<Mark> at(Point upperLeft) {
        return marks.stream()
                .<Mark>map(mark -> mark.placed(1, upperLeft.x(), upperLeft.y()))
                .toList();
    }
}
