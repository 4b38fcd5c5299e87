package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.engine.design.DropWorking;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.design.SlideGuides;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.SlideSag;

/** A slide gate in the calculation book: its rollers by hand, the drop of its nose by cause, and every link to the soil. */
final class SlideCalculation {
    private SlideCalculation() {}

    static void add(Paper.Builder paper, PacketSubject subject, SlidePaper gate, double wide) {
        SlideShape shape = gate.subject().plan().shape();
        paper.heading("Slide gate " + gate.id());
        paper.say(gate.sentence() + ". Frame " + gate.subject().parts().frame().name()
                + "; roller posts, whose guide wheels make them its guide posts, "
                + gate.subject().parts().hingePost().name() + "; "
                + gate.subject().plan().rollers().name()
                + ". Its leaf travels level; forces are solved in space, closed, at"
                + " twelve places of its way, and open.");
        WeightCalculation.add(paper, gate.leaf(), "the opening's face");
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
        paper.add(new Block.Worked(
                "Drop of the nose under dead load, closed and not yet received",
                "unit load method, play beside it: \u03a3 integral of (M m / EI + N n / EA + T t / GJ) + footings + play",
                "l the nose and f the front rollers from the opening's face, s between the rollers; the frame's own part is built up in the jig; soft soil "
                        + inch(sag.softly().inches()) + ", stiff "
                        + inch(sag.stiffly().inches()),
                nose(gate, shape, sag)));
        Working frame =
                DropWorking.of(sag.frameShares(), "frame", sag.byCause().frame().inches(), "the lower nose corner");
        paper.add(new Block.Worked(frame.what(), frame.clause(), frame.where(), frame.lines()));
        paper.add(new Block.Worked(
                "What its receiver must forgive in the years after, likely soil",
                "geometry; shares judgement",
                "wear of each wheel, creep and season of the ground, what a person leaves, a person on it",
                after(sag, shape)));
        paper.add(SlideSteps.forces(carried));
        for (Working each : SlideGuides.of(carried))
            paper.add(new Block.Worked(each.what(), each.clause(), each.where(), each.lines()));
        paper.add(new Block.Picture(
                ChainPicture.of(gate.id(), LoadChain.of(gate.loadPath()), Math.min(wide, 5), true),
                "Load path: the worst link of each kind, as the load walks it."));
        GateCalculation.links(paper, gate.loadPath());
    }

    private static WorkedLine lever(SlideShape shape) {
        return WorkedLine.of("v", "(l - f) / s")
                .put("l", shape.nose().inches(), "in.")
                .put("f", shape.frontRollers().inches(), "in.")
                .put("s", shape.spacing())
                .note("the nose's lever over the rollers'")
                .gives((shape.nose().inches() - shape.frontRollers().inches())
                        / shape.spacing().inches());
    }

    private static List<WorkedLine> nose(SlidePaper gate, SlideShape shape, SlideSag sag) {
        WorkedLine lever = lever(shape);
        WorkedLine play = WorkedLine.of("play", "p \u00d7 v")
                .put("p", gate.subject().plan().rollers().play())
                .put(lever)
                .note("p between the wheels")
                .gives(sag.byCause().play().inches(), "in.");
        WorkedLine drop = WorkedLine.of("drop", "frame + play + posts + footings")
                .put("frame", sag.byCause().frame().inches(), "in.")
                .put(play)
                .put("posts", sag.byCause().posts().inches(), "in.")
                .put("footings", sag.byCause().footings().inches(), "in.")
                .note("frame, posts and footings by virtual work")
                .gives(sag.total().inches(), "in.");
        WorkedLine rest = WorkedLine.of("rest", "drop - frame")
                .put(drop)
                .put("frame", sag.byCause().frame().inches(), "in.")
                .note("comes when it is set")
                .gives(sag.atSetting().inches(), "in.");
        WorkedLine low = WorkedLine.of("low", "rest / v")
                .put(rest)
                .put(lever)
                .note("rear rollers set so much below level, and the nose stands level")
                .gives(sag.rearLower().inches(), "in.");
        return List.of(lever, play, drop, rest, low);
    }

    private static List<WorkedLine> after(SlideSag sag, SlideShape shape) {
        LifeJudgement life = LifeJudgement.USUAL;
        WorkedLine after = WorkedLine.of(
                        "after", "w \u00d7 (1 + 2 \u00d7 v) + (cg + cs) \u00d7 footings + cr \u00d7 person")
                .put("w", life.wear())
                .put(lever(shape))
                .put("cg", life.groundCreep())
                .put("cs", life.softSeason())
                .put("footings", sag.byCause().footings().inches(), "in.")
                .put("cr", life.residual())
                .put("person", sag.person().inches(), "in.")
                .gives(sag.afterSetting().inches(), "in.");
        return List.of(
                after,
                WorkedLine.of("nose", "after + person")
                        .put(after)
                        .put("person", sag.person().inches(), "in.")
                        .note("low by at most, once it was set level")
                        .gives(sag.low().inches(), "in."));
    }

    private static String inch(double inches) {
        return DecimalText.fixed(inches, 4) + " in.";
    }
}
