package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafMaker;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.engine.section.WoodPost;

/** Gates to hang in tests, all invented. */
final class HungGates {
    static final Section FRAME = tube(2, 0.083);
    static final Section ROUND_POST = pipe(2.875, 0.203);
    static final Section SQUARE_POST = tube(3, 0.188);
    static final WoodPost WOOD_POST = woodPost();
    static final HingeModel HINGE = hinge(60_000);

    private HungGates() {}

    private static WoodPost woodPost() {
        WoodGrade grade = new WoodGrade(
                "No. 2",
                Stress.psi(850),
                Stress.psi(550),
                Stress.psi(165),
                Stress.psi(375),
                Stress.psi(525),
                Stress.psi(1_200_000),
                Stress.psi(440_000),
                false);
        WoodSpecies wood =
                new WoodSpecies("w", "w", 0.55, Moisture.percent(30), 7.4, 4.8, 0.00259, grade, "made up", "memory");
        Length side = Length.inches(5.5);
        return new WoodPost("6x6", "6x6", false, side, side, wood, grade, true, false, "made up", "memory");
    }

    /** A clad walk gate of some 130 lb on a schedule 40 post, 36 in. deep in medium sand. */
    static HungGate walkGate() {
        return gate(clad(leaf(46, 66, 1, 0, 2, SwingWay.IN), 90, 0.9), ROUND_POST);
    }

    static HungGate gate(Leaf leaf, Section post) {
        return new HungGate(
                leaf,
                HINGE,
                post,
                post.depth().times(0.5),
                Length.inches(76),
                Offset.ZERO,
                sand(36),
                Angle.degrees(90),
                new HoldOpen.Free(),
                ShutAt.LATCH);
    }

