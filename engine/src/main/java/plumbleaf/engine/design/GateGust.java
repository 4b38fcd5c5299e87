package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.sag.WindWay;
import plumbleaf.engine.strength.Bolt;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.TubeStrength;

/**
 * The gust a gate's links stand, from the forces of its load cases: {@code D} and {@code D+0.6W} in the same state of the leaf give what its weight and what the
 * wind do, since forces are linear, and the wind is then let grow. With the whole dead load or 0.6 of it, whichever is worse.
 * Source: ASCE 7-16 2.4.1 combinations 5 and 7. Check: GateGustTest.
 */
final class GateGust {
    /**
     * What a hinge or a latch is expected to carry over its maker's rating before it gives: as steel's nominal strength is over its allowable. Judgement: makers
     * do not publish what breaks them.
     */
    private static final double MAKERS_RESERVE = TubeStrength.SAFETY;

    private static final double ASD = Combination.D_W.wind();

    private final Speed speed;
    private final HungLeaf hung;
    private final List<Blown> blown = new ArrayList<>();

    /** One way the wind may blow: the case without it, the case with 0.6 of it, and what part of it is left in a plain gust. */
    private record Blown(CaseForces still, CaseForces windy, double gustPart) {
        PostGust on(Function<CaseForces, BaseAction> of) {
            return new PostGust(of.apply(still), of.apply(windy), gustPart);
        }

        /** The hinges' forces at so many times the wind. */
        HingePull pullAt(double dead, double wind) {
            double blows = gustPart / ASD * wind;
            return HingePull.blend(still, dead - blows, windy, blows);
        }

        double valueAt(ToDoubleFunction<CaseForces> of, double dead, double wind) {
            double weight = of.applyAsDouble(still);
            return weight * dead + (of.applyAsDouble(windy) - weight) * gustPart / ASD * wind;
        }
    }

    GateGust(GateSite site, GatePlan plan, HungLeaf hung) {
        this.speed = site.job().site().wind().speed();
        this.hung = hung;
        LeafHang hang = plan.hang(hung.id()).orElseThrow();
        LeafBlows blows = LeafBlows.on(site, plan, hang);
        for (CaseForces windy : hung.cases()) {
            if (windy.combination() != Combination.D_W) continue;
            for (CaseForces still : hung.cases())
                if (still.combination() == Combination.D && still.state() == windy.state())
                    blown.add(new Blown(still, windy, blows.gustPart(windy.state())));
        }
    }

    /** Steel and footing of one of its posts. */
    RatedGust post(PostDesign post, Function<CaseForces, BaseAction> of, Optional<FootingGust> footing) {
        List<GustPart> parts = new ArrayList<>();
        for (Blown one : blown) {
            parts.add(one.on(of).steel(post));
            one.on(of).footing(footing).ifPresent(parts::add);
        }
        return RatedGust.of(speed, parts);
    }

    /** The drop rod of a pair, which both leaves push. Its forces are those of the closed gate. */
    RatedGust rod(PairDesign pair) {
        List<GustPart> parts = new ArrayList<>();
        for (Blown one : blown) {
            if (one.windy().state() != LeafState.CLOSED) continue;
            double still = push(pair, Combination.D, one.still().wind());
            double windy = push(pair, Combination.D_W, one.windy().wind());
            double exposed = pair.rod().exposed().inches();
            parts.add(new GustPart(
                    "drop rod",
                    still * exposed,
                    Math.max(0, windy - still) / ASD * one.gustPart() * exposed,
                    pair.rod().allowable().poundInches(),
                    pair.rod().nominal().poundInches()));
        }
        return RatedGust.of(speed, parts);
    }

