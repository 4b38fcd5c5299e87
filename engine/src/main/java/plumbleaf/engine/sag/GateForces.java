package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.PostStock;

/**
 * Hinge, post and member forces of a hung gate in every combination: closed, held by its latch; at the angle that is worst for the post,
 * held by nothing; open, held by whatever holds it.
 */
public final class GateForces {
    /** First look for the worst angle. */
    private static final double STEP_DEG = 5;

    /** How near the worst angle is found. */
    private static final double NEAR_DEG = 0.01;

    /** Two angles whose strain differs by less than this share are alike; the smaller angle is taken. */
    private static final double SAME = 1e-9;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final HungGate gate;
    private final HungLoads loads;
    private final OnClosed more;
    private final List<CaseForces> found = new ArrayList<>();

    /** What else pushes the closed leaf in a case: the other leaf of a pair. */
    interface OnClosed {
        List<Load> in(GateFrame frame, Combination combination, WindWay wind);
    }

    private GateForces(HungGate gate, HungLoads loads, OnClosed more) {
        this.gate = gate;
        this.loads = loads;
        this.more = more;
    }

    /**
     * All cases, closed first, then worst, then open; within each by combination, wind in before wind out.
     *
     * <p>Wind stands square on the leaf. Closed, hinges and latch carry it where they are. A leaf that nothing holds swings and carries
     * none. Held by a rod or stop it is carried there and at the hinges, and a free hinge puts no moment about its axis into the post; a
     * hinge that locks puts all of it there. The fence beside the posts pushes them while the leaf is closed or carries no wind of its
     * own. Footing: likely soil.
     * Ice, where the job asks for it, lies on the leaf in a case of its own.
     * Source: combinations ASCE 7-16 2.4.1, with ice 2.4.3; supports from statics. Checks: GateForcesTest, SagClosedFormCheck.
     */
    public static List<CaseForces> of(HungGate gate, HungLoads loads) {
        return of(gate, loads, (frame, combination, wind) -> List.of());
    }

    /** The cases of the open leaf alone, as {@link #of} has them: what a search over builds looks at first. */
    public static List<CaseForces> open(HungGate gate, HungLoads loads) {
        GateForces some = new GateForces(gate, loads, (frame, combination, wind) -> List.of());
        some.open();
        return List.copyOf(some.found);
    }

    /** Those of the closed and of the open leaf, without the angle that is worst for the post. */
    public static List<CaseForces> closedAndOpen(HungGate gate, HungLoads loads) {
        GateForces some = new GateForces(gate, loads, (frame, combination, wind) -> List.of());
        some.closed();
        some.open();
        return List.copyOf(some.found);
    }

    /**
     * What the hinges of a case and the fence beside it bring to the foot of a hinge post: the forces at the pins with their arms from the post's axis. By statics alone;
     * {@link CaseForces#hingePost} is the same from the frame. Check: LeafFirstTest.
     *
     * @param gate on the post in question
     * @param each closed or open, its hinge forces as they are on this post
     */
    public static BaseAction onPost(HungGate gate, HungLoads loads, CaseForces each) {
        Turn turn = Turn.of(gate.leaf().hand(), each.angle());
        Vector force = Vector.ZERO;
        Vector moment = Vector.ZERO;
        for (HingeForce hinge : each.hinges()) {
            Vector pull = turn.toGate(new Vector(
                    hinge.horizontal().pounds(),
                    hinge.across().pounds(),
                    -hinge.down().pounds()));
            Vector arm = new Vector(
                    gate.pinToPostAxis().inches(),
                    gate.pinAcross().inches(),
                    hinge.z().inches());
            force = force.plus(pull);
            moment = moment.plus(arm.cross(pull));
        }
        boolean leafInWind = each.state() == LeafState.OPEN
                && gate.holdOpen().match(free -> false, bolt -> true, stop -> true, lock -> true);
        if (!leafInWind)
            for (PostPush beside : loads.onHingePost()) {
                Vector push = new Vector(
                        0,
                        beside.outward().pounds()
                                * loads.fenceShare(each.combination())
                                * each.wind().outward(),
                        0);
                force = force.plus(push);
                moment = moment.plus(new Vector(0, 0, beside.height().inches()).cross(push));
            }
        return new BaseAction(
                Force.pounds(-force.z()),
                Force.pounds(force.x()),
                Force.pounds(force.y()),
                Moment.poundInches(moment.y()),
                Moment.poundInches(-moment.x()),
                Moment.poundInches(Turn.swingSign(gate.leaf().hand()) * moment.z()));
    }

