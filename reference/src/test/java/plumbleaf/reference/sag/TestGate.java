package plumbleaf.reference.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafMaker;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.ShutAt;
import plumbleaf.engine.section.Section;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/** A square leaf of catalogue tube with two hinges, clad to a weight of one's own; all sizes invented. */
record TestGate(
        double widthIn,
        double heightIn,
        int braces,
        double cladLb,
        String post,
        double depthIn,
        SoilStiffness soil,
        double hingeStiffness) {
    static final double E_PSI = 29e6;
    static final double PIN_OFFSET_IN = 0.375;
    static final double FROM_ENDS_IN = 9;
    static final double BOTTOM_IN = 3;
    static final String FRAME = "TUBE-2x2x0.083";
    static final Catalogue CATALOGUE = StandardCatalogue.load();

    static Section section(String id) {
        return CATALOGUE.section(id).orElseThrow();
    }

    /** Square, its wood as two even weights on the rails. */
    Leaf leaf() {
        Leaf bare = made(0, 0, new Cladding.Open());
        List<RailLoad> loads = new ArrayList<>();
        for (Member rail : bare.rails())
            loads.add(new RailLoad(
                    rail.id(),
                    bare.outline().hingeEdge(),
                    bare.outline().latchEdge(),
                    Offset.ZERO,
                    Force.pounds(cladLb / 2),
                    Force.pounds(cladLb / 2)));
        return with(bare, bare.members(), loads, bare.fittings());
    }

    /** Raked, with a middle rail, nailers and pickets from the catalogue on its outer face. */
    Leaf raked(double slope) {
        Boarding style =
                CATALOGUE.style("wood-side-by-side").orElseThrow().boarding().orElseThrow();
        return made(
                slope,
                1,
                new Cladding.Wood(
                        style,
                        CATALOGUE.species(style.species()).orElseThrow(),
                        CATALOGUE.species(style.railSpecies()).orElseThrow(),
                        FinishedFace.OUT));
    }

    private Leaf made(double slope, int midRails, Cladding cladding) {
        Outline outline = new Outline(
                Offset.inches(PIN_OFFSET_IN),
                Offset.inches(PIN_OFFSET_IN + widthIn),
                Offset.inches(BOTTOM_IN),
                Offset.inches(BOTTOM_IN + heightIn),
                Slope.ratio(slope),
                Slope.ratio(slope),
                Length.ZERO);
        GateParts parts = new GateParts(
                section(FRAME),
                braces,
                Joint.MITERED,
                section(post),
                section(post),
                hinge(),
                CATALOGUE.latches().get(0),
                cladding,
                CATALOGUE.bolts());
        return LeafMaker.make(
                "G1a",
                new Hand(Side.RIGHT, SwingWay.IN),
                outline,
                parts,
                midRails,
                new HingeSpec("hinge", Length.inches(FROM_ENDS_IN), Length.inches(FROM_ENDS_IN), 2, 0),
                Offset.inches(40));
    }

    HungGate hung() {
        return hung(leaf());
    }

    HungGate hung(Leaf leaf) {
        Section section = section(post);
        SoilBand band = new SoilBand(soil.times(0.5), soil, soil.times(2));
        return new HungGate(
                leaf,
                hinge(),
                section,
                section.depth().times(0.5),
                Length.inches(BOTTOM_IN + heightIn + 4),
                Offset.ZERO,
                PierSprings.of(band, new HoleSize(Length.inches(12), Length.inches(depthIn)), Length.ZERO),
                Angle.degrees(90),
                new HoldOpen.Free(),
                ShutAt.LATCH);
    }

    /** From the pin to the post's axis. */
    double eccentricityIn() {
        return PIN_OFFSET_IN + section(post).depth().inches() / 2;
    }

    double pinSpacingIn() {
        return heightIn - 2 * FROM_ENDS_IN;
    }

    /** From the pin to the free corner. */
    double reachIn() {
        return PIN_OFFSET_IN + widthIn;
    }

    static double weightLb(Leaf leaf) {
        double weight = 0;
        for (Member member : leaf.members()) weight += member.weight().pounds();
        for (RailLoad load : leaf.railLoads()) weight += load.wet().pounds();
        for (Fitting fitting : leaf.fittings()) weight += fitting.weight().pounds();
        return weight;
    }

    /** Weight times its distance from the pin. */
    static double momentLbIn(Leaf leaf) {
        double moment = 0;
        for (Member member : leaf.members())
            moment += member.weight().pounds() * member.middle().r().inches();
        for (RailLoad load : leaf.railLoads())
            moment += load.wet().pounds() * (load.from().inches() + load.to().inches()) / 2;
        for (Fitting fitting : leaf.fittings())
            moment += fitting.weight().pounds() * fitting.at().r().inches();
        return moment;
    }

    static Leaf with(Leaf leaf, List<Member> members, List<RailLoad> loads, List<Fitting> fittings) {
        return leaf.with(members, loads, fittings);
    }

    HingeModel hinge() {
        HingeModel sold = CATALOGUE.hinges().get(0);
        return new HingeModel(
                sold.id(),
                sold.name(),
                sold.capacityPerPair(),
                sold.capacityWidth(),
                sold.capacitySpacing(),
                Length.inches(1 / 16.0),
                hingeStiffness,
                new PinPlace(
                        Length.inches(PIN_OFFSET_IN), Length.ZERO, sold.pin().opens()),
                sold.fixing(),
                sold.adjusts(),
                sold.risePerDegree(),
                sold.selfClosing(),
                sold.weight(),
                sold.source());
    }
}
