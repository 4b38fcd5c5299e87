package plumbleaf.documents;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.AngularDimension;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Balloon;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Leader;
import plumbleaf.documents.drawing.Letterhead;
import plumbleaf.documents.drawing.LevelMark;
import plumbleaf.documents.drawing.LinearDimension;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.NorthArrow;
import plumbleaf.documents.drawing.OrdinateRow;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.ScaleBar;
import plumbleaf.documents.drawing.SectionMark;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.SwingArc;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.drawing.TitleBlock;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.drawing.WeldMark;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.quantity.LengthText;

/** A drawing, a sheet and a paper that use every kind of mark and block once, for the tests of the plotters. Shapes, not designs. */
public final class Samples {
    private Samples() {}

    /** A raked frame of so many inches with everything that can be drawn on it. */
    public static Drawing frame(double wide, double high, double rise) {
        Scale scale = Scale.fitting(wide + 50, high + 50, 9, 7);
        List<Point> outline =
                List.of(Point.at(0, 0), Point.at(wide, rise), Point.at(wide, high + rise), Point.at(0, high));
        Look member = Look.visible(Layer.MEMBERS);
        List<Mark> marks = new ArrayList<>();
        marks.add(Area.edged(outline, Material.GATE_FACE, member.of("G1a")));
        marks.add(Area.edged(
                List.of(Point.at(0, 0), Point.at(2, 0), Point.at(2, high), Point.at(0, high)),
                Material.STEEL_FACE,
                member.of("G1a.m1")));
        marks.add(Area.plain(
                List.of(
                        Point.at(-10, -4),
                        Point.at(wide + 10, rise - 4),
                        Point.at(wide + 10, rise - 9),
                        Point.at(-10, -9)),
                Material.SOIL,
                Look.visible(Layer.GROUND)));
        marks.add(Area.edged(Box.of(Point.at(-8, -9), Point.at(-3, -4)).corners(), Material.CONCRETE, member));
        marks.add(Area.edged(
                Box.of(Point.at(4, high + 2), Point.at(7.5, high + 3.5)).corners(), Material.END_GRAIN, member));
        marks.add(Area.edged(
                Box.of(Point.at(9, high + 2), Point.at(12.5, high + 3.5)).corners(), Material.STEEL, member));
        marks.add(Area.edged(
                Box.of(Point.at(14, high + 2), Point.at(24, high + 5)).corners(), Material.WOOD, member));
        marks.add(Stroke.line(outline.get(0), outline.get(2), Look.centre(Layer.MEMBERS)));
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, -13, scale);
        rows.add(outline.get(0), outline.get(1), LengthText.feetAndInches(wide), "G1a");
        rows.add(Point.at(-0.75, 0), Point.at(0, 0), "3/4\"", "");
        rows.add(Point.at(wide, 0), Point.at(wide + 0.625, 0), "5/8\"", "");
        for (double x = 0; x < wide - 6; x += 6) rows.add(Point.at(x, 0), Point.at(x + 6, 0), "6\"", "");
        rows.add(Point.at(0, 0), Point.at(wide / 2, 0), LengthText.feetAndInches(wide / 2), "");
        marks.addAll(rows.marks());
        OrdinateRow heights = OrdinateRow.heights(-scale.real(0.9), scale);
        for (double z : List.of(0.0, 1.0, 9.0, 10.0, 11.0, high / 2, high - 1, high))
            heights.add(Point.at(0, z), LengthText.feetAndInches(z), "");
        marks.addAll(heights.marks());
        marks.add(LinearDimension.along(outline.get(1), outline.get(2), -0.5, LengthText.feetAndInches(high), scale));
        marks.add(new AngularDimension(
                outline.get(0), 0, outline.get(0).direction(outline.get(2)), 1.1, "56.3\u00b0", Look.dimension()));
        marks.add(new Balloon(
                Point.at(wide * 0.25, high * 0.7),
                Point.at(1, high * 0.6),
                "1",
                Look.note().of("G1a.m1")));
        marks.add(new Leader(
                Point.at(wide * 0.6, high * 0.6 + rise / 2),
                Point.at(wide * 0.5, high * 0.35),
                List.of("brace to the low", "hinge corner"),
                Look.note()));
        marks.add(new NorthArrow(Point.at(wide * 0.75, high * 0.8), 1.2, 0.7, Look.note()));
        marks.add(ScaleBar.nearly(
                Point.at(-scale.real(1), -scale.real(3.2)), 2, scale, plumbleaf.engine.quantity.DisplayUnits.US));
        marks.add(new WeldMark(
                Point.at(wide, high + rise),
                Point.at(wide + scale.real(0.5), high + rise + scale.real(0.5)),
                true,
                WeldMark.Kind.FILLET,
                WeldMark.Sides.BOTH,
                "1/8",
                "2-6",
                true,
                true,
                "TYP",
                Look.note()));
        marks.add(new SwingArc(Point.at(0, high + scale.real(0.4)), wide * 0.4, 0, 0.7, Look.thin(Layer.SWING)));
        marks.add(new SectionMark(
                Point.at(-scale.real(0.4), high * 0.45),
                Point.at(wide + scale.real(1.2), high * 0.45),
                Math.PI / 2,
                "A",
                Look.note()));
        marks.add(new LevelMark(Point.at(wide + scale.real(1.3), rise), true, "-10\"", Look.note()));
        marks.add(Text.small(
                        Point.at(wide / 2, high + scale.real(0.9)), "\u23001/2\u2033 \u00b7 90\u00b0 \u00b1 1/2 \u2610")
                .turned(0.1));
        return Drawing.of("Leaf of gate G1", scale, marks);
    }

    public static Sheet sheet(PaperSize paper) {
        Box room = Sheet.room(paper, true);
        Drawing leaf = frame(46.5, 71, 3.8);
        double fits = Math.max(
                leaf.frame().width() / room.width(), leaf.frame().height() / (room.height() - Viewport.TITLE_IN));
        Drawing sized = new Drawing(
                leaf.name(),
                Scale.ratio(Math.max(fits, leaf.scale().realPerPaper())),
                leaf.marks(),
                leaf.frame(),
                leaf.order());
        return new Sheet(
                "Gate G1",
                paper,
                true,
                new TitleBlock(
                        Letterhead.of(List.of("Sample Fence Shop", "Invented Lane 1", "(555) 010-0199")),
                        List.of("Sample yard", "A. Customer", "14 Tarn Steps"),
                        "Gate shop drawing",
                        "G1",
                        "A",
                        "2027-04-19",
                        sized.scale().words(),
                        "Stand outside, facing the closed gate: hinges on the right, swings in, away from you.",
                        TitleBlock.Release.HOLD,
                        List.of(
                                "Local code governs.",
                                "Hot dip only after vent holes are drilled: a sealed tube bursts in the bath.")),
                List.of(Viewport.centred(sized, room, "Leaf from outside")),
                List.of());
    }

    public static Paper paper(int rows) {
        Table.Builder table = Table.with(
                Column.left("Post"),
                Column.right("Station"),
                Column.right("Hole"),
                Column.words("What for"),
                Column.tick("Set"));
        for (int i = 1; i <= rows; i++) {
            if (i % 10 == 1) table.group("Run R" + (i / 10 + 1));
            table.rowAbout(
                    "P" + i,
                    "P" + i,
                    LengthText.feetAndInches(i * 91.5),
                    "10\"",
                    "line post, set from the string"
                            + (i % 7 == 0 ? " and checked twice because the ground falls away here" : ""),
                    "\u2610");
        }
        table.total("all", "", "", rows + " posts", "");
        return Paper.titled("Post schedule", new Paper.Running("Sample Fence Shop", "Sample yard", "A", "2027-04-19"))
                .flag("HOLD")
                .say(
                        "Holes are measured from grade at the post. Stations run from the zero nail and are never added up from spacings.")
                .heading("Posts")
                .add(table.table())
                .add(new Block.Caution(
                        "Before digging",
                        List.of(
                                "Call the locate service and wait for its answer.",
                                "Hand-dig within 18 in. of a mark.")))
                .heading("Check")
                .add(new Block.Formula(
                        "Moment at grade",
                        "ASCE 7-16 Figure 29.3-1",
                        "M = p s h (0.55 h)",
                        "16.2 \u00d7 8 \u00d7 6 \u00d7 (0.55 \u00d7 6)",
                        "2,566 lb-ft"))
                .note("Soil class by the owner's word: judgement.")
                .add(new Block.Picture(frame(46.5, 71, 3.8), "Leaf from outside"))
                .add(new Block.TickList(
                        List.of("String line pulled", "First post pull-tested", "Opening measured three times"), true))
                .add(new Block.Blank(List.of("Name", "Date", "Initials"), 0.4))
                .add(new Block.Blank(List.of("Seal, where one is required"), 1.2))
                .paper();
    }
}
