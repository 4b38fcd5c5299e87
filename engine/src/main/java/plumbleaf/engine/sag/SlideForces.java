package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.quantity.Length;

/** Roller, post and member forces of a slide gate in every combination: closed in its receiver, along its whole way, and open. */
public final class SlideForces {
    /** Places along the way at which it is solved besides both ends, the first just off the receiver. */
    private static final int PLACES = 12;

    private SlideForces() {}

    /**
     * All cases, closed first, then along the way from the receiver on, then open; within each by combination, wind in before wind out.
     *
     * <p>Closed, the wind goes to the rollers and the receiver where they are; anywhere else to the rollers alone, and a nose just off its receiver strains them most. The
     * fence beside the posts pushes them too, until the open leaf stands before it. A person may hang on the nose anywhere. Soil: likely.
     * Source: combinations ASCE 7-16 2.4.1, with ice 2.4.3; supports from statics. Checks: SlideStaticsCheck, SlideGateTest.
     */
    public static List<SlideCase> of(SlideGate gate, SlideLoads loads) {
        return at(gate, loads, PLACES);
    }

    /** Closed, just off the receiver and open alone: what fails here fails, and a search asks no more of it. */
    public static List<SlideCase> atItsEnds(SlideGate gate, SlideLoads loads) {
        return at(gate, loads, 1);
    }

    private static List<SlideCase> at(SlideGate gate, SlideLoads loads, int places) {
        List<SlideCase> all = new ArrayList<>();
        double way = gate.plan().shape().travel().inches();
        at(gate, loads, 0, LeafState.CLOSED, all);
        for (int i = 0; i < places; i++) at(gate, loads, way * i / PLACES, LeafState.WORST, all);
        at(gate, loads, way, LeafState.OPEN, all);
        return List.copyOf(all);
    }

    private static void at(SlideGate gate, SlideLoads loads, double travelIn, LeafState state, List<SlideCase> all) {
        SlideFrame frame = new SlideFrame(gate, travelIn, state == LeafState.CLOSED, PierSprings::likely);
        SlideActing acting = new SlideActing(frame, loads);
        List<LoadCase> cases = new ArrayList<>();
        for (Combination combination : cases(loads))
            for (WindWay wind : GateForces.ways(combination))
                cases.add(new LoadCase(
                        combination.key() + " " + wind.key(),
                        acting.in(combination, wind, state, state != LeafState.OPEN)));
        FrameSolution solved = Frames.solve(frame.model(), cases);
        for (Combination combination : cases(loads))
            for (WindWay wind : GateForces.ways(combination)) {
                String name = combination.key() + " " + wind.key();
                all.add(new SlideCase(
                        combination,
                        state,
                        Length.inches(travelIn),
                        wind,
                        frame.onRollers(solved, name, "front"),
                        frame.onRollers(solved, name, "rear"),
                        frame.atGrade(solved, name, "front"),
                        frame.atGrade(solved, name, "rear"),
                        state == LeafState.CLOSED ? frame.atGrade(solved, name, "receiver") : BaseAction.NONE,
                        frame.atReceiver(solved, name, true),
                        frame.atReceiver(solved, name, false),
                        StrainedMember.all(frame.chains().values(), solved, name)));
            }
    }

    /** A slide's ice is weighed; wind on the iced leaf is left to the design wind, which is stronger than what blows on ice. */
    private static List<Combination> cases(SlideLoads loads) {
        return Combination.with(!loads.ice().isNone()).stream()
                .filter(each -> !each.hasWindOnIce())
                .toList();
    }
}
