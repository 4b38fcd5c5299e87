package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.LateralWork;
import plumbleaf.engine.gate.MeetingPlace;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.RodBending;

/**
 * How the closed leaves of a pair are held where they meet.
 *
 * @param active which leaf opens first
 * @param asked rod, strip, stop and keeper as the job says
 * @param place where they meet
 * @param rod the rod with the push that bends it most
 * @param worst the case of that push
 * @param forces every closed case
 * @param topInService how far a top goes out of plane in the service gust, without sign
 * @param topInWind the same in the worst combination
 * @param sleeve hole that the ground sleeve is set in
 * @param sleevePush the most that the ground takes there
 * @param sleeveNeeded depth that push asks for; zero where nothing is presumed for the soil
 * @param sleeveWork the case that asks for that depth, with what it was worked out from; empty where the depth is zero
 * @param balance how what holds each leaf in the worst case balances its wind, line by line for the calculation book
 * @param slamStiffnessLbPerIn of the struck leaf and its rod in series, at the latch
 * @param slam peak force where one leaf is let slam against the other
 * @param slamRod what the rod makes of it
 * @param dropA what leaf a drops after hanging, in soft soil
 * @param dropB the same of leaf b
 * @param rated the gust that each leaf stands with its post and footing, a before b; empty until it is asked for
 */
public record PairDesign(
        Side active,
        Meeting asked,
        MeetingPlace place,
        RodBending rod,
        MeetingForces worst,
        List<MeetingForces> forces,
        Offset topInService,
        Offset topInWind,
        HoleSize sleeve,
        Force sleevePush,
        Length sleeveNeeded,
        Optional<LateralWork> sleeveWork,
        List<WorkedLine> balance,
        double slamStiffnessLbPerIn,
        Force slam,
        RodBending slamRod,
        Offset dropA,
        Offset dropB,
        List<RatedGust> rated) {
    public PairDesign {
        forces = List.copyOf(forces);
        balance = List.copyOf(balance);
        rated = List.copyOf(rated);
    }

    /** How far the latch corners part in height in the years after hanging, both posts in soft soil. */
    public Length dropDifference() {
        return Length.inches(Math.abs(dropA.inches() - dropB.inches()));
    }

    /** What the play of the rod in its guides and its sleeve adds at the tops, where nothing keeps them overhead: the leaves turn about their pins as they are. */
    public Length topPlay() {
        return asked.topKeeper() ? Length.ZERO : rod.rod().playEachWay();
    }

    /** The closed cases of a leaf as the latch between the leaves feels them: what it carries from one to the other. */
    List<CaseForces> atLatch(List<CaseForces> cases) {
        List<CaseForces> felt = new ArrayList<>();
        for (CaseForces each : cases) {
            if (each.state() != LeafState.CLOSED) continue;
            for (MeetingForces at : forces)
                if (at.combination() == each.combination() && at.wind() == each.wind())
                    felt.add(each.heldBy(at.latch()));
        }
        return felt;
    }

    PairDesign rated(RatedGust a, RatedGust b) {
        return new PairDesign(
                active,
                asked,
                place,
                rod,
                worst,
                forces,
                topInService,
                topInWind,
                sleeve,
                sleevePush,
                sleeveNeeded,
                sleeveWork,
                balance,
                slamStiffnessLbPerIn,
                slam,
                slamRod,
                dropA,
                dropB,
                List.of(a, b));
    }

    /** Number of rods. */
    public int rods() {
        return asked.rods();
    }

    /** Needed over dug. */
    public double sleeveUtilisation() {
        return sleeveNeeded.inches() / sleeve.depth().inches();
    }
}
