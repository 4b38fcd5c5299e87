package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/**
 * The holes of a run side by side under one grade, to scale: how deep each is dug, how deep it has to be, and how far frost reaches. The
 * ground between them is left out.
 */
record HolePicture(String run, List<PostDesign> posts, Length frost, DisplayUnits units, double wideIn) {
    private static final double BETWEEN_IN = 14;
    private static final double MOST_HIGH_IN = 1.9;
    private static final double STUMP_IN = 8;
    private static final double SIDE_IN = 0.85;
    private static final double WORDS_APART_IN = 0.12;

    /** Where the bottom of a hole is taken hold of. */
    static String bottom(PostDesign post) {
        return post.footingId() + ".depth";
    }

    /** How many stand side by side with room for their depths. */
    static int most(List<PostDesign> posts, DisplayUnits units, double wideIn) {
        double words = posts.stream()
                .mapToDouble(post -> Math.max(width(units.length(post.depth())), width(units.length(needed(post)))))
                .max()
                .orElse(1);
        return Math.max(1, (int) Math.floor((wideIn - SIDE_IN) / (words + WORDS_APART_IN)));
    }

    private static double width(String words) {
        return Lettering.width(words, Text.SMALL, Text.Weight.SEMIBOLD);
    }

    private String name() {
        String ends = posts.size() == 1
                ? posts.get(0).id()
                : posts.get(0).id() + " to " + posts.get(posts.size() - 1).id();
        return "Holes of run " + run + ", " + ends + ": as dug, and a line across where each has to reach";
    }

    Drawing drawing() {
        double pitch =
                posts.stream().mapToDouble(post -> post.hole().inches()).max().orElse(12) + BETWEEN_IN;
        double deepest = Math.max(
                frost.inches(),
                posts.stream()
                        .mapToDouble(post ->
                                Math.max(post.depth().inches(), needed(post).inches()))
                        .max()
                        .orElse(24));
        double wide = pitch * posts.size();
        Scale scale = Scale.ratio(Math.max(wide / (wideIn - SIDE_IN), (deepest + STUMP_IN) / MOST_HIGH_IN));
        List<Mark> marks = new ArrayList<>();
        marks.add(Area.plain(
                new Box(-pitch / 2, -scale.real(0.07), wide - pitch / 2, 0).corners(),
                Material.SOIL,
                Look.thin(Layer.GROUND)));
        marks.add(Stroke.line(
                Point.at(-pitch / 2, 0),
                Point.at(wide - pitch / 2, 0),
                Look.visible(Layer.GROUND).as(LineKind.HEAVY)));
        for (int i = 0; i < posts.size(); i++) hole(marks, posts.get(i), i * pitch, scale);
        if (!frost.isZero()) frost(marks, wide - pitch / 2, pitch, scale);
        return Drawing.of(name(), scale, marks);
    }

    private void hole(List<Mark> marks, PostDesign post, double x, Scale scale) {
        double half = post.hole().inches() / 2;
        double depth = post.depth().inches();
        double needed = needed(post).inches();
        boolean shallow = needed > depth + 1e-6;
        Look hole = Look.thin(Layer.CHART).of(post.footingId());
        Look steel = Look.thin(Layer.CHART).of(post.id());
        double postHalf = post.post().width().inches() / 2;
        double foot = post.post().outOfGround().inches() - post.length().inches();
        marks.add(Area.edged(new Box(x - half, -depth, x + half, 0).corners(), Material.CONCRETE, hole));
        marks.add(Area.edged(
                new Box(x - postHalf, Math.min(0, foot), x + postHalf, STUMP_IN).corners(),
                Material.STEEL_FACE,
                steel));
        marks.add(Text.small(Point.at(x, STUMP_IN + scale.real(0.05)), post.id())
                .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                .of(post.id()));
        if (needed > 0)
            marks.add(Stroke.line(
                    Point.at(x - half - BETWEEN_IN * 0.25, -needed),
                    Point.at(x + half + BETWEEN_IN * 0.25, -needed),
                    new Look(Layer.CHART, LineKind.VISIBLE, shallow ? Ink.MUST_FIX : Ink.INK, post.footingId())));
        marks.add(Stroke.line(
                Point.at(x - half, -depth),
                Point.at(x + half, -depth),
                new Look(Layer.CHART, LineKind.HEAVY, Ink.CHALK, bottom(post))));
        Text words = Text.small(
                        Point.at(x, -Math.max(depth, needed) - scale.real(0.06)),
                        shallow ? units.length(needed(post)) : units.length(post.depth()))
                .anchored(Text.Across.MIDDLE, Text.Up.TOP)
                .with(Look.note().in(shallow ? Ink.MUST_FIX : Ink.INK).of(post.footingId()));
        marks.add(shallow ? words.bold() : words);
    }

    private void frost(List<Mark> marks, double right, double pitch, Scale scale) {
        marks.add(Stroke.line(
                Point.at(-pitch / 2, -frost.inches()),
                Point.at(right, -frost.inches()),
                Look.hidden(Layer.CHART).in(Ink.SECOND)));
        marks.add(Text.small(Point.at(right + scale.real(0.06), -frost.inches()), "frost " + units.length(frost))
                .anchored(Text.Across.START, Text.Up.MIDDLE)
                .with(Look.note().in(Ink.SECOND)));
    }

    private static Length needed(PostDesign post) {
        return post.footing().map(is -> is.depthNeeded()).orElse(Length.ZERO);
    }
}
