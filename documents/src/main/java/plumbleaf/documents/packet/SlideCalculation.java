package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.SlideSag;

/** A slide gate in the calculation book: its rollers by hand, the drop of its nose by cause, and every link to the soil. */
final class SlideCalculation {
    private SlideCalculation() {}

    static void add(Paper.Builder paper, PacketSubject subject, SlidePaper gate, double wide) {
        SlideShape shape = gate.subject().plan().shape();
        paper.heading("Slide gate " + gate.id());
        paper.say(gate.sentence() + ". Frame " + gate.subject().parts().frame().name() + "; roller posts "
                + gate.subject().parts().hingePost().name() + "; "
                + gate.subject().plan().rollers().name()
                + ". Its leaf travels level; forces are solved in space, closed, at"
                + " twelve places of its way, and open.");
        WeightCalculation.add(paper, gate.leaf());
        paper.add(new Block.Worked(
                "Rollers under dead load, leaf closed",
                "statics of an overhanging beam",
                "W leaf with wet wood, a its center of gravity, f front rollers, s between the rollers",
                rollers(gate.leaf(), shape)));
        gate.carried().ifPresent(carried -> carried(paper, gate, carried, wide));
        if (gate.carried().isEmpty()) paper.say("How it is carried is not worked out: see the findings.");
    }

    private static List<WorkedLine> rollers(Leaf leaf, SlideShape shape) {
        double weight = leaf.weight().wet().pounds();
        double spacing = shape.spacing().inches();
        double beyond = leaf.weight().centreOfGravity().r().inches()
                - shape.frontRollers().inches();
        WorkedLine x = WorkedLine.of("x", "a - f")
                .put("a", leaf.weight().centreOfGravity().r().inches(), "in.")
                .put("f", shape.frontRollers().inches(), "in.")
                .note("beyond the front rollers")
                .gives(beyond, "in.");
        WorkedLine front = WorkedLine.of("Rf", "W \u00d7 (1 + x / s)")
                .put("W", leaf.weight().wet())
                .put(x)
                .put("s", shape.spacing())
                .note("on the front rollers")
                .gives(weight * (1 + beyond / spacing), "lb");
        WorkedLine rear = WorkedLine.of("Rr", "W \u00d7 x / s")
                .put("W", leaf.weight().wet())
                .put(x)
                .put("s", shape.spacing())
                .note(beyond > 0 ? "uplift at the rear rollers" : "below zero: the rear rollers are pressed")
                .gives(weight * beyond / spacing, "lb");
        return List.of(x, front, rear);
    }

    private static void carried(Paper.Builder paper, SlidePaper gate, SlideDesign carried, double wide) {
        SlideSag sag = carried.sag();
        SlideShape shape = gate.subject().plan().shape();
        double lever = (shape.nose().inches() - shape.frontRollers().inches())
                / shape.spacing().inches();
        paper.add(new Block.Formula(
                "Play of the rollers at the nose",
                "geometry",
                "d = p x / s; p play between the wheels, x from the front rollers to the nose",
                "p " + inch(gate.subject().plan().rollers().play().inches()) + ", x / s "
                        + inch(shape.nose().inches() - shape.frontRollers().inches()) + " / "
                        + inch(shape.spacing().inches()) + " = " + DecimalText.fixed(lever, 4),
                inch(sag.byCause().play().inches())));
        paper.add(new Block.Formula(
                "Drop of the nose under dead load, closed and not yet received",
                "unit load method; play beside it",
                "d = sum of integral (M m / EI + N n / EA + T t / GJ) + footings + play",
                "frame " + inch(sag.byCause().frame().inches()) + ", play "
                        + inch(sag.byCause().play().inches()) + ", posts "
                        + inch(sag.byCause().posts().inches()) + ", footings "
                        + inch(sag.byCause().footings().inches()),
                inch(sag.total().inches()) + "; soft soil " + inch(sag.softly().inches()) + ", stiff "
                        + inch(sag.stiffly().inches())));
        paper.add(new Block.Formula(
                "Setting",
                "geometry",
                "rear rollers low by (d - frame) s / x; the frame's own part is built up in the jig",
                inch(sag.atSetting().inches()) + " / " + DecimalText.fixed(lever, 4),
                inch(sag.rearLower().inches())));
        paper.add(SlideSteps.forces(carried));
        paper.add(new Block.Picture(
                ChainPicture.of(gate.id(), LoadChain.of(gate.loadPath()), Math.min(wide, 5), true),
                "Load path: the worst link of each kind, as the load walks it."));
        GateCalculation.links(paper, gate.loadPath());
    }

    private static String inch(double inches) {
        return DecimalText.fixed(inches, 4) + " in.";
    }
}
