package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;

/** A post on a base plate: plate, anchors, the concrete round them, and the slab under it all. */
public final class BasePlateHold {
    /** Anchors in snug holes let a plate slide by nothing that a gate feels. Judgement. */
    private static final double SIDEWAYS_LB_PER_IN = 1e8;

    /** phi of plain concrete in bending, and its modulus of rupture over sqrt(f'c). Source: ACI 318-19 14.5.2, 21.2.1, from memory. */
    private static final double PHI_PLAIN = 0.60;

    private static final double PLAIN_TENSION = 5;

    /** Sum of both shares that pull and push may use together. Source: ACI 318-19 17.8.3, from memory. */
    static final double TOGETHER = 1.2;

    private static final Basis MAKER =
            Basis.job("the anchor maker's sheet; ACI 318-19 17.8.3 for both together, from memory");

    private static final Basis ANCHORS = Basis.clause("ACI 318-19 17.6.2, 17.7.2, post-installed, cracked");

    private final String part;
    private final Section post;
    private final Support.SlabPlate on;
    private final List<CombinedAction> actions;
    private final DesignBasis basis;

    private BasePlateHold(
            String part, Section post, Support.SlabPlate on, List<CombinedAction> actions, DesignBasis basis) {
        this.part = part;
        this.post = post;
        this.on = on;
        this.actions = actions;
        this.basis = basis;
    }

    /** Every check under every combination; on the customary basis what only wind brings is a caution. */
    public static HeldPost of(
            String part, Section post, Support.SlabPlate on, List<CombinedAction> actions, DesignBasis basis) {
        return new BasePlateHold(part, post, on, actions, basis).held();
    }

    /** How the foot turns: anchors and plate; the slab is taken as still. */
    public static BaseSpring spring(Section post, Support.SlabPlate on, double factor) {
        double turning = BasePlateAnchors.turningStiffness(post, on.plate(), on.anchors()) * factor;
        return BaseSpring.Planes.alike(new PierSpring(SIDEWAYS_LB_PER_IN, 0, turning));
    }

    /** A load factor that turns strength level into allowable-stress level: the greatest of what acts. Source: ASCE 7-16 2.3.1 over 2.4.1. */
    static double loadFactor(Combination combination) {
        if (combination.hasWind()) return 1 / Combination.D_W.wind();
        return combination.live() > 0 ? 1.6 : 1.4;
    }

    private HeldPost held() {
        HeldPost.Notes notes = new HeldPost.Notes();
        List<CombinedAction> still =
                actions.stream().filter(one -> !one.combination().hasWind()).toList();
        boolean all = binding().size() == actions.size();
        BasePlateAnchors worst = worst(actions);
        notes.fact(
                        "plateNeededIn",
                        "plate thickness needed",
                        worst.plateNeeded().inches(),
                        "in")
                .fact(
                        "anchorPullLb",
                        "pull on one anchor, prying in it",
                        worst.pull().pounds(),
                        "lb")
                .fact("pryingLb", "prying", worst.prying().pounds(), "lb")
                .fact("anchorPushLb", "push on one anchor", worst.push().pounds(), "lb")
                .fact("anchorToEdgeIn", "anchors to the edge of the slab", toEdge().inches(), "in");
        List<Check> binding = worstOfEach(all ? actions : still);
        for (Check check : binding) note(notes, check, Severity.MUST_FIX, "");
        workings(binding).forEach(notes::worked);
        if (!all && actions.size() > still.size()) {
            List<Check> windy = worstOfEach(actions);
            Check most = windy.get(0);
            for (Check each : windy) if (Ties.isMore(each.ratioOrZero(), most.ratioOrZero())) most = each;
            note(notes, most, Severity.CAUTION, "support.wind");
        }
        noSheet(notes, worst);
        depth(notes);
        return notes.done();
    }