    /** The cases of the closed leaf alone, with something that also pushes it. */
    static List<CaseForces> closed(HungGate gate, HungLoads loads, OnClosed more) {
        GateForces some = new GateForces(gate, loads, more);
        some.closed();
        return List.copyOf(some.found);
    }

    /** The same with something that also pushes the closed leaf. */
    static List<CaseForces> of(HungGate gate, HungLoads loads, OnClosed more) {
        GateForces all = new GateForces(gate, loads, more);
        all.closed();
        all.worst();
        all.open();
        return List.copyOf(all.found);
    }

    private void closed() {
        add(Angle.ZERO, gate.shutAt().heldAt(), false, LeafState.CLOSED, true, true);
    }

    private void worst() {
        add(worstAngle(), new HeldAt.AtCorner(), false, LeafState.WORST, false, true);
    }

    private void open() {
        gate.holdOpen()
                .match(
                        free -> openAs(new HeldAt.AtCorner(), false, false),
                        bolt -> openAs(new HeldAt.AtCorner(), false, true),
                        stop -> openAs(new HeldAt.OnRail(stop.radius()), false, true),
                        lock -> openAs(new HeldAt.AtCorner(), true, true));
    }

    private boolean openAs(HeldAt heldAt, boolean hingeLocked, boolean leafInWind) {
        add(gate.opens(), heldAt, hingeLocked, LeafState.OPEN, leafInWind, !leafInWind);
        return true;
    }

    private void add(
            Angle open, HeldAt heldAt, boolean hingeLocked, LeafState state, boolean leafInWind, boolean fenceInWind) {
        List<String> names = new ArrayList<>();
        List<TautGate.Acting> acting = new ArrayList<>();
        List<CaseForces> blank = new ArrayList<>();
        for (Combination combination : Combination.with(!loads.ice().isNone()))
            for (WindWay wind : ways(combination)) {
                names.add(combination.key() + " " + wind.key());
                acting.add(frame -> {
                    List<Load> on = acting(loads, frame, state, combination, wind, leafInWind, fenceInWind);
                    if (state == LeafState.CLOSED) on.addAll(more.in(frame, combination, wind));
                    return on;
                });
                blank.add(new CaseForces(
                        combination,
                        state,
                        open,
                        wind,
                        List.of(),
                        BaseAction.NONE,
                        BaseAction.NONE,
                        Force.ZERO,
                        List.of()));
            }
        TautGate taut = new TautGate(
                gate, slack -> new GateFrame(gate, gate.foot().likely(), open, heldAt, hingeLocked, slack, 1));
        List<Hanging> hanging = hang(taut, names, acting);
        for (int i = 0; i < names.size(); i++) {
            CaseForces each = blank.get(i);
            String name = names.get(i);
            GateFrame frame = hanging.get(i).frame();
            FrameSolution solved = hanging.get(i).solved();
            double hold = frame.holdLb(solved, name);
            found.add(new CaseForces(
                    each.combination(),
                    state,
                    open,
                    each.wind(),
                    frame.hinges(solved, name),
                    frame.hingePost(solved, name),
                    latchPost(state, hold, each, fenceInWind),
                    Force.pounds(hold),
                    members(taut, frame, solved, name)));
        }
    }

    /** All cases at once on a frame without rods, one by one where a rod may go slack. */
    private List<Hanging> hang(TautGate taut, List<String> names, List<TautGate.Acting> acting) {
        List<Hanging> hanging = new ArrayList<>();
        if (TautGate.hasRods(gate)) {
            for (int i = 0; i < names.size(); i++) hanging.add(taut.forces(names.get(i), acting.get(i)));
            return hanging;
        }
        GateFrame frame = taut.whole();
        List<LoadCase> cases = new ArrayList<>();
        for (int i = 0; i < names.size(); i++)
            cases.add(new LoadCase(names.get(i), acting.get(i).on(frame)));
        FrameSolution solved = frame.solve(cases);
        for (int i = 0; i < names.size(); i++) hanging.add(new Hanging(frame, solved));
        return hanging;
    }

    static List<WindWay> ways(Combination combination) {
        return combination.wind() == 0 ? List.of(WindWay.NONE) : List.of(WindWay.IN, WindWay.OUT);
    }

    static List<Load> acting(
            HungLoads loads,
            GateFrame frame,
            LeafState state,
            Combination combination,
            WindWay wind,
            boolean leafInWind,
            boolean fenceInWind) {
        List<Load> acting = new ArrayList<>();
        for (Load dead : frame.leaf.dead()) acting.add(dead.times(combination.dead()));
        if (combination.live() > 0)
            acting.addAll(frame.leaf.person(loads.person().pounds() * combination.live()));
        if (combination.ice() > 0) acting.addAll(frame.leaf.ice(loads.ice(), combination.ice()));
        double share = combination.wind() * wind.outward();
        if (leafInWind) acting.addAll(frame.leaf.wind(loads.blowing(combination, state), share));
        if (fenceInWind)
            acting.addAll(frame.pushes(loads.onHingePost(), loads.fenceShare(combination) * wind.outward()));
        return acting;
    }

