package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.gate.PlaneGround;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;
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
import plumbleaf.engine.job.PostSpec;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
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

/** A gate made up for the views' tests: sizes as they come, no claim that it stands. */
final class SampleGate {
    private SampleGate() {}

    static GateSubject gate(Hand hand, Joint joint, double clearIn, double grade, int midRails, int braces) {
        HingeModel hinge = new HingeModel(
                "H",
                "hinge",
                Force.pounds(300),
                Length.inches(48),
                Length.inches(48),
                Length.inches(1 / 64.0),
                20_000,
                new PinPlace(Length.inches(0.375), Length.inches(1.5), Angle.degrees(180)),
                HingeFixing.welded(Length.inches(3), Length.inches(0.25), Length.inches(0.1875)),
                Length.inches(0.5),
                Length.ZERO,
                false,
                Force.pounds(2),
                "made up");
        Boarding style = new Boarding(
                new Board(Length.inches(5.5), Length.inches(0.625), "cedar"),
                new Spacing(Offset.inches(0.125), Offset.ZERO, Offset.inches(0.5), Length.inches(2)),
                BoardTop.FLAT,
                false,
                new Board(Length.inches(3.5), Length.inches(1.5), "cedar"),
                2);
        WoodSpecies cedar = new WoodSpecies(
                "cedar",
                "cedar",
                0.35,
                Moisture.percent(28),
                5,
                2.4,
                0.00234,
                new WoodGrade(
                        "made up",
                        Stress.psi(700),
                        Stress.psi(400),
                        Stress.psi(150),
                        Stress.psi(400),
                        Stress.psi(800),
                        Stress.psi(1e6),
                        Stress.psi(4e5),
                        false),
                "made up",
                "memory");
        GateParts parts = new GateParts(
                section("tube", Shape.SQUARE, 2, 0.083),
                braces,
                joint,
                section("pipe", Shape.ROUND, 2.875, 0.203),
                section("pipe", Shape.ROUND, 2.375, 0.154),
                hinge,
                new LatchModel(
                        "L",
                        "latch",
                        Length.inches(0.25),
                        Length.inches(0.75),
                        Length.inches(0.125),
                        Force.pounds(600),
                        Length.inches(0.375),
                        Length.inches(1),
                        false,
                        Force.pounds(1),
                        "made up"),
                new Cladding.Wood(style, cedar, cedar, FinishedFace.OUT),
                List.of());
        Gate gate = new Gate(
                "G1",
                new GateKind.Swing(
                        Stated.of(hand.hinge()), Stated.of(hand.swing()), Angle.degrees(90), new HoldOpen.Free()),
                "R1",
                Length.inches(200),
                Length.inches(clearIn),
                new LeafSpec(
                        new LeafShape.Raked(),
                        Length.inches(70),
                        Length.inches(3),
                        Length.inches(0.75),
                        Length.inches(0.625),
                        Length.ZERO,
                        midRails),
                new PostSpec(new Support.NewFooting()),
                new PostSpec(new Support.NewFooting()),
                new HingeSpec("H", Length.inches(9), Length.inches(9), 2, 1),
                new LatchSpec("L", Length.inches(42)),
                new GateLoads(Force.pounds(200), Speed.mph(40), Speed.mph(5), Length.ZERO, Length.inches(0.25)),
                List.of(),
                new Release.Hold(),
                List.of());
        Opening opening = new Opening(
                PlanPoint.ORIGIN,
                Direction.EAST,
                Side.RIGHT,
                Length.inches(200),
                Length.inches(clearIn),
                Length.ZERO,
                Length.ZERO);
        Plane ground = Plane.of(SpacePoint.inches(0, 0, 0), Direction.EAST, new Slope(grade), new Slope(grade / 2));
        GatePlan plan = Gates.plan(new GateAsk(
                gate,
                opening,
                parts,
                new PlaneGround(ground),
                new GapRule(Length.inches(4), "made up"),
                Length.ZERO,
                List.of(),
                DisplayUnits.US));
        return new GateSubject(
                plan, parts, "P4", "P5", Offset.inches(77), Offset.inches(77), Length.inches(42), DisplayUnits.US);
    }

    private static Section section(String family, Shape shape, double size, double wall) {
        return new Section(
                family + size,
                family,
                size + " " + family,
                shape,
                Length.inches(size),
                Length.inches(size),
                Length.inches(wall),
                Length.inches(wall),
                Length.inches(wall * 0.93),
                Force.pounds(2),
                0.6,
                0.4,
                0.4,
                0.5,
                0.4,
                0.4,
                0.5,
                0.7,
                Stress.ksi(46),
                Stress.ksi(58),
                "memory",
                "made up",
                "memory");
    }
}