    /** Every combination that is worst for a check, with the lines to each of its checks. */
    private List<Working> workings(List<Check> checks) {
        Map<CombinedAction, List<String>> byAction = new LinkedHashMap<>();
        for (Check check : checks)
            byAction.computeIfAbsent(check.in(), action -> new ArrayList<>()).add(check.id());
        List<Working> workings = new ArrayList<>();
        byAction.forEach((action, ids) -> workings.add(new Working(
                "Base plate of post " + part + ", " + action.name(),
                "AISC Design Guide 1, 3.3 and 3.4; AISC 360-22 J8; ACI 318-19 chapter 17, 14.5.2",
                "Mx tips it along the run, My across; B side of the plate, s between its anchors, t its thickness; ce from the anchors to the slab's edge, ha its thickness, he the anchors' depth",
                new BasePlateLines(at(action), post, on, toEdge()).to(ids))));
        return workings;
    }

    /** What must pass whatever the basis. */
    private List<CombinedAction> binding() {
        List<CombinedAction> still =
                actions.stream().filter(one -> !one.combination().hasWind()).toList();
        return basis == DesignBasis.ENGINEERED || still.isEmpty() ? actions : still;
    }

    /** One check; without a ratio it could not be run. */
    private record Check(
            String id,
            CombinedAction in,
            String words,
            OptionalDouble measured,
            OptionalDouble limit,
            String unit,
            Basis basis) {
        static Check of(
                String id, BasePlateAnchors at, String words, double measured, double limit, String unit, Basis basis) {
            return new Check(
                    id, at.action(), words, OptionalDouble.of(measured), OptionalDouble.of(limit), unit, basis);
        }

        double ratioOrZero() {
            if (measured.isEmpty() || limit.isEmpty()) return 0;
            return limit.getAsDouble() > 0 ? measured.getAsDouble() / limit.getAsDouble() : Double.MAX_VALUE;
        }
    }

    private void note(HeldPost.Notes notes, Check check, Severity failed, String otherId) {
        String id = otherId.isEmpty() ? check.id() : otherId;
        String words = "Post " + part + ", on its plate: " + check.words() + ".";
        if (check.measured().isEmpty() || check.limit().isEmpty()) {
            notes.note(Checked.note(id, Severity.CANNOT_SAY, part, words, check.basis()));
            return;
        }
        notes.check(Checked.of(
                id,
                failed,
                part,
                words,
                check.basis(),
                Measure.demand(check.measured().getAsDouble(), check.limit().getAsDouble(), check.unit())));
    }

    /** Each check under the combination that is worst for it. */
    private List<Check> worstOfEach(List<CombinedAction> of) {
        List<Check> worst = new ArrayList<>();
        for (CombinedAction one : of) {
            List<Check> here = checks(at(one));
            if (worst.isEmpty()) worst.addAll(here);
            for (int i = 0; i < here.size(); i++)
                if (Ties.isMore(here.get(i).ratioOrZero(), worst.get(i).ratioOrZero())) worst.set(i, here.get(i));
        }
        return worst;
    }

    private BasePlateAnchors worst(List<CombinedAction> of) {
        BasePlateAnchors worst = at(of.get(0));
        for (CombinedAction one : of) {
            BasePlateAnchors at = at(one);
            double moment = at.moment().poundInches() * loadFactor(one.combination());
            double most =
                    worst.moment().poundInches() * loadFactor(worst.action().combination());
            if (moment > most) worst = at;
        }
        return worst;
    }

    private BasePlateAnchors at(CombinedAction action) {
        return BasePlateAnchors.of(action, post, on.plate(), on.anchors(), on.slab());
    }

