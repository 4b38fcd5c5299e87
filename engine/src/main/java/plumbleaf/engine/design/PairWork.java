package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.LateralSoil;
import plumbleaf.engine.footing.LateralWork;
import plumbleaf.engine.gate.MeetingPlace;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.sag.PairForces;
import plumbleaf.engine.sag.PairHold;
import plumbleaf.engine.sag.Slam;
import plumbleaf.engine.strength.RodBending;

/** Works out how the leaves of a pair are held where they meet: rod, sleeve, stop and keeper, as asked and as they might be. */
final class PairWork {
    private final GateSite site;
    private final GateKind.Pair kind;
    private final MeetingPlace place;
    private final PairForces forces;
    private final HungGate a;
    private final HungGate b;
    private final HungLoads onA;
    private final HungLoads onB;

    /** What holds them, tried: the cases, and the rod in the worst of them. */
    record Tried(Meeting meeting, List<MeetingForces> forces, MeetingForces worst, RodBending rod) {}

    PairWork(
            GateSite site,
            GateKind.Pair kind,
            MeetingPlace place,
            HungGate a,
            HungLoads onA,
            HungGate b,
            HungLoads onB) {
        this.site = site;
        this.kind = kind;
        this.place = place;
        this.a = a;
        this.b = b;
        this.onA = onA;
        this.onB = onB;
        this.forces = new PairForces(a, onA, b, onB);
    }

    PairForces forces() {
        return forces;
    }

    MeetingPlace place() {
        return place;
    }

    /** With the rod that was pinned, or with the thinnest that holds; the thickest there is where none does. */
    Tried asked() {
        return tried(kind.meeting());
    }

    Tried tried(Meeting meeting) {
        if (meeting.rod().value().flatMap(site.catalogue()::rod).isPresent())
            return tried(meeting, site.catalogue().rod(meeting.rod().or("")).orElseThrow());
        List<RodModel> rods = site.catalogue().rods();
        for (RodModel rod : rods) {
            Tried with = tried(meeting, rod);
            if (with.rod().utilisation() <= 1) return with;
        }
        return tried(meeting, rods.get(rods.size() - 1));
    }

    private Tried tried(Meeting meeting, RodModel rod) {
        Length exposed = exposed(meeting);
        List<MeetingForces> all = forces.meeting(hold(meeting, rod));
        MeetingForces worst = all.get(0);
        for (MeetingForces each : all)
            if (Ties.isMore(each.rod().pounds(), worst.rod().pounds())) worst = each;
        return new Tried(meeting, all, worst, RodBending.of(rod, exposed, worst.rod()));
    }

    /** From the mouth of the sleeve to the lowest guide. */
    Length exposed(Meeting meeting) {
        return Length.inches(
                Math.max(0, place.toGuide().inches() - meeting.sleeveAbove().inches()));
    }

    private PairHold hold(Meeting meeting, RodModel rod) {
        return new PairHold(
                kind.active(),
                a.leaf().hand().swing(),
                meeting.rods(),
                RodBending.stiffnessLbPerIn(rod, exposed(meeting)),
                meeting.hasStrip(),
                meeting.hasStop(),
                meeting.topKeeper());
    }

    PairDesign design(Tried with, Offset dropA, Offset dropB) {
        Meeting meeting = with.meeting();
        RodModel rod = with.rod().rod();
        Offset service = top(forces.service(hold(meeting, rod)));
        Force push = Force.ZERO;
        Length needed = Length.ZERO;
        Optional<LateralWork> sleeve = Optional.empty();
        for (MeetingForces each : with.forces()) {
            Force here = Force.pounds(Math.abs(each.ground().pounds()));
            if (here.compareTo(push) > 0) push = here;
            Optional<LateralWork> work = sleeveWork(meeting, each);
            Length depth = work.map(LateralWork::depth).orElse(Length.ZERO);
            if (depth.compareTo(needed) > 0) {
                needed = depth;
                sleeve = work;
            }
        }
        double stiffness = slamStiffness(rod, meeting);
        HungGate striking = striking();
        Force slam = Slam.peak(Slam.edge(site.gate(), striking.leaf()), striking.leaf(), stiffness);
        return new PairDesign(
                kind.active(),
                meeting,
                place,
                with.rod(),
                with.worst(),
                with.forces(),
                service,
                top(with.forces()),
                new HoleSize(meeting.sleeveHole(), meeting.sleeveDepth()),
                push,
                needed,
                sleeve,
                new MeetingLines(a.leaf(), onA, b.leaf(), onB).of(with.worst()),
                stiffness,
                slam,
                RodBending.of(rod, exposed(meeting), slam),
                dropA,
                dropB,
                List.of());
    }

    /** The leaf that closes last. */
    private HungGate striking() {
        return kind.active() == Side.LEFT ? a : b;
    }

    /** Speed of its latch edge where it strikes the other one. */
    Speed slamSpeed() {
        return Slam.edge(site.gate(), striking().leaf());
    }

    private static Offset top(List<MeetingForces> all) {
        Offset most = Offset.ZERO;
        for (MeetingForces each : all) if (each.top().compareTo(most) > 0) most = each.top();
        return most;
    }

    /** The hole of the sleeve as a pole that is pushed at the mouth of the sleeve and at the height of the centre stop; empty where nothing is presumed for the soil. */
    private Optional<LateralWork> sleeveWork(Meeting meeting, MeetingForces forces) {
        Soil soil = site.job().site().soil();
        LateralSoil lateral = LateralSoil.of(soil, site.standards().soil(), false);
        if (soil.kind() == SoilKind.FILL || lateral.perFoot().psf() <= 0) return Optional.empty();
        Force rods =
                Force.pounds(Math.abs(forces.rodA().pounds() + forces.rodB().pounds()));
        Force stops =
                Force.pounds(Math.abs(forces.stopA().pounds() + forces.stopB().pounds()));
        BaseAction action =
                BaseAction.across(rods, meeting.sleeveAbove()).plus(BaseAction.across(stops, meeting.stop()));
        CombinedAction worst = new CombinedAction(
                forces.combination(), "leaves closed", forces.wind().key(), action);
        return Optional.of(new LateralWork(worst, lateral, false, meeting.sleeveHole(), false));
    }

    /**
     * The leaf that closes last, let slam against the other one: {@code F = (v / b) sqrt(I k)} with the struck leaf's own give at the latch (frame out of plane,
     * hinges, post and footing) and its rod in series, {@code 1/k = f + 1/k_rod}. The striking leaf taken as rigid, on the safe side.
     */
    private double slamStiffness(RodModel rod, Meeting meeting) {
        Side struck = kind.active().other();
        return 1 / (forces.giveInPerLb(struck) + 1 / RodBending.stiffnessLbPerIn(rod, exposed(meeting)));
    }
}