    static PierSprings sand(double depthIn) {
        SoilStiffness.Growing medium = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));
        SoilBand band = new SoilBand(medium.times(1 / 3.0), medium, medium.times(8 / 3.0));
        return PierSprings.of(band, new HoleSize(Length.inches(12), Length.inches(depthIn)), Length.ZERO);
    }

    static PierSprings rigidGround() {
        PierSpring rigid = new PierSpring(1e9, 0, 1e12);
        return new PierSprings(rigid, rigid, rigid, Optional.empty());
    }

    /** The bare frame. The pin is 3/8 in. from the post, the leaf 3/4 in. */
    static Leaf leaf(double widthIn, double heightIn, int braces, double slope, int hinges, SwingWay swing) {
        return leaf(widthIn, heightIn, Bracing.tubes(braces), slope, hinges, swing);
    }

    /** A clad walk gate kept square by this. */
    static HungGate braced(Bracing bracing) {
        return gate(clad(leaf(46, 66, bracing, 0, 2, SwingWay.IN), 90, 0), ROUND_POST);
    }

    private static Leaf leaf(
            double widthIn, double heightIn, Bracing bracing, double slope, int hinges, SwingWay swing) {
        Outline outline = new Outline(
                Offset.inches(0.375),
                Offset.inches(0.375 + widthIn),
                Offset.inches(3),
                Offset.inches(3 + heightIn),
                Slope.ratio(slope),
                Slope.ratio(slope),
                Length.ZERO);
        GateParts parts = new GateParts(
                FRAME,
                bracing,
                Joint.MITERED,
                Bracket.UNKNOWN,
                ROUND_POST,
                ROUND_POST,
                HINGE,
                latch(),
                new Cladding.Open(),
                List.of());
        return LeafMaker.make(
                "G1a",
                new Hand(Side.LEFT, swing),
                outline,
                parts,
                0,
                new HingeSpec("hinge", Length.inches(9), Length.inches(9), hinges, 0),
                Offset.inches(40));
    }

    /** Wood shared by the rails over the whole width, its middle this far outside the frame's. */
    static Leaf clad(Leaf bare, double weightLb, double outsideIn) {
        List<RailLoad> loads = new ArrayList<>();
        int rails = bare.rails().size();
        bare.rails()
                .forEach(rail -> loads.add(new RailLoad(
                        rail.id(),
                        bare.outline().hingeEdge(),
                        bare.outline().latchEdge(),
                        Offset.inches(outsideIn),
                        Force.pounds(weightLb / rails),
                        Force.pounds(weightLb / rails))));
        return with(bare, bare.members(), loads);
    }

    static Leaf with(Leaf leaf, List<plumbleaf.engine.gate.Member> members, List<RailLoad> loads) {
        return leaf.with(members, loads, leaf.fittings());
    }

    /** Weight of everything, and its moment about the pin, straight from the parts. */
    static double[] weightAndMoment(Leaf leaf) {
        double weight = 0;
        double moment = 0;
        for (plumbleaf.engine.gate.Member member : leaf.members()) {
            weight += member.weight().pounds();
            moment += member.weight().pounds() * member.middle().r().inches();
        }
        for (RailLoad load : leaf.railLoads()) {
            weight += load.wet().pounds();
            moment += load.wet().pounds() * (load.from().inches() + load.to().inches()) / 2;
        }
        for (plumbleaf.engine.gate.Fitting fitting : leaf.fittings()) {
            weight += fitting.weight().pounds();
            moment += fitting.weight().pounds() * fitting.at().r().inches();
        }
        return new double[] {weight, moment};
    }

    static HungGate on(HungGate gate, HingeModel hinge) {
        return new HungGate(
                gate.leaf(),
                hinge,
                gate.hingePost(),
                gate.hingePostCentre(),
                gate.hingePostHeight(),
                gate.latchPostGrade(),
                gate.foot(),
                gate.opens(),
                gate.holdOpen(),
                ShutAt.LATCH);
    }

    static HungGate heldBy(HungGate gate, HoldOpen hold) {
        return new HungGate(
                gate.leaf(),
                gate.hinge(),
                gate.hingePost(),
                gate.hingePostCentre(),
                gate.hingePostHeight(),
                gate.latchPostGrade(),
                gate.foot(),
                gate.opens(),
                hold,
                ShutAt.LATCH);
    }

    static HingeModel hinge(double stiffness) {
        return new HingeModel(
                "hinge",
                "a hinge",
                Force.pounds(400),
                Length.inches(72),
                Length.inches(48),
                Length.inches(1 / 32.0),
                stiffness,
                new PinPlace(Length.inches(0.375), Length.ZERO, Angle.degrees(180)),
                HingeFixing.welded(Length.inches(3), Length.inches(0.25), Length.inches(0.1875)),
                Length.inches(0.5),
                Length.ZERO,
                false,
                Force.pounds(2.5),
                "invented");
    }

    private static LatchModel latch() {
        return new LatchModel(
                "latch",
                "a latch",
                Length.inches(0.25),
                Length.inches(0.75),
                Length.inches(0.125),
                Force.pounds(600),
                Length.inches(0.5),
                Length.inches(1),
                true,
                Force.pounds(2),
                "invented");
    }

    static Section tube(double sideIn, double wallIn) {
        Length side = Length.inches(sideIn);
        Length wall = Length.inches(wallIn);
        return section("tube", Shape.SQUARE, side, wall, TubeProperties.rectangular(side, side, wall));
    }

    static Section pipe(double outIn, double wallIn) {
        Length out = Length.inches(outIn);
        Length wall = Length.inches(wallIn);
        return section("pipe", Shape.ROUND, out, wall, TubeProperties.round(out, wall));
    }

    /** The same section, this many times as stiff and no heavier. */
    static Section stiffer(Section plain, double factor) {
        return new Section(
                plain.id(),
                plain.family(),
                plain.name(),
                plain.shape(),
                plain.depth(),
                plain.width(),
                plain.nominalWall(),
                plain.usedWall(),
                plain.designWall(),
                plain.weightPerFoot(),
                plain.areaIn2() * factor,
                plain.ixIn4() * factor,
                plain.sxIn3() * factor,
                plain.zxIn3() * factor,
                plain.iyIn4() * factor,
                plain.syIn3() * factor,
                plain.zyIn3() * factor,
                plain.jIn4() * factor,
                plain.yieldStress(),
                plain.ultimateStress(),
                plain.yieldConfidence(),
                plain.source(),
                plain.confidence());
    }

    private static Section section(String family, Shape shape, Length size, Length wall, TubeProperties p) {
        return new Section(
                family,
                family,
                family,
                shape,
                size,
                size,
                wall,
                wall,
                wall.times(0.93),
                Force.pounds(p.areaIn2() * 12 * 490 / 1728),
                p.areaIn2(),
                p.ixIn4(),
                p.sxIn3(),
                p.zxIn3(),
                p.iyIn4(),
                p.syIn3(),
                p.zyIn3(),
                p.jIn4(),
                Stress.ksi(30),
                Stress.ksi(48),
                "invented",
                "invented",
                "computed");
    }
}