    /**
     * The latch, which the wind leans the closed leaf on; empty where what it holds is not known, which is said elsewhere.
     *
     * @param cases the leaf's own, or of a pair what the active leaf puts on its latch
     */
    Optional<RatedGust> latch(LatchModel latch, List<CaseForces> cases) {
        double holds = latch.holds().pounds();
        List<GustPart> parts = new ArrayList<>();
        for (Blown one : blown) {
            if (one.windy().state() != LeafState.CLOSED || holds == 0) continue;
            double still = hold(cases, one.still());
            double blows = (hold(cases, one.windy()) - still) / ASD * one.gustPart();
            parts.add(GustPart.solved(
                    "latch " + latch.id(),
                    times -> Math.abs(still + ASD * times * blows) / holds,
                    times -> Math.abs(still + times * blows) / (holds * MAKERS_RESERVE)));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(RatedGust.of(speed, parts));
    }

    private static double hold(List<CaseForces> cases, CaseForces like) {
        for (CaseForces each : cases)
            if (each.combination() == like.combination() && each.state() == like.state() && each.wind() == like.wind())
                return each.hold().pounds();
        throw new IllegalArgumentException("No case " + like.combination().key() + " of the latch");
    }

    private static double push(PairDesign pair, Combination combination, WindWay wind) {
        for (MeetingForces each : pair.forces())
            if (each.combination() == combination && each.wind() == wind)
                return each.rod().pounds();
        throw new IllegalArgumentException("No case " + combination.key() + " of the meeting stile");
    }

    /** The leaf's frame and its welds, its hinges, what fixes them, and the wall they pull on. */
    RatedGust leaf(Joint joint, Catalogue catalogue) {
        List<GustPart> parts = new ArrayList<>();
        List<HingeJoint> joints = HingeJoints.of(hung, catalogue);
        for (Blown one : blown) {
            for (int at = 0; at < hung.hinges().size(); at++) {
                HingeUse use = hung.hinges().get(at);
                int hinge = at;
                if (use.capacity().isZero()) continue;
                double capacity = use.capacity().pounds();
                parts.add(pulled("hinge " + use.id(), one, hinge, capacity, capacity * MAKERS_RESERVE));
            }
            for (HingeJoint each : joints) parts.add(joint(each, one));
            frame(one, parts);
            welds(one, joint, parts);
        }
        return RatedGust.of(speed, parts);
    }

    private static GustPart joint(HingeJoint joint, Blown one) {
        return GustPart.solved(
                joint.link() + " " + joint.part(),
                times -> Math.max(
                        joint.use().of(one.pullAt(1, ASD * times)),
                        joint.use().of(one.pullAt(Combination.LESS_D_W.dead(), ASD * times))),
                times -> joint.use().of(one.pullAt(1, times)) / joint.reserve());
    }

    private static GustPart pulled(String link, Blown one, int hinge, double allowable, double ultimate) {
        return GustPart.solved(
                link,
                times -> Math.max(
                                pull(one, hinge, 1, ASD * times),
                                pull(one, hinge, Combination.LESS_D_W.dead(), ASD * times))
                        / allowable,
                times -> pull(one, hinge, 1, times) / ultimate);
    }

    private static double pull(Blown one, int hinge, double dead, double wind) {
        double along = one.valueAt(each -> force(each, hinge).horizontal().pounds(), dead, wind);
        double across = one.valueAt(each -> force(each, hinge).across().pounds(), dead, wind);
        return Math.sqrt(along * along + across * across);
    }

    private static HingeForce force(CaseForces each, int hinge) {
        return each.hinges().get(hinge);
    }

    /** Members on the straight line through what they use without and with the wind. */
    private void frame(Blown one, List<GustPart> parts) {
        for (int at = 0; at < one.still().members().size(); at++) {
            double still = GateStrength.ratio(hung, one.still().members().get(at));
            double windy = GateStrength.ratio(hung, one.windy().members().get(at));
            double wind = Math.max(0, windy - still) / ASD * one.gustPart();
            String link = "frame " + one.still().members().get(at).member();
            parts.add(new GustPart(link, still, wind, 1, TubeStrength.SAFETY));
        }
    }

    /** Welds in step with what they use without and with the wind, as the members. */
    private void welds(Blown one, Joint joint, List<GustPart> parts) {
        for (int at = 0; at < one.still().members().size(); at++) {
            Member member = hung.gate()
                    .leaf()
                    .member(one.still().members().get(at).member())
                    .orElseThrow();
            double still = FrameWelds.use(member, one.still().members().get(at), joint);
            double windy = FrameWelds.use(member, one.windy().members().get(at), joint);
            double wind = Math.max(0, windy - still) / ASD * one.gustPart();
            parts.add(new GustPart("frame weld " + member.id(), still, wind, 1, Bolt.SAFETY));
        }
    }
}
