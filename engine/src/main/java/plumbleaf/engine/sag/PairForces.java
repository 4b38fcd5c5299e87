package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Angle;

/**
 * Forces of both leaves of a pair. Open, each is a gate of its own. Closed, each is a grillage on its hinges, its post and its footing, and both are held where
 * they meet by true supports: the drop rod at the foot, the latch between them at its height, the stop strip and the centre stop one way only, a keeper
 * overhead where there is one.
 */
public final class PairForces {
    private static final String AT_LATCH = "unit at latch";
    private static final String AT_TOP = "unit at top";
    private static final String GUST = "service gust";

    /** A leaf held at its foot, and how it answers. */
    private record Held(GateFrame frame, FrameSolution solved) {
        MeetingSolver.Leaf in(String loadCase) {
            return new MeetingSolver.Leaf(
                    frame.holdLb(solved, loadCase), latchIn(loadCase), topIn(loadCase), give(AT_LATCH), give(AT_TOP));
        }

        private MeetingSolver.Give give(String unit) {
            return new MeetingSolver.Give(latchIn(unit), topIn(unit), frame.holdLb(solved, unit));
        }

        private double latchIn(String loadCase) {
            return outward(frame.leaf.latch().node(), loadCase);
        }

        private double topIn(String loadCase) {
            return outward(frame.leaf.top().node(), loadCase);
        }

        private double outward(String node, String loadCase) {
            return solved.motion(loadCase, node).shiftIn().dot(frame.leaf.normal());
        }

        List<Load> pushes(double latchLb, double topLb) {
            Vector normal = frame.leaf.normal();
            return List.of(
                    new Load.AtNode(frame.leaf.latch().node(), normal.times(latchLb)),
                    new Load.AtNode(frame.leaf.top().node(), normal.times(topLb)));
        }
    }

    private final HungGate a;
    private final HungLoads onA;
    private final HungGate b;
    private final HungLoads onB;
    private final Held first;
    private final Held second;

    /** Both leaves solved for their loads, held at their feet; how they hold each other is asked afterwards. */
    public PairForces(HungGate a, HungLoads onA, HungGate b, HungLoads onB) {
        this.a = a;
        this.onA = onA;
        this.b = b;
        this.onB = onB;
        this.first = solved(a, onA);
        this.second = solved(b, onB);
    }

    /**
     * Each leaf is solved held at its foot, for its loads and for a pound at its latch and at its top; the forces at the meeting stile then follow from two
     * conditions: the leaf turns freely about its pins, so all that holds it where it meets balances its moment about them, {@code sum X = R}; and what
     * holds does not give: rod {@code w = -X / k}, latch {@code w_a = w_b}, keeper {@code w = 0}, strip and stop only where they are pressed. Linear but for
     * that, small movements, footing of likely soil; tension rods of a leaf count as pulled here, since they lie in its plane and carry nothing across it. Leaf and loads are those of {@link GateForces}. One answer for each closed case, in their order.
     * Source: force method, any text on structural analysis. Checks: PairForcesTest, PairMeetingCheck.
     */
    public List<MeetingForces> meeting(PairHold hold) {
        List<MeetingForces> meeting = new ArrayList<>();
        for (Combination combination : Combination.with(!onA.ice().isNone()))
            for (WindWay wind : GateForces.ways(combination)) {
                String name = name(combination, wind);
                meeting.add(MeetingSolver.solve(first.in(name), second.in(name), hold, combination, wind));
            }
        return List.copyOf(meeting);
    }

    /** The same two ways in the service gust, under the leaves' own weight. */
    public List<MeetingForces> service(PairHold hold) {
        List<MeetingForces> service = new ArrayList<>();
        for (WindWay wind : List.of(WindWay.IN, WindWay.OUT)) {
            String name = GUST + " " + wind.key();
            service.add(MeetingSolver.solve(first.in(name), second.in(name), hold, Combination.D_W, wind));
        }
        return List.copyOf(service);
    }

    /** All cases of leaf a, as {@link GateForces} gives them for a gate of its own, with what the meeting does to it while it is closed. */
    public List<CaseForces> leafA(List<MeetingForces> meeting) {
        return GateForces.of(a, onA, pushingA(meeting));
    }

    public List<CaseForces> leafB(List<MeetingForces> meeting) {
        return GateForces.of(b, onB, pushingB(meeting));
    }

    /** The closed cases of both leaves alone, leaf a first. */
    public List<List<CaseForces>> closed(List<MeetingForces> meeting) {
        return List.of(GateForces.closed(a, onA, pushingA(meeting)), GateForces.closed(b, onB, pushingB(meeting)));
    }

    private GateForces.OnClosed pushingA(List<MeetingForces> meeting) {
        return (frame, combination, wind) -> {
            MeetingForces at = of(meeting, combination, wind);
            return first.pushes(
                    at.latch().pounds(), at.stripTop().pounds() + at.keeperA().pounds());
        };
    }

    private GateForces.OnClosed pushingB(List<MeetingForces> meeting) {
        return (frame, combination, wind) -> {
            MeetingForces at = of(meeting, combination, wind);
            return second.pushes(
                    -at.latch().pounds(), -at.stripTop().pounds() + at.keeperB().pounds());
        };
    }

    /** How far a leaf gives outward at its latch under a pound there, held at its foot, in inches. */
    public double giveInPerLb(Side leaf) {
        return (leaf == Side.LEFT ? first : second).latchIn(AT_LATCH);
    }

    private static MeetingForces of(List<MeetingForces> meeting, Combination combination, WindWay wind) {
        for (MeetingForces each : meeting) if (each.combination() == combination && each.wind() == wind) return each;
        throw new IllegalArgumentException("No case " + name(combination, wind) + " of the meeting stile");
    }

    private static Held solved(HungGate gate, HungLoads loads) {
        GateFrame frame = new GateFrame(gate, gate.foot().likely(), Angle.ZERO, new HeldAt.AtCorner(), false);
        List<LoadCase> cases = new ArrayList<>();
        for (Combination combination : Combination.with(!loads.ice().isNone()))
            for (WindWay wind : GateForces.ways(combination))
                cases.add(new LoadCase(
                        name(combination, wind),
                        GateForces.acting(loads, frame, LeafState.CLOSED, combination, wind, true, true)));
        for (WindWay wind : List.of(WindWay.IN, WindWay.OUT)) {
            List<Load> gust = new ArrayList<>(frame.leaf.dead());
            gust.addAll(frame.leaf.wind(loads.serviceGust(), wind.outward()));
            cases.add(new LoadCase(GUST + " " + wind.key(), gust));
        }
        Vector normal = frame.leaf.normal();
        cases.add(LoadCase.of(AT_LATCH, new Load.AtNode(frame.leaf.latch().node(), normal)));
        cases.add(LoadCase.of(AT_TOP, new Load.AtNode(frame.leaf.top().node(), normal)));
        return new Held(frame, frame.solve(cases));
    }

    private static String name(Combination combination, WindWay wind) {
        return combination.key() + " " + wind.key();
    }
}
