package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.quantity.Length;

/**
 * What a pair takes besides its two leaves: rods, sleeves in their holes, stop strip, centre stop, keeper.
 *
 * @param gate its id
 * @param stripLength of the strip; zero for none
 * @param rodOpens whether a rod also holds its leaf open and needs a second sleeve there
 */
public record PairTake(String gate, Meeting meeting, RodModel rod, Length stripLength, boolean rodOpens) {
    /** Drain gravel under the sleeve, so that it does not fill. Common practice, no source. */
    private static final Length GRAVEL = Length.inches(4);

    /** @param leaves a, then b */
    public static PairTake of(String gate, GateKind.Pair kind, RodModel rod, List<Leaf> leaves) {
        Length longest = Length.ZERO;
        for (Leaf leaf : leaves) {
            double edge = leaf.outline().corners().get(2).z().inches()
                    - leaf.outline().corners().get(1).z().inches();
            if (edge > longest.inches()) longest = Length.inches(edge);
        }
        boolean rodOpens = kind.holdOpen().match(free -> false, bolt -> true, stop -> false, lock -> false);
        return new PairTake(gate, kind.meeting(), rod, kind.meeting().hasStrip() ? longest : Length.ZERO, rodOpens);
    }

    /** One where the leaves meet for each rod, and one where each of those leaves stands open. */
    public int sleeves() {
        return meeting.rods() * (rodOpens ? 2 : 1);
    }

    /** Holes are dug for the sleeve where the leaves meet, both in one, and for each leaf held open. */
    public int holes() {
        return 1 + (rodOpens ? meeting.rods() : 0);
    }

    public Length dug() {
        return meeting.sleeveDepth().plus(GRAVEL);
    }

    public Needs needs() {
        List<Need> loose = new ArrayList<>();
        loose.add(Need.pieces(rod.id(), rod.name(), PartGroup.HARDWARE, meeting.rods(), gate));
        loose.add(Need.pieces("ground-sleeve", "ground sleeve for a drop rod", PartGroup.HARDWARE, sleeves(), gate));
        if (!stripLength.isZero())
            loose.add(new Need(
                    "stop-strip",
                    "flat bar for the stop strip",
                    PartGroup.GATE,
                    NetUnit.FEET,
                    stripLength.inFeet(),
                    gate));
        if (meeting.hasStop())
            loose.add(Need.pieces("centre-stop", "center stop for both leaves", PartGroup.HARDWARE, 1, gate));
        if (meeting.topKeeper())
            loose.add(Need.pieces("top-keeper", "keeper for the tops of both leaves", PartGroup.HARDWARE, 1, gate));
        double d = meeting.sleeveHole().inches();
        double areaFt2 = Math.PI * d * d / 4 / 144;
        loose.add(new Need(
                "concrete",
                "concrete",
                PartGroup.FOOTINGS,
                NetUnit.CUBIC_FEET,
                holes() * areaFt2 * meeting.sleeveDepth().inFeet(),
                gate));
        loose.add(new Need(
                "gravel",
                "drain gravel",
                PartGroup.FOOTINGS,
                NetUnit.CUBIC_FEET,
                holes() * areaFt2 * GRAVEL.inFeet(),
                gate));
        return new Needs(loose, List.of());
    }

    /** Soil that comes out of its holes. */
    double holesFt3() {
        double d = meeting.sleeveHole().inches();
        return holes() * Math.PI * d * d / 4 * dug().inches() / 1728;
    }
}
