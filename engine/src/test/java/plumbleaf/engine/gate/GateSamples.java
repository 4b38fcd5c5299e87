package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.GateLoads;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LatchSpec;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Obstacle;
import plumbleaf.engine.job.PostSpec;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.support.Support;

/** A gate for tests: 4 ft opening, 2 x 2 tube, one mid rail and one brace, cedar pickets outside. */
final class GateSamples {
    private GateSamples() {}

    /** 2 x 2 x 14 ga tube; only its sizes and its weight count here. */
    static Section tube() {
        return section("TUBE-2x2x0.083", Shape.SQUARE, 2, 0.083, 2.11);
    }

    static Section pipe() {
        return section("F1083-REG-2.5", Shape.ROUND, 2.875, 0.203, 5.80);
    }

    static Section section(String id, Shape shape, double size, double wall, double poundsPerFoot) {
        return new Section(
                id,
                "test",
                id,
                shape,
                Length.inches(size),
                Length.inches(size),
                Length.inches(wall),
                Length.inches(wall),
                Length.inches(0.93 * wall),
                Force.pounds(poundsPerFoot),
                1,
                1,
                1,
                1,
                1,
                1,
                1,
                1,
                Stress.ksi(36),
                Stress.ksi(58),
                "unverified",
                "test",
                "computed");
    }

    static WoodSpecies cedar() {
        Stress none = Stress.psi(0);
        return new WoodSpecies(
                "western_redcedar",
                "western redcedar",
                0.36,
                Moisture.percent(22),
                5,
                2.4,
                0.00234,
                new WoodGrade("test", none, none, none, none, none, none, none, false),
                "test",
                "memory");
    }

    static Boarding sideBySide() {
        return new Boarding(
                new Board(Length.inches(5.5), Length.inches(0.625), "western_redcedar"),
                new Spacing(Offset.inches(0.125), Offset.inches(0.0625), Offset.inches(0.25), Length.inches(2.5)),
                BoardTop.FLAT,
                false,
                new Board(Length.inches(3.5), Length.inches(1.5), "western_redcedar"),
                2);
    }

    static PinPlace pin(double offsetIn, double swingSideIn) {
        return new PinPlace(Length.inches(offsetIn), Length.inches(swingSideIn), Angle.degrees(180));
    }

    static HingeModel hinge(double risePerDegreeIn) {
        return new HingeModel(
                "HINGE",
                "adjustable hinge",
                Force.pounds(400),
                Length.inches(72),
                Length.inches(48),
                Length.inches(0.03125),
                60_000,
                pin(0.375, 0),
                new HingeFixing(
                        Length.inches(3),
                        Length.inches(0.25),
                        Length.inches(1.5),
                        Length.inches(2.5),
                        new Fastening.Welded(Length.inches(0.1875)),
                        new Fastening.Bolted(1, Length.inches(0.5), Length.inches(0.5625), Length.ZERO)),
                Length.inches(0.5),
                Length.inches(risePerDegreeIn),
                false,
                Force.pounds(2.5),
                "test");
    }

    static LatchModel latch() {
        return new LatchModel(
                "LATCH",
                "thumb latch",
                Length.inches(0.25),
                Length.inches(0.75),
                Length.inches(0.125),
                Force.pounds(600),
                Length.inches(0.375),
                Length.inches(1.25),
                false,
                Force.pounds(1.2),
                "test");
    }

    static Cladding wood() {
        return new Cladding.Wood(sideBySide(), cedar(), cedar(), FinishedFace.OUT);
    }

    static GateParts parts(Cladding cladding, Joint joint, int braces) {
        return new GateParts(tube(), braces, joint, pipe(), pipe(), hinge(0), latch(), cladding, List.of());
    }

    static LeafSpec leaf(LeafShape shape, double bottomGapIn) {
        return new LeafSpec(
                shape,
                Length.inches(71),
                Length.inches(bottomGapIn),
                Length.inches(0.75),
                Length.inches(0.625),
                Length.ZERO,
                1);
    }

    static GateKind swing(Hand hand, double opensDeg) {
        return new GateKind.Swing(
                Stated.of(hand.hinge()), Stated.of(hand.swing()), Angle.degrees(opensDeg), new HoldOpen.CaneBolt());
    }

    static Gate gate(GateKind kind, LeafSpec leaf, List<Obstacle> obstacles) {
        return new Gate(
                "G1",
                kind,
                "R1",
                Length.feet(18),
                Length.feet(4),
                leaf,
                new PostSpec(new Support.NewFooting()),
                new PostSpec(new Support.NewFooting()),
                new HingeSpec("HINGE", Length.inches(9), Length.inches(9), 2, 0),
                new LatchSpec("LATCH", Length.inches(42)),
                new GateLoads(Force.pounds(200), Speed.mph(40), Speed.mph(2), Length.ZERO, Length.inches(0.25)),
                List.of(),
                new Release.Priced(),
                obstacles);
    }

    static GateAsk ask(Gate gate, Opening opening, GateParts parts, GroundUnder ground) {
        return new GateAsk(
                gate,
                opening,
                parts,
                ground,
                new GapRule(Length.inches(4), "dog"),
                Length.ZERO,
                List.of(hinge(0), hinge(1.5 / 90)),
                DisplayUnits.US);
    }

    /** An opening of 4 ft whose first face is at station 18 ft of a run that starts at the origin. */
    static Opening opening(Direction along, Side outside) {
        return new Opening(
                PlanPoint.ORIGIN.moved(along, Length.feet(18)),
                along,
                outside,
                Length.feet(18),
                Length.feet(4),
                Length.feet(17),
                Length.feet(23));
    }

    /** A plane through the origin with a grade along a direction and one to its left. */
    static PlaneGround plane(Direction along, double grade, double leftwards) {
        return new PlaneGround(
                Plane.of(PlanPoint.ORIGIN.at(Offset.ZERO), along, Slope.ratio(grade), Slope.ratio(leftwards)));
    }

    static Hand hand(Side hinge, SwingWay swing) {
        return new Hand(hinge, swing);
    }
}
