package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.RollerForce;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.strength.Bolt;
import plumbleaf.engine.strength.BoltSteps;
import plumbleaf.engine.strength.WheelOnTube;

/** What the wheels of a slide gate carry, where and when most, and what carries them. */
final class SlideWheels {
    private final SlideDesign slide;
    private final RollerModel rollers;

    SlideWheels(SlideDesign slide) {
        this.slide = slide;
        this.rollers = slide.gate().plan().rollers();
    }

    /** The most of something on either set of rollers, and its case. */
    record Most(double value, SlideCase worst, boolean front) {
        String where() {
            return front ? "front rollers" : "rear rollers";
        }

        String inCase() {
            return worst.combination().key() + ", " + worst.state().key();
        }
    }

    Most most(ToDoubleFunction<RollerForce> of, boolean withWind) {
        Most most = new Most(-1, slide.cases().get(0), true);
        for (SlideCase each : slide.cases()) {
            if (!withWind && each.combination().hasWind()) continue;
            double front = of.applyAsDouble(each.front());
            double rear = of.applyAsDouble(each.rear());
            if (Ties.isMore(front, most.value())) most = new Most(front, each, true);
            if (Ties.isMore(rear, most.value())) most = new Most(rear, each, false);
        }
        return most;
    }

    /** Up or down. */
    Most load() {
        return most(each -> Math.abs(each.down().pounds()), true);
    }

    /** Lifted most, which the bolts, the post and its footing must hold down. */
    Most uplift() {
        return most(each -> Math.max(0, -each.down().pounds()), true);
    }

    Most across() {
        return most(each -> each.across().pounds(), true);
    }

    /** On one wheel's stretch of wall. */
    double onWall() {
        return load().value()
                / WheelOnTube.allowable(slide.gate().plan().leaf().make().tube())
                        .pounds();
    }

    /**
     * The most used bolt of a bracket: shear alike on all, tension on the upper row from the load's offset before the post's face and from the push across, {@code T = (R e / b +
     * H) / (n / 2)}. One plane of shear, thread in it. The post's wall under them is judged as its maker's plate allows and is not here.
     * Source: statics; AISC 360-22 J3.7, Table J3.2. Check: SlideGateTest, from the numbers that are printed.
     */
    Most bolts() {
        return most(this::boltUse, true);
    }

    double boltUse(RollerForce force) {
        if (rollers.bolts() == 0) return 0;
        Bolt bolt = new Bolt(rollers.boltSize(), Bolt.A307, true);
        double shear = Math.abs(force.down().pounds()) / rollers.bolts();
        double pry = Math.abs(force.down().pounds())
                * rollers.standoff().inches()
                / rollers.boltsApart().inches();
        double push = Math.abs(force.acrossLow().pounds())
                + Math.abs(force.acrossHigh().pounds());
        double tension = (pry + push) / Math.max(1, rollers.bolts() / 2.0);
        return bolt.use(Force.pounds(shear), Force.pounds(tension));
    }

    LinkWork boltWork(Most most) {
        RollerForce force = most.front() ? most.worst().front() : most.worst().rear();
        return new LinkWork(
                "T = (R e / b + H) / (n / 2), V = R / n; J3-3",
                "R " + DecimalText.whole(force.down().pounds()) + " lb, H "
                        + DecimalText.whole(Math.abs(force.acrossLow().pounds())
                                + Math.abs(force.acrossHigh().pounds()))
                        + " lb, e " + DecimalText.upTo(rollers.standoff().inches(), 3) + " in., b "
                        + DecimalText.upTo(rollers.boltsApart().inches(), 3) + " in., " + rollers.bolts() + " bolts "
                        + DecimalText.upTo(rollers.boltSize().inches(), 4) + " in. A307",
                "AISC 360-22 J3.7, Table J3.2",
                boltLines(force));
    }

    /** {@link #boltUse} line by line. */
    private List<WorkedLine> boltLines(RollerForce force) {
        double pressed = Math.abs(force.down().pounds());
        double push = Math.abs(force.acrossLow().pounds())
                + Math.abs(force.acrossHigh().pounds());
        double upper = Math.max(1, rollers.bolts() / 2.0);
        WorkedLine shear = WorkedLine.of("V", "R / n")
                .put("R", pressed, "lb")
                .put("n", rollers.bolts())
                .note("shear of a bolt")
                .gives(pressed / rollers.bolts(), "lb");
        WorkedLine pull = WorkedLine.of("T", "(R \u00d7 e / b + H) / max(1; n / 2)")
                .put("R", pressed, "lb")
                .put("e", rollers.standoff())
                .put("b", rollers.boltsApart())
                .put("H", push, "lb")
                .put("n", rollers.bolts())
                .note("pull of a bolt of the upper row: e from the post's face to the tube, b between the rows")
                .gives(
                        (pressed
                                                * rollers.standoff().inches()
                                                / rollers.boltsApart().inches()
                                        + push)
                                / upper,
                        "lb");
        List<WorkedLine> lines = new ArrayList<>(List.of(shear, pull));
        List<WorkedLine> steel = BoltSteps.steel(new Bolt(rollers.boltSize(), Bolt.A307, true), shear, pull);
        lines.addAll(steel);
        lines.add(BoltSteps.most(steel, "").gives(boltUse(force)));
        return lines;
    }
}
