package plumbleaf.reference.gate;

import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
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
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.support.Support;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** Invented gates from the program's own catalogue. */
final class YardGates {
    static final Catalogue CATALOGUE = StandardCatalogue.load();
    /** The first face at station 10 ft of a run to the east with outside to the south. */
    static final Direction ALONG = Direction.EAST;

    private YardGates() {}

    static GateParts parts(String frame, Cladding cladding, Joint joint) {
        return new GateParts(
                CATALOGUE.section(frame).orElseThrow(),
                1,
                joint,
                CATALOGUE.section("F1083-REG-2.5").orElseThrow(),
                CATALOGUE.section("F1083-REG-2").orElseThrow(),
                CATALOGUE.hinge("HINGE-ADJ-0.625").orElseThrow(),
                CATALOGUE.latch("LATCH-THUMB").orElseThrow(),
                cladding,
                CATALOGUE.bolts());
    }

    static Cladding cedar() {
        var style =
                CATALOGUE.style("wood-side-by-side").orElseThrow().boarding().orElseThrow();
        return new Cladding.Wood(
                style,
                CATALOGUE.species(style.species()).orElseThrow(),
                CATALOGUE.species(style.railSpecies()).orElseThrow(),
                FinishedFace.OUT);
    }

    static Opening opening(double clearIn) {
        return new Opening(
                PlanPoint.inches(120, 0),
                ALONG,
                Side.RIGHT,
                Length.feet(10),
                Length.inches(clearIn),
                Length.feet(9),
                Length.feet(9));
    }

    static GateAsk ask(
            double clearIn,
            double infillIn,
            double bottomGapIn,
            LeafShape shape,
            Hand hand,
            double opensDeg,
            GateParts parts,
            GroundUnder ground) {
        Gate gate = new Gate(
                "G1",
                new GateKind.Swing(
                        Stated.of(hand.hinge()),
                        Stated.of(hand.swing()),
                        Angle.degrees(opensDeg),
                        new HoldOpen.CaneBolt()),
                "R1",
                Length.feet(10),
                Length.inches(clearIn),
                new LeafSpec(
                        shape,
                        Length.inches(infillIn),
                        Length.inches(bottomGapIn),
                        Length.inches(0.75),
                        Length.inches(0.625),
                        Length.ZERO,
                        1),
                new PostSpec(new Support.NewFooting()),
                new PostSpec(new Support.NewFooting()),
                new HingeSpec("HINGE-ADJ-0.625", Length.inches(9), Length.inches(9), 2, 0),
                new LatchSpec("LATCH-THUMB", Length.inches(42)),
                new GateLoads(Force.pounds(200), Speed.mph(40), Speed.mph(2), Length.ZERO, Length.inches(0.25)),
                List.of(),
                new Release.Priced(),
                List.of());
        return new GateAsk(
                gate,
                opening(clearIn),
                parts,
                ground,
                new GapRule(Length.inches(4), "dog"),
                Length.ZERO,
                CATALOGUE.hinges(),
                DisplayUnits.US);
    }
}
