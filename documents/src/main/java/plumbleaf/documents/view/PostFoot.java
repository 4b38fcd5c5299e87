package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Leader;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.BasePlate;
import plumbleaf.engine.support.Support;

/** How a post stands on concrete: its plate cut through and from above, or the socket it is grouted in. */
public final class PostFoot {
    /** Of the post and of the concrete beside it that much is shown. */
    private static final double SHOWN_IN = 7;

    /** From the slab to its rows of dimensions, which leaves room for the note between post and rows. */
    private static final double ROWS_OFF_IN = 0.45;

    private static final double NOTE_OFF_IN = 0.2;

    /** A nut and what stands through it, as drawn: the anchor's maker says his own. */
    private static final double NUT_IN = 0.9;

    private final PostStock section;
    private final DisplayUnits units;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();
    private double left;
    private double right;

    private PostFoot(PostStock section, DisplayUnits units, Scale scale) {
        this.section = section;
        this.units = units;
        this.scale = scale;
    }

    /** Nothing for a post that stands in the ground or on a wall. */
    public static Optional<Drawing> of(Support support, PostStock section, DisplayUnits units, Scale scale) {
        PostFoot foot = new PostFoot(section, units, scale);
        return support.match(
                footing -> Optional.empty(),
                driven -> Optional.empty(),
                plate -> Optional.of(foot.plate(plate)),
                socket -> Optional.of(foot.socket(socket)),
                wall -> Optional.empty(),
                existing -> Optional.empty());
    }

    private Drawing plate(Support.SlabPlate on) {
        BasePlate plate = on.plate();
        Anchors anchors = on.anchors();
        double half = plate.side().inches() / 2;
        double thick = plate.thickness().inches();
        double reach = plate.anchorSpacing().inches() / 2;
        double deep = anchors.embedment().inches();
        slab(half + SHOWN_IN, on.slab().thickness().inches(), 0);
        marks.add(Area.edged(
                new Box(-half, 0, half, thick).corners(), Material.STEEL_FACE, Look.visible(Layer.HARDWARE)));
        post(thick, thick + SHOWN_IN);
        double bolt = anchors.diameter().inches() / 2;
        for (double x : List.of(-reach, reach)) {
            marks.add(Stroke.box(new Box(x - bolt, -deep, x + bolt, thick + NUT_IN), Look.visible(Layer.HARDWARE)));
            marks.add(Stroke.line(
                    new Point(x - 1.8 * bolt, thick + bolt),
                    new Point(x + 1.8 * bolt, thick + bolt),
                    Look.visible(Layer.HARDWARE).as(LineKind.HEAVY)));
        }
        marks.addAll(new DimensionRows(DimensionRows.Side.LEFT, left - scale.real(0.3), scale)
                .add(
                        new Point(left, -on.slab().thickness().inches()),
                        new Point(left, 0),
                        Sizes.inches(units, on.slab().thickness().inches()),
                        "")
                .marks());
        marks.addAll(new DimensionRows(DimensionRows.Side.RIGHT, right + scale.real(ROWS_OFF_IN), scale)
                .add(
                        new Point(reach, -deep),
                        new Point(reach, 0),
                        Sizes.inches(units, anchors.embedment().inches()),
                        "")
                .add(
                        new Point(half, 0),
                        new Point(half, thick),
                        Sizes.inches(units, plate.thickness().inches()),
                        "")
                .marks());
        marks.add(new Leader(
                new Point(section.width().inches() / 2, thick),
                note(thick + SHOWN_IN * 0.75),
                List.of(
                        "weld all round",
                        "4 anchors " + Sizes.inches(units, anchors.diameter().inches())),
                Look.note()));
        above(plate, anchors, right + scale.real(2.2) + half);
        return Drawing.of("Post on its plate", scale, marks);
    }

