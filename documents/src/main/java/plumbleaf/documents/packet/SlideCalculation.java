package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.quantity.DecimalText;
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
        double weight = gate.leaf().weight().wet().pounds();
        double x = gate.leaf().weight().centreOfGravity().r().inches()
                - shape.frontRollers().inches();
        double s = shape.spacing().inches();
        paper.add(new Block.Formula(
                "Rollers under dead load, leaf closed",
                "statics of an overhanging beam",
                "Rf = W (1 + x / s), Rr = - W x / s; W leaf with wet wood, x its center of gravity beyond the front rollers, s between the rollers",
                DecimalText.fixed(weight, 2) + " lb, x " + inch(x) + ", s " + inch(s),
                DecimalText.fixed(weight * (1 + x / s), 0) + " lb on the front rollers, "
                        + DecimalText.fixed(Math.abs(weight * x / s), 0)
                        + (x > 0 ? " lb of uplift at the rear ones" : " lb on the rear ones")));
        gate.carried().ifPresent(carried -> carried(paper, gate, carried, wide));
        if (gate.carried().isEmpty()) paper.say("How it is carried is not worked out: see the findings.");
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
        CalculationBook.links(paper, gate.loadPath());
    }

    private static String inch(double inches) {
        return DecimalText.fixed(inches, 4) + " in.";
    }
}