    private List<Check> checks(BasePlateAnchors at) {
        List<Check> checks = new ArrayList<>();
        checks.add(Check.of(
                "plate.thickness",
                at,
                LengthText.feetAndInches(on.plate().thickness().inches()) + " plate, "
                        + LengthText.feetAndInches(at.plateNeeded().inches()) + " needed ("
                        + at.action().name() + ")",
                at.plateNeeded().inches(),
                on.plate().thickness().inches(),
                "in",
                Basis.fromMemory("AISC Design Guide 1, 3.3 and 3.4")));
        checks.add(Check.of(
                "plate.bearing",
                at,
                "the concrete under its edge bears " + DecimalText.fixed(at.crushing(), 2) + " of what it may",
                at.crushing(),
                1,
                "",
                Basis.clause("AISC 360-22 J8")));
        checks.add(tension(at));
        checks.add(shear(at));
        checks.add(tipping(at));
        checks.add(bending(at));
        if (on.anchors().isVouchedFor()) checks.add(sheet(at));
        return checks;
    }

    private Length toEdge() {
        double in = on.slab().edge().inches()
                + post.depth().inches() / 2
                - on.plate().anchorSpacing().inches() / 2;
        return Length.inches(Math.max(0, in));
    }

    static ConcreteBreakout breakout(Support.SlabPlate on) {
        return new ConcreteBreakout(
                ConcreteBreakout.POST_INSTALLED,
                on.slab().strength(),
                on.anchors().embedment());
    }

    /** What the cone over two anchors may be pulled with; nothing at the edge. */
    static Force mayPull(Support.SlabPlate on, Length toEdge, BasePlateAnchors at) {
        if (toEdge.isZero()) return Force.ZERO;
        Force group = breakout(on)
                .groupInTension(on.plate().anchorSpacing(), Length.ZERO, ConcreteBreakout.Edges.oneSide(toEdge));
        return ConcreteBreakout.allowable(
                group, ConcreteBreakout.PHI_TENSION, loadFactor(at.action().combination()));
    }

    /** What two anchors may push the edge with; nothing at the edge. */
    static Force mayPush(Support.SlabPlate on, Length toEdge, BasePlateAnchors at) {
        if (toEdge.isZero()) return Force.ZERO;
        Force row = breakout(on)
                .rowInShear(
                        on.anchors().diameter(),
                        toEdge,
                        on.plate().anchorSpacing(),
                        on.slab().thickness());
        return ConcreteBreakout.allowable(
                row, ConcreteBreakout.PHI_SHEAR, loadFactor(at.action().combination()));
    }

    private Check tension(BasePlateAnchors at) {
        double allowed = mayPull(on, toEdge(), at).pounds();
        double pull = 2 * at.pull().pounds();
        return Check.of(
                "anchor.breakout",
                at,
                "two anchors pull with " + DecimalText.whole(pull) + " lb, the cone of concrete over them holds "
                        + DecimalText.whole(allowed) + " lb",
                pull,
                allowed,
                "lb",
                ANCHORS);
    }

    private Check shear(BasePlateAnchors at) {
        double allowed = mayPush(on, toEdge(), at).pounds();
        double push = 2 * at.push().pounds();
        return Check.of(
                "anchor.edge",
                at,
                "two anchors push the edge of the slab with " + DecimalText.whole(push) + " lb, it holds "
                        + DecimalText.whole(allowed) + " lb",
                push,
                allowed,
                "lb",
                ANCHORS);
    }

    /** The slab as one block that tips about its nearer long side; earth beside it holds nothing (judgement). */
    private Check tipping(BasePlateAnchors at) {
        Basis statics = Basis.clause("statics, 0.6 of the slab's weight, ASCE 7-16 2.4.1");
        if (!on.slab().isMeasured())
            return new Check(
                    "slab.tipping",
                    at.action(),
                    "nobody measured the slab from joint to joint, so whether its weight holds is not said: enter its length and width",
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    "",
                    statics);
        double holds = slabHoldsLbIn(on);
        double tips = tipsLbIn(on, at);
        return Check.of(
                "slab.tipping",
                at,
                DecimalText.whole(tips / 12) + " lb-ft tip the slab, its weight holds " + DecimalText.whole(holds / 12)
                        + " lb-ft",
                tips,
                holds,
                "lb-in",
                statics);
    }

