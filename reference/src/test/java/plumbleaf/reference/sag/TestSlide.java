package plumbleaf.reference.sag;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.catalogue.RollerWay;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.gate.PlaneGround;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.GateLoads;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LatchSpec;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.PostSpec;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.SlideLoads;
import plumbleaf.engine.sag.SlidePost;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.wind.LeafWind;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** A bare slide leaf on level ground whose posts and ground do not give, its wheels in the line of its posts; all sizes invented. */
record TestSlide(double openingFt, double tailIn, String frame, RollerWay way) {
    static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final LeafWind CALM = new LeafWind(Pressure.ZERO, Length.inches(36), Length.ZERO, "calm");

    private RollerModel rollers() {
        Force much = Force.pounds(10_000);
        return new RollerModel(
                "R",
                "rollers",
                way,
                much,
                much,
                Length.ZERO,
                0.03,
                Length.inches(0.001),
                Length.inches(1),
                Length.inches(6),
                4,
                Length.inches(0.5),
                Length.inches(6),
                Force.pounds(20),
                "test");
    }

    /** A post as thin as a knife, so that nothing is turned across it. */
    private static Section blade() {
        Section pipe = CATALOGUE
                .section("HSS-4x4x1/4")
                .or(() -> CATALOGUE.section("TUBE-3x3x0.12"))
                .orElseThrow();
        return new Section(
                "BLADE",
                "test",
                "blade",
                pipe.shape(),
                pipe.depth(),
                Length.inches(0.002),
                pipe.nominalWall(),
                pipe.usedWall(),
                pipe.designWall(),
                Force.pounds(10),
                1e6,
                1e6,
                1e6,
                1e6,
                1e6,
                1e6,
                1e6,
                1e6,
                pipe.yieldStress(),
                pipe.ultimateStress(),
                "test",
                "test",
                "test");
    }

    SlidePlan plan() {
        LatchModel latch = new LatchModel(
                "L",
                "latch",
                Length.inches(0.5),
                Length.inches(1),
                Length.inches(0.125),
                Force.pounds(100),
                Length.ZERO,
                Length.inches(2),
                false,
                Force.ZERO,
                "test");
        GateParts parts = new GateParts(
                CATALOGUE.section(frame).orElseThrow(),
                1,
                Joint.BUTTED_RAILS,
                blade(),
                blade(),
                CATALOGUE.hinges().get(0),
                latch,
                new Cladding.Open(),
                List.of());
        Length opening = Length.feet(openingFt);
        Gate gate = new Gate(
                "G1",
                new GateKind.Slide(Side.LEFT, SlideSpec.usual(opening).withTail(Length.inches(tailIn))),
                "R1",
                Length.feet(30),
                opening,
                new LeafSpec(
                        new LeafShape.Square(),
                        Length.inches(66),
                        Length.inches(4),
                        Length.inches(1),
                        Length.inches(1),
                        Length.ZERO,
                        0),
                new PostSpec(new Support.NewFooting()),
                new PostSpec(new Support.NewFooting()),
                new HingeSpec("H", Length.inches(9), Length.inches(9), 2, 0),
                new LatchSpec("L", Length.inches(36)),
                new GateLoads(Force.pounds(200), Speed.mph(40), Speed.mph(2), Length.ZERO, Length.inches(0.25)),
                List.of(),
                new Release.Priced(),
                List.of());
        PlanPoint face = PlanPoint.inches(0, 0);
        Plane flat = Plane.through(SpacePoint.inches(0, 0, 0), SpacePoint.inches(10, 0, 0), SpacePoint.inches(0, 10, 0))
                .orElseThrow();
        GateAsk ask = new GateAsk(
                gate,
                new Opening(
                        face, Direction.EAST, Side.RIGHT, Length.feet(30), opening, Length.feet(29), Length.feet(29)),
                parts,
                new PlaneGround(flat),
                new GapRule(Length.inches(6), "test"),
                Length.ZERO,
                List.of(),
                List.of(rollers()),
                Force.ZERO,
                DisplayUnits.US);
        return Gates.judged(ask).slide().orElseThrow();
    }

    SlideGate gate() {
        SlidePlan plan = plan();
        PierSpring rigid = new PierSpring(1e9, 0, 1e13);
        PierSprings ground = new PierSprings(rigid, rigid, rigid, Optional.empty());
        return new SlideGate(
                plan,
                post(plan.shape().frontRollers(), ground),
                post(plan.shape().rearRollers(), ground),
                post(Offset.inches(plan.shape().opening().inches() + 2), ground));
    }

    private static SlidePost post(Offset at, PierSprings ground) {
        return new SlidePost(blade(), at, Length.inches(74), Offset.ZERO, ground, List.of());
    }

    static SlideLoads still(double personLb) {
        return new SlideLoads(Force.pounds(personLb), CALM, CALM, CALM, Pressure.ZERO, IceCoat.NONE);
    }

    static SlideLoads windy(double psf) {
        LeafWind wind = new LeafWind(Pressure.psf(psf), Length.inches(37), Length.ZERO, "even");
        return new SlideLoads(Force.ZERO, wind, wind, wind, Pressure.ZERO, IceCoat.NONE);
    }
}
