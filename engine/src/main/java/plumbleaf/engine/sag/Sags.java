package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Motion;
import plumbleaf.engine.frame.Probe;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.VirtualWork;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.LeafMake;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Offset;

/** Works out the sag budget. */
public final class Sags {
    private static final int POINTS_PER_PIECE = 4;

    private Sags() {}

    /**
     * Drop of the outline's free latch corner of the closed leaf under its wet weight, in likely soil, split by virtual work: {@code
     * drop = sum over parts of integral (M m / EI + N n / EA + T t / GJ) + sum over springs}, and {@code slack = (s_top + s_bottom) b / d}
     * beside it, each hinge's play signed by its force. By time: the leaf's own part is built into the jig, the rest comes at release,
     * what {@link LifeJudgement} presumes comes after hanging. Linear; exact within the theory of Euler and Bernoulli.
     * Source: unit load method, any text on structural analysis; split by time common practice, no source. Checks: SagSplitTest,
     * SagClosedFormCheck.
     *
     * @param gate what hangs on what
     * @param loads person and service gust, for the movement at the latch
     * @param life what is presumed of the years after
     */
    public static GateSag of(HungGate gate, HungLoads loads, LifeJudgement life) {
        return of(gate, loads, life, true);
    }

    /** The same without how the leaf sways, which is half the work: for a search over builds. */
    public static GateSag judged(HungGate gate, HungLoads loads, LifeJudgement life) {
        return of(gate, loads, life, false);
    }

    private static GateSag of(HungGate gate, HungLoads loads, LifeJudgement life, boolean swaying) {
        Loaded likely = Loaded.of(gate, gate.foot().likely(), loads);
        Hanging dead = likely.dead();
        GateFrame frame = dead.frame();
        FrameSolution solved = dead.solved();
        ByCause cause = split(frame, solved);
        Offset elastic = Offset.inches(solved.displacement(Loaded.DEAD, freeCorner(frame)));
        Offset total = elastic.plus(cause.hingeSlack()).plus(framePlay(frame));
        Loaded softly = Loaded.of(gate, gate.foot().soft(), HungLoads.person(loads.person()));
        ByCause softCause = split(softly.dead().frame(), softly.dead().solved());
        return new GateSag(
                total,
                cause,
                new ByTime(cause.leaf(), total.minus(cause.leaf()), after(likely, cause, life)),
                new SoilDrops(
                        softCause.total(),
                        cause.total(),
                        drop(gate, gate.foot().stiff()).total()),
                after(softly, softCause, life).total(),
                live(likely.person(), Loaded.PERSON),
                live(likely.gust(), Loaded.GUST),
                Angle.radians(frame.footingTurnRad(solved, Loaded.DEAD)),
                gate.foot().sixDeeper().map(foot -> drop(gate, foot).total()),
                frame.hinges(solved, Loaded.DEAD),
                swaying
                        ? DropShare.of(frame.leaf.chains().values(), solved, Loaded.DEAD, freeCorner(frame))
                        : List.of(),
                shape(frame, solved),
                swaying ? Sways.of(gate, loads, likely, framePlay(frame)) : LeafSway.notAsked(framePlay(frame)),
                iced(likely.ice(), loads.ice()));
    }

    /** Ice comes and goes as a person does: it moves the leaf beside the dead load, play apart. */
    private static Optional<IceDrop> iced(Hanging hanging, IceCoat coat) {
        if (coat.isNone()) return Optional.empty();
        double dropIn = hanging.solved().displacement(Loaded.ICE, freeCorner(hanging.frame()));
        return Optional.of(new IceDrop(coat.thickness(), coat.weight(), Offset.inches(dropIn)));
    }

    /** The drop alone, by cause, on a given footing: what a search over builds or depths asks first. */
    public static ByCause drop(HungGate gate, BaseSpring foot) {
        Hanging dead = Loaded.dead(gate, foot);
        return split(dead.frame(), dead.solved());
    }

    /** What comes after hanging on a given footing: what the allowed drop is about. */
    public static AfterHanging afterHanging(HungGate gate, BaseSpring foot, HungLoads loads, LifeJudgement life) {
        Loaded loaded = Loaded.of(gate, foot, HungLoads.person(loads.person()));
        return after(loaded, split(loaded.dead().frame(), loaded.dead().solved()), life);
    }

    static Probe freeCorner(GateFrame frame) {
        return Probe.shiftAt(frame.leaf.corner().node(), frame.leaf.armToFreeCorner(), Vector.Z.negated());
    }

    /** The hold at the latch strains nothing under dead load; its share, rounding apart nothing, counts with the leaf. */
    static ByCause split(GateFrame frame, FrameSolution solved) {
        VirtualWork work = solved.virtualWork(Loaded.DEAD, freeCorner(frame));
        double leafIn =
                work.sumOf(part -> !frame.isHinge(part) && !GateFrame.isPost(part) && !part.equals(GateFrame.FOOTING));
        return new ByCause(
                Offset.inches(leafIn).plus(framePlay(frame)),
                Offset.inches(work.sumOf(frame::isHinge)),
                Offset.inches(slackIn(frame.gate, frame.hinges(solved, Loaded.DEAD))),
                Offset.inches(work.sumOf(GateFrame::isPost)),
                Offset.inches(work.sumOf(GateFrame.FOOTING::equals)));
    }