    /** About its long side, at its foot. */
    static double tipsLbIn(Support.SlabPlate on, BasePlateAnchors at) {
        return at.moment().poundInches()
                + at.action().action().push().pounds() * on.slab().thickness().inches();
    }

    static double slabHoldsLbIn(Support.SlabPlate on) {
        Slab slab = on.slab();
        double weight = slab.length().inches()
                * slab.width().inches()
                * slab.thickness().inches()
                * Concrete.DENSITY.perCubicInch();
        return Combination.LESS_D_W.dead() * weight * slab.width().inches() / 2;
    }

    /** Plain concrete across the plate and once the thickness either side; half the moment goes each way, all of it one way at an edge. Judgement. */
    private Check bending(BasePlateAnchors at) {
        double thick = on.slab().thickness().inches();
        double holds = mayBendLbIn(on, at);
        double bends = at.moment().poundInches() * shareOneWay(on.slab());
        return Check.of(
                "slab.bending",
                at,
                DecimalText.whole(bends / 12) + " lb-ft bend a plain slab " + LengthText.feetAndInches(thick)
                        + " thick, it holds " + DecimalText.whole(holds / 12) + " lb-ft",
                bends,
                holds,
                "lb-in",
                Basis.fromMemory("ACI 318-19 14.5.2, plain concrete, phi 0.60"));
    }

    static double mayBendLbIn(Support.SlabPlate on, BasePlateAnchors at) {
        double thick = on.slab().thickness().inches();
        double modulus = (on.plate().side().inches() + 2 * thick) * thick * thick / 6;
        return PHI_PLAIN
                * PLAIN_TENSION
                * Math.sqrt(on.slab().strength().psi())
                * modulus
                / loadFactor(at.action().combination());
    }

    /** Of the moment. */
    static double shareOneWay(Slab slab) {
        return slab.edge().inches() < 3 * slab.thickness().inches() ? 1 : 0.5;
    }

    /** Steel, pullout and spacing are the maker's. */
    private Check sheet(BasePlateAnchors at) {
        double pull = at.pull().pounds() / on.anchors().tension().pounds();
        double push = at.push().pounds() / on.anchors().shear().pounds();
        double both = Math.max(Math.max(pull, push), (pull + push) / TOGETHER);
        return Check.of(
                "anchor.sheet",
                at,
                "each anchor is pulled with " + DecimalText.whole(at.pull().pounds()) + " lb and pushed with "
                        + DecimalText.whole(at.push().pounds()) + " lb, " + DecimalText.fixed(both, 2)
                        + " of what its maker allows for both",
                both,
                1,
                "",
                MAKER);
    }

    /** Without the sheet nothing passes. */
    private void noSheet(HeldPost.Notes notes, BasePlateAnchors at) {
        if (on.anchors().isVouchedFor()) return;
        notes.note(Checked.note(
                "anchor.sheet",
                Severity.CANNOT_SAY,
                part,
                "Post " + part + ": each anchor is pulled with "
                        + DecimalText.whole(at.pull().pounds())
                        + " lb and pushed with " + DecimalText.whole(at.push().pounds())
                        + " lb. What it carries is its maker's to say: enter the allowable pull and push from the sheet.",
                MAKER));
    }

    /** {@code hef} at most two thirds of the thickness. Source: ACI 318-19 17.9.4. */
    private void depth(HeldPost.Notes notes) {
        double most = Math.max(
                on.slab().thickness().inches() * 2 / 3, on.slab().thickness().inches() - 4);
        double deep = on.anchors().embedment().inches();
        notes.check(Checked.of(
                "anchor.depth",
                Severity.MUST_FIX,
                part,
                "Post " + part + ": anchors " + LengthText.feetAndInches(deep) + " deep in a slab of "
                        + LengthText.feetAndInches(on.slab().thickness().inches()) + ", which takes "
                        + LengthText.feetAndInches(most) + ".",
                Basis.clause("ACI 318-19 17.9.4"),
                Measure.demand(deep, most, "in")));
    }
}