    /** The latch pushes its post the other way than the leaf; only the closed leaf leans on it, and a leaf of a pair on none. */
    private BaseAction latchPost(LeafState state, double holdLb, CaseForces each, boolean fenceInWind) {
        if (gate.shutAt() == ShutAt.FOOT) return BaseAction.NONE;
        double height =
                gate.leaf().latchAt().z().inches() - gate.latchPostGrade().inches();
        double push = state == LeafState.CLOSED ? -holdLb : 0;
        double across = push * height;
        if (fenceInWind)
            for (PostPush beside : loads.onLatchPost()) {
                double force = beside.outward().pounds()
                        * loads.fenceShare(each.combination())
                        * each.wind().outward();
                push += force;
                across += force * beside.height().inches();
            }
        return new BaseAction(
                Force.ZERO, Force.ZERO, Force.pounds(push), Moment.ZERO, Moment.poundInches(across), Moment.ZERO);
    }

    private List<MemberForce> members(TautGate taut, GateFrame frame, FrameSolution solved, String loadCase) {
        List<MemberForce> all = new ArrayList<>();
        for (Chain chain : frame.leaf.chains().values()) {
            if (chain.member.role() == MemberRole.ROD) {
                all.add(rod(taut, frame, solved, loadCase, chain));
                continue;
            }
            all.add(StrainedMember.of(chain, solved, loadCase));
        }
        return all;
    }

    /** A rod has no end for a frame weld: its tab holds more than its thread up to a rod of 1/2 in. */
    private static MemberForce rod(TautGate taut, GateFrame frame, FrameSolution solved, String loadCase, Chain chain) {
        String id = chain.member.id();
        Force pull = frame.leaf.isSlack(chain) ? Force.ZERO : Force.pounds(taut.pullLb(solved, loadCase, id));
        return new MemberForce(id, pull, Force.ZERO, Moment.ZERO, Moment.ZERO, Moment.ZERO, List.of());
    }

    /**
     * The angle at which dead and live load strain the post's foot most: for a square post near 45 degrees. The hinge forces of the closed
     * leaf are turned with it, which is exact for two hinges; more of them shift a little between themselves on a post that is not alike
     * all round, which may move the angle but not the forces, since those are solved for at the angle found.
     */
    private Angle worstAngle() {
        GateFrame frame = Loaded.closed(gate, gate.foot().likely(), List.of());
        FrameSolution solved = frame.solve(List.of(new LoadCase(
                "D+L", acting(loads, frame, LeafState.WORST, Combination.D_L, WindWay.NONE, false, false))));
        List<HingeForce> hinges = frame.hinges(solved, "D+L");
        double opens = gate.opens().inDegrees();
        double worst = 0;
        double most = -1;
        for (double deg = 0; deg < opens + STEP_DEG; deg += STEP_DEG) {
            double at = Math.min(deg, opens);
            double here = postStrain(hinges, at);
            if (here > most * (1 + SAME)) {
                most = here;
                worst = at;
            }
        }
        double low = Math.max(0, worst - STEP_DEG);
        double high = Math.min(opens, worst + STEP_DEG);
        while (high - low > NEAR_DEG) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            if (postStrain(hinges, a) >= postStrain(hinges, b)) high = b;
            else low = a;
        }
        double refined = (low + high) / 2;
        return Angle.degrees(postStrain(hinges, refined) > most * (1 + SAME) ? refined : worst);
    }

    /** Stress at the post's foot when the leaf and its hinge forces stand at an angle. */
    private double postStrain(List<HingeForce> hinges, double deg) {
        Turn turn = Turn.of(gate.leaf().hand(), Angle.degrees(deg));
        Vector moment = Vector.ZERO;
        for (HingeForce hinge : hinges) {
            Vector force = new Vector(
                    hinge.horizontal().pounds(),
                    hinge.across().pounds(),
                    -hinge.down().pounds());
            Vector arm = new Vector(
                    gate.pinToPostAxis().inches(),
                    gate.pinAcross().inches(),
                    hinge.z().inches());
            moment = moment.plus(arm.cross(turn.toGate(force)));
        }
        PostStock post = gate.hingePost();
        if (post.isRound()) return Math.sqrt(moment.x() * moment.x() + moment.y() * moment.y()) / post.sxIn3();
        return Math.abs(moment.y()) / post.sxIn3() + Math.abs(moment.x()) / post.syIn3();
    }
}