    /**
     * Drop by the play of the hinges: {@code 2 s b / d}, b from the pin to the free corner, d between the outermost pins, + down where the
     * leaf's weight turns it towards the latch. With play alike at all hinges the outermost two take it up and a hinge between them has no
     * lever, whatever share of the couple it takes later: so the sign is that of the whole couple, not of the top hinge, which a middle
     * hinge can turn about. A rigid turn, not part of virtual work.
     * Source: geometry. Checks: SagClosedFormCheck, SecondProgramCheck.
     */
    static double slackIn(HungGate gate, List<HingeForce> hinges) {
        double lowestIn = hinges.get(0).z().inches();
        double coupleLbIn = 0;
        for (HingeForce hinge : hinges)
            coupleLbIn += hinge.horizontal().pounds() * (hinge.z().inches() - lowestIn);
        return 2 * gate.hinge().slack().inches() * Math.signum(coupleLbIn) * leverage(gate);
    }

    /**
     * Drop by the play of the corner brackets of a bolted frame: every joint turns freely by {@code s} before it holds, so the leaf leans into a parallelogram and its
     * latch stile sinks by {@code s b}, b between the stiles. A rod that pulls or a brace of tube takes the play up. A rigid movement, not part of virtual
     * work; it counts with the leaf, since the jig or the brackets' own bolts take it out. Source: geometry. Check: BracketTest.
     */
    static Offset framePlay(GateFrame frame) {
        LeafMake make = frame.gate.leaf().make();
        boolean tubes = make.bracing().match(some -> some.count() > 0, cross -> true, rod -> false);
        if (!make.isBolted() || tubes || !frame.leaf.rods().isEmpty()) return Offset.ZERO;
        double betweenIn = frame.gate
                        .leaf()
                        .of(MemberRole.LATCH_STILE)
                        .get(0)
                        .from()
                        .r()
                        .inches()
                - frame.gate.leaf().of(MemberRole.HINGE_STILE).get(0).from().r().inches();
        return Offset.inches(make.bracket().playOrUsual().radians() * betweenIn);
    }

    /** From the pin to the free corner, over the distance between the outermost pins. */
    private static double leverage(HungGate gate) {
        return gate.leaf().freeCorner().r().inches() / gate.leaf().pinSpacing().inches();
    }

    private static AfterHanging after(Loaded loaded, ByCause cause, LifeJudgement life) {
        GateFrame frame = loaded.person().frame();
        double personIn = loaded.person().solved().displacement(Loaded.PERSON, freeCorner(frame));
        return after(
                frame.gate,
                cause.footing(),
                creepIn(frame.gate.hingePost().lastingBend(), cause.post()),
                personIn,
                life);
    }

    /** What a post of wood bends further under the leaf's own weight over the years, {@code (Kcr - 1)} times what it bent at once. Source: NDS 2018 3.5.2. */
    static double creepIn(double lastingBend, Offset post) {
        return (lastingBend - 1) * post.inches();
    }

    /**
     * @param creepIn what the post itself creeps
     * @param personIn drop of the free corner under a person at the latch edge
     */
    static AfterHanging after(HungGate gate, Offset footing, double creepIn, double personIn, LifeJudgement life) {
        return new AfterHanging(
                Offset.inches(footing.inches() * life.groundCreep() + creepIn),
                Offset.inches(2 * life.wear().inches() * leverage(gate)),
                footing.times(life.softSeason()),
                Offset.inches(personIn * life.residual()));
    }

    private static LatchLive live(Hanging hanging, String loadCase) {
        GateFrame frame = hanging.frame();
        FrameSolution solved = hanging.solved();
        Vector moved = solved.motion(loadCase, frame.leaf.latch().node()).shiftIn();
        return new LatchLive(loadCase, Offset.inches(-moved.z()), Offset.inches(moved.dot(frame.leaf.away())));
    }

    private static List<BentLine> shape(GateFrame frame, FrameSolution solved) {
        List<BentLine> lines = new ArrayList<>();
        for (Chain chain : frame.leaf.chains().values()) {
            if (frame.leaf.isSlack(chain)) continue;
            List<BentLine.Point> points = new ArrayList<>();
            for (Chain.Piece piece : chain.pieces())
                bend(
                        points,
                        solved,
                        piece.member(),
                        piece.from().at(),
                        piece.to().at());
            lines.add(new BentLine(chain.member.id(), points));
        }
        List<BentLine.Point> post = new ArrayList<>();
        List<String> pieces = frame.postPieces();
        for (int i = 0; i < pieces.size(); i++)
            bend(
                    post,
                    solved,
                    pieces.get(i),
                    new Vector(frame.axisIn(), 0, frame.postHeightIn(i)),
                    new Vector(frame.axisIn(), 0, frame.postHeightIn(i + 1)));
        lines.add(new BentLine("post", post));
        return lines;
    }

    private static void bend(List<BentLine.Point> points, FrameSolution solved, String member, Vector from, Vector to) {
        double length = solved.memberLengthIn(member);
        for (int i = points.isEmpty() ? 0 : 1; i <= POINTS_PER_PIECE; i++) {
            double share = i / (double) POINTS_PER_PIECE;
            Vector at = from.plus(to.minus(from).times(share));
            Motion moved = solved.motionAlong(Loaded.DEAD, member, share * length);
            points.add(new BentLine.Point(
                    new Place(Offset.inches(at.x()), Offset.inches(at.y()), Offset.inches(at.z())),
                    Offset.inches(moved.shiftIn().x()),
                    Offset.inches(-moved.shiftIn().z())));
        }
    }
}
