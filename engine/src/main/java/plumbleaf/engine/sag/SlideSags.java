package plumbleaf.engine.sag;

import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Probe;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.VirtualWork;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Works out how the nose of a slide leaf drops and how it is set. */
public final class SlideSags {
    private static final String DEAD = "D";
    private static final String PERSON = "L";
    private static final String GUST = "service gust";

    private SlideSags() {}

    /**
     * Drop of the lower nose corner by virtual work, {@code sum of integral (M m / EI + N n / EA + T t / GJ) + sum over footings}, and beside it the play of the rollers as
     * a rigid turn: the leaf sits on the lower wheel in front and rises to the upper one behind, so the nose sinks by {@code p x / s}, x from the front rollers to the
     * nose, s between the rollers. Both wheels' wear does the same over the years, the front one's sinking the nose by itself besides: {@code w (1 + 2 x / s)}.
     * Linear; exact within the theory of Euler and Bernoulli.
     * Source: unit load method, any text on structural analysis; play by geometry. Checks: SlideStaticsCheck, SlideNoseCheck.
     */
    public static SlideSag of(SlideGate gate, SlideLoads loads, LifeJudgement life) {
        SlideFrame frame = new SlideFrame(gate, 0, false, PierSprings::likely);
        SlideActing acting = new SlideActing(frame, loads);
        FrameSolution solved = Frames.solve(
                frame.model(),
                List.of(
                        new LoadCase(DEAD, acting.dead()),
                        new LoadCase(
                                PERSON, List.of(acting.person(loads.person().pounds()))),
                        new LoadCase(GUST, acting.wind(loads.serviceGust(), 1))));
        SlideSag.ByPart cause = split(gate, frame, solved);
        double person = solved.displacement(PERSON, noseCorner(frame));
        double across = Math.max(
                Math.abs(solved.motion(GUST, frame.nose().first().node())
                        .shiftIn()
                        .y()),
                Math.abs(solved.motion(GUST, frame.nose().last().node())
                        .shiftIn()
                        .y()));
        Offset rest = cause.total().minus(cause.frame());
        double wear = life.wear().inches() * (1 + 2 * leverage(gate));
        double ground = cause.footings().inches() * (life.groundCreep() + life.softSeason());
        return new SlideSag(
                cause,
                cause.frame(),
                rest,
                rest.times(1 / leverage(gate)),
                Offset.inches(wear + ground + life.residual() * person),
                inSoil(gate, loads, PierSprings::soft),
                inSoil(gate, loads, PierSprings::stiff),
                Offset.inches(person),
                Length.inches(across),
                DropShare.of(frame.chains().values(), solved, DEAD, noseCorner(frame)),
                tail(gate, loads));
    }

    /** The nose's lever over the rollers' own: x / s. */
    static double leverage(SlideGate gate) {
        double nose = gate.plan().shape().nose().inches() - gate.front().at().inches();
        return nose / (gate.front().at().inches() - gate.rear().at().inches());
    }

    private static SlideSag.ByPart split(SlideGate gate, SlideFrame frame, FrameSolution solved) {
        VirtualWork work = solved.virtualWork(DEAD, noseCorner(frame));
        double posts = work.sumOf(SlideFrame::isPost);
        double feet = work.sumOf(SlideFrame::isFoot);
        double play = gate.plan().rollers().play().inches() * leverage(gate);
        return new SlideSag.ByPart(
                Offset.inches(work.displacement() - posts - feet),
                Offset.inches(play),
                Offset.inches(posts),
                Offset.inches(feet));
    }

    private static Probe noseCorner(SlideFrame frame) {
        Chain.Stop low = frame.nose().first();
        Vector corner = Chain.vector(frame.leaf.freeCorner());
        return Probe.shiftAt(low.node(), corner.minus(low.at()), Vector.Z.negated());
    }

    private static Offset inSoil(SlideGate gate, SlideLoads loads, Function<PierSprings, BaseSpring> soil) {
        SlideFrame frame = new SlideFrame(gate, 0, false, soil);
        FrameSolution solved = Frames.solve(frame.model(), new LoadCase(DEAD, new SlideActing(frame, loads).dead()));
        return split(gate, frame, solved).total();
    }

    /** The open leaf hangs out behind its rear rollers; its play then lets the tail sink as it let the nose. */
    private static Offset tail(SlideGate gate, SlideLoads loads) {
        SlideFrame frame = new SlideFrame(gate, gate.plan().shape().travel().inches(), false, PierSprings::likely);
        FrameSolution solved = Frames.solve(frame.model(), new LoadCase(DEAD, new SlideActing(frame, loads).dead()));
        Chain.Stop low = frame.tail().first();
        double elastic = solved.displacement(DEAD, Probe.shift(low.node(), Vector.Z.negated()));
        double front = gate.front().at().inches();
        double rear = gate.rear().at().inches();
        double beyond = rear - gate.plan().shape().openEnd().inches();
        double play = frame.lifts(true) ? gate.plan().rollers().play().inches() * beyond / (front - rear) : 0;
        return Offset.inches(elastic + play);
    }
}
