package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Stroke;

/** Two states of one drawing over each other: as it is, and dashed every line of before that is not there any more. */
public final class AsItWas {
    private static final Set<Layer> SOLID_THINGS = Set.of(
            Layer.GROUND,
            Layer.FENCE,
            Layer.PICKETS,
            Layer.POSTS,
            Layer.FOOTINGS,
            Layer.GATE,
            Layer.MEMBERS,
            Layer.HARDWARE,
            Layer.SWING);

    private AsItWas() {}

    /** Nothing where no line of before is gone: then the drawing would say nothing. */
    public static Optional<Drawing> over(Drawing now, Drawing then) {
        Set<Primitive> still = new HashSet<>(now.primitives());
        List<Mark> gone = new ArrayList<>();
        for (Primitive part : then.primitives()) {
            if (still.contains(part) || !SOLID_THINGS.contains(part.look().layer())) continue;
            part.match(
                    stroke -> gone.add(new Stroke(stroke.points(), stroke.closed(), before(stroke.look()))),
                    arc -> gone.add(
                            new Arc(arc.centre(), arc.radius(), arc.startRad(), arc.sweepRad(), before(arc.look()))),
                    fill -> false,
                    dots -> false,
                    text -> false,
                    raster -> false);
        }
        if (gone.isEmpty()) return Optional.empty();
        List<Mark> both = new ArrayList<>(now.marks());
        both.addAll(gone);
        Drawing all = Drawing.of(now.name(), now.scale(), both);
        return Optional.of(all.framed(all.frame().with(now.frame())));
    }

    private static Look before(Look look) {
        return new Look(look.layer(), LineKind.HIDDEN, Ink.CHALK, look.of());
    }
}