    private void above(BasePlate plate, Anchors anchors, double middle) {
        double half = plate.side().inches() / 2;
        double reach = plate.anchorSpacing().inches() / 2;
        double up = half;
        marks.add(Area.edged(
                new Box(middle - half, up - half, middle + half, up + half).corners(),
                Material.STEEL_FACE,
                Look.visible(Layer.HARDWARE)));
        Look post = Look.visible(Layer.POSTS);
        double wide = section.width().inches() / 2;
        double deep = section.depth().inches() / 2;
        if (section.isRound()) marks.add(Arc.circle(new Point(middle, up), wide, post));
        else marks.add(Stroke.box(new Box(middle - wide, up - deep, middle + wide, up + deep), post));
        for (double x : List.of(-reach, reach))
            for (double y : List.of(-reach, reach))
                marks.add(Arc.circle(
                        new Point(middle + x, up + y), anchors.diameter().inches() / 2, Look.visible(Layer.HARDWARE)));
        double foot = up - half;
        marks.addAll(new DimensionRows(DimensionRows.Side.BELOW, foot - scale.real(0.3), scale)
                .add(
                        new Point(middle - reach, foot),
                        new Point(middle + reach, foot),
                        Sizes.inches(units, plate.anchorSpacing().inches()),
                        "")
                .add(
                        new Point(middle - half, foot),
                        new Point(middle + half, foot),
                        Sizes.inches(units, plate.side().inches()),
                        "")
                .marks());
    }

    private Drawing socket(Support.CoreSocket in) {
        double half = section.width().inches() / 2 + Support.CoreSocket.RING.inches();
        double deep = in.depth().inches();
        double thick = in.slab().thickness().inches();
        slab(half + SHOWN_IN, thick, 0);
        marks.add(Area.edged(new Box(-half, -deep, half, 0).corners(), Material.CLEAR, Look.visible(Layer.FOOTINGS)));
        post(-deep, SHOWN_IN);
        marks.addAll(new DimensionRows(DimensionRows.Side.LEFT, left - scale.real(0.3), scale)
                .add(
                        new Point(left, -thick),
                        new Point(left, 0),
                        Sizes.inches(units, in.slab().thickness().inches()),
                        "")
                .marks());
        marks.addAll(new DimensionRows(DimensionRows.Side.RIGHT, right + scale.real(ROWS_OFF_IN), scale)
                .add(
                        new Point(half, -deep),
                        new Point(half, 0),
                        Sizes.inches(units, in.depth().inches()),
                        "")
                .marks());
        marks.addAll(new DimensionRows(DimensionRows.Side.BELOW, -Math.max(thick, deep) - scale.real(0.3), scale)
                .add(new Point(-half, -deep), new Point(half, -deep), Sizes.inches(units, 2 * half) + " core", "")
                .marks());
        marks.add(new Leader(
                new Point((half + section.width().inches() / 2) / 2, -deep / 3),
                note(SHOWN_IN * 0.75),
                List.of("grout,", "full to the top"),
                Look.note()));
        return Drawing.of("Post in its socket", scale, marks);
    }

    /** Close to the post: a length that has no room between its arrows stands over them, beside the post too. */
    private Point note(double up) {
        return new Point(section.width().inches() / 2 + scale.real(NOTE_OFF_IN), up);
    }

    private void slab(double half, double thick, double top) {
        left = -half;
        right = half;
        Look look = Look.visible(Layer.FOOTINGS);
        marks.add(Area.plain(new Box(-half, top - thick, half, top).corners(), Material.CONCRETE, look));
        marks.add(Stroke.line(new Point(-half, top), new Point(half, top), look));
        marks.add(Stroke.line(new Point(-half, top - thick), new Point(half, top - thick), look));
        for (double x : List.of(-half, half))
            marks.add(Stroke.line(new Point(x, top - thick), new Point(x, top), look.as(LineKind.PHANTOM)));
    }

    private void post(double from, double to) {
        double half = section.width().inches() / 2;
        Look look = Look.visible(Layer.POSTS);
        marks.add(Area.plain(new Box(-half, from, half, to).corners(), Material.STEEL_FACE, look));
        for (double x : List.of(-half, half)) marks.add(Stroke.line(new Point(x, from), new Point(x, to), look));
        marks.add(Stroke.line(new Point(-half, from), new Point(half, from), look));
        marks.add(Stroke.line(new Point(-half, to), new Point(half, to), look.as(LineKind.PHANTOM)));
    }
}
