package plumbleaf.engine.strength;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.support.WallKind;

/** Hinges hung on a wall: what each anchor is pulled and pushed with, and whether that wall may hold a hinge at all. */
public final class WallHinges {
    /** A hinge's plate in height, and the arm of its anchors against a weight that stands off the wall. Judgement. */
    private static final Length PLATE = Length.inches(3);

    /** Cast walls of unknown thickness. Judgement. */
    private static final Length WALL = Length.inches(8);

    /** Masonry and concrete beside a hinge: nothing. A flat 2x6 between studs 16 in. apart, E 1,300 ksi: 48 E I / L3. Judgement. */
    private static final double SOLID_LB_PER_IN = 1e8;

    private static final double BLOCKING_LB_PER_IN = 48 * 1.3e6 * (5.5 * 1.5 * 1.5 * 1.5 / 12) / (14.5 * 14.5 * 14.5);

    /** Blocking of the commonest framing lumber. Source: NDS 2018 Table 12.3.3A, spruce-pine-fir. */
    private static final double BLOCKING_GRAVITY = 0.42;

    /** Root of a lag screw over its shank; Appendix L of NDS 2018 gives 0.69 to 0.75 from 1/4 to 5/8 in., from memory. */
    private static final double ROOT = 0.7;

    /** Bending yield of a lag screw. Source: NDS 2018 Table 12J note, from memory. */
    private static final Stress LAG_YIELD = Stress.psi(45_000);

    private static final Length STRAP = Length.inches(0.25);
    private static final Stress STRAP_BEARING = Stress.psi(61_850);

    private WallHinges() {}

    /**
     * One hinge in one case.
     *
     * @param off pull off the wall, + off
     * @param across sideways along the wall
     * @param down weight
     * @param standOff from the wall to the pin
     */
    public record Pull(String hinge, Combination combination, Force off, Force across, Force down, Length standOff) {
        /** Share of an anchor: the pull split over all, the weight's couple over the upper half. */
        double onAnchor(int anchors) {
            double couple = Math.abs(down.pounds()) * standOff.inches() / PLATE.inches();
            return Math.max(0, off.pounds()) / anchors + couple / Math.max(1, anchors / 2.0);
        }

        double push(int anchors) {
            return Math.sqrt(across.pounds() * across.pounds() + down.pounds() * down.pounds()) / anchors;
        }
    }

    /** How the fixings give. */
    public static BaseSpring spring(WallKind of, double factor) {
        return new BaseSpring.Wall(of == WallKind.STUD ? BLOCKING_LB_PER_IN * factor : SOLID_LB_PER_IN);
    }

    /** Whether a wall of this kind refuses a hinge outright. */
    public static boolean refuses(WallKind of) {
        return of == WallKind.BRICK_VENEER || of == WallKind.SIDING;
    }

    /**
     * The pull of a hinge by hand: {@code T = (W a + P b) / d}. Source: statics. Check: WallHingesTest.
     *
     * @param weight W of the leaf, a from the pin to its centre
     * @param person P at the latch edge, b from the pin
     * @param apart d between the outermost pins
     */
    public static Force byHand(Force weight, Length toCentre, Force person, Length toEdge, Length apart) {
        return Force.pounds((weight.pounds() * toCentre.inches() + person.pounds() * toEdge.inches()) / apart.inches());
    }

    /** Every hinge in every case against the wall. */
    public static HeldPost held(String part, Support.WallAnchor wall, List<Pull> pulls, Force byHand) {
        HeldPost.Notes notes = new HeldPost.Notes();
        notes.fact("hingePullByHandLb", "pull of a hinge by hand, (W a + P b) / d", byHand.pounds(), "lb");
        int of = wall.perHinge();
        double pull =
                pulls.stream().mapToDouble(each -> each.onAnchor(of)).max().orElse(0);
        double push = pulls.stream().mapToDouble(each -> each.push(of)).max().orElse(0);
        notes.fact("anchorPullLb", "most that pulls one anchor", pull, "lb")
                .fact("anchorPushLb", "most that pushes one anchor", push, "lb");
        if (refuses(wall.of())) {
            refused(notes, part, wall, pull);
            return notes.done();
        }
        if (pulls.isEmpty()) return notes.done();
        switch (wall.of()) {
            case STUD -> studs(notes, part, wall, pulls);
            case CONCRETE -> {
                concrete(notes, part, wall, pulls);
                sheet(notes, part, wall, pulls, "ACI 318-19 chapter 17");
            }
            case BLOCK -> {
                notes.note(Checked.note(
                        "wall.hollow",
                        Severity.CAUTION,
                        part,
                        "Wall at " + part
                                + " is hollow block: anchors hold in cells that are grouted, or go through to a plate behind. Local code governs.",
                        Basis.commonPractice("hinges on hollow block")));
                sheet(notes, part, wall, pulls, "TMS 402, from memory");
            }
            default -> sheet(notes, part, wall, pulls, "TMS 402, from memory");
        }
        return notes.done();
    }

    /** The pull that uses most, by whatever measure. */
    private static Pull worst(List<Pull> pulls, ToDoubleFunction<Pull> use) {
        return Ties.most(pulls, use);
    }

    private static void refused(HeldPost.Notes notes, String part, Support.WallAnchor wall, double pull) {
        boolean brick = wall.of() == WallKind.BRICK_VENEER;
        notes.note(Checked.note(
                "wall.refuses",
                Severity.MUST_FIX,
                part,
                "No hinge on " + (brick ? "brick veneer" : "siding") + " at " + part + ": "
                        + (brick
                                ? "a single brick tied to the wall behind carries itself and no more; "
                                : "boards and sheathing hold no screw; ")
                        + DecimalText.whole(pull)
                        + " lb would pull on each anchor. Set a post beside it, or find the frame behind and block it.",
                Basis.commonPractice("veneer and siding carry no gate")));
    }

    private static void sheet(
            HeldPost.Notes notes, String part, Support.WallAnchor wall, List<Pull> pulls, String governs) {
        Basis maker = Basis.job("the anchor maker's sheet; " + governs);
        Anchors anchors = wall.anchors();
        int of = wall.perHinge();
        if (!anchors.isVouchedFor()) {
            Pull worst = worst(pulls, each -> each.onAnchor(of));
            notes.note(Checked.note(
                    "anchor.sheet",
                    Severity.CANNOT_SAY,
                    part,
                    loaded(part, worst, of)
                            + ". What it carries in this wall is its maker's to say: enter the allowable pull and push from the sheet.",
                    maker));
            return;
        }
        ToDoubleFunction<Pull> use =
                each -> each.onAnchor(of) / anchors.tension().pounds()
                        + each.push(of) / anchors.shear().pounds();
        Pull worst = worst(pulls, use);
        double both = use.applyAsDouble(worst);
        notes.check(Checked.of(
                "anchor.sheet",
                Severity.MUST_FIX,
                part,
                loaded(part, worst, of) + ", " + DecimalText.fixed(both, 2)
                        + " of what its maker allows for both, added straight.",
                maker,
                Measure.demand(both, 1, "")));
    }

    private static String loaded(String part, Pull worst, int of) {
        return "Hinges at " + part + ": each anchor of " + worst.hinge() + " is pulled with "
                + DecimalText.whole(worst.onAnchor(of)) + " lb and pushed with " + DecimalText.whole(worst.push(of))
                + " lb (" + worst.combination().key() + ")";
    }

    private static void concrete(HeldPost.Notes notes, String part, Support.WallAnchor wall, List<Pull> pulls) {
        if (wall.edge().isZero()) {
            notes.note(Checked.note(
                    "anchor.breakout",
                    Severity.CANNOT_SAY,
                    part,
                    "Wall at " + part
                            + ": nobody measured from the anchors to its nearest edge; the concrete may break out there. Enter it.",
                    Basis.clause("ACI 318-19 17.6.2, 17.7.2")));
            return;
        }
        ConcreteBreakout breakout = new ConcreteBreakout(
                ConcreteBreakout.POST_INSTALLED,
                Slab.USUAL_STRENGTH,
                wall.anchors().embedment());
        int of = wall.perHinge();
        Length spread = of > 1 ? PLATE : Length.ZERO;
        double pulled = breakout.groupInTension(spread, Length.ZERO, ConcreteBreakout.Edges.oneSide(wall.edge()))
                .times(ConcreteBreakout.PHI_TENSION)
                .pounds();
        double pushed = breakout.rowInShear(wall.anchors().diameter(), wall.edge(), spread, WALL)
                .times(ConcreteBreakout.PHI_SHEAR)
                .pounds();
        ToDoubleFunction<Pull> use = each -> {
            double alpha = BasePlateHold.loadFactor(each.combination());
            double one = each.onAnchor(of) * of * alpha / pulled;
            double other = each.push(of) * of * alpha / pushed;
            return Math.max(Math.max(one, other), (one + other) / 1.2);
        };
        Pull worst = worst(pulls, use);
        double alpha = BasePlateHold.loadFactor(worst.combination());
        double pull = worst.onAnchor(of) * of;
        double push = worst.push(of) * of;
        double holds = pulled / alpha;
        double edge = pushed / alpha;
        double both = use.applyAsDouble(worst);
        notes.check(Checked.of(
                "anchor.breakout",
                Severity.MUST_FIX,
                part,
                "Wall at " + part + ": a hinge pulls with " + DecimalText.whole(pull) + " lb and pushes with "
                        + DecimalText.whole(push) + " lb; the concrete holds " + DecimalText.whole(holds) + " lb and "
                        + DecimalText.whole(edge) + " lb, " + DecimalText.fixed(both, 2) + " for both.",
                Basis.clause("ACI 318-19 17.6.2, 17.7.2; 17.8.3 from memory"),
                Measure.demand(both, 1, "")));
    }

    /** Lag screws through a strap into blocking between studs, which somebody must find and set. */
    private static void studs(HeldPost.Notes notes, String part, Support.WallAnchor wall, List<Pull> pulls) {
        Anchors anchors = wall.anchors();
        int of = wall.perHinge();
        Pull worst =
                worst(pulls, each -> load(each, of) / lag(anchors, each, of).pounds());
        double total = load(worst, of);
        Force allowed = lag(anchors, worst, of);
        notes.check(Checked.of(
                "wall.lag",
                Severity.MUST_FIX,
                part,
                "Hinges at " + part + ": each lag screw is loaded with " + DecimalText.whole(total)
                        + " lb, it may take " + DecimalText.whole(allowed.pounds()) + " lb in blocking ("
                        + worst.combination().key() + ").",
                Basis.clause("NDS 2018 12.2, 12.3, Equation 12.4-1, spruce-pine-fir, dry"),
                Measure.demand(total, allowed.pounds(), "lb")));
        notes.note(Checked.note(
                "wall.blocking",
                Severity.CAUTION,
                part,
                "Wall at " + part
                        + ": find the studs and set solid blocking behind every hinge before hanging; siding is cut out, not squeezed. Local code governs.",
                Basis.commonPractice("blocking behind hinges")));
    }

    private static double load(Pull each, int of) {
        return Math.sqrt(each.onAnchor(of) * each.onAnchor(of) + each.push(of) * each.push(of));
    }

    /** A lag pulled and pushed at once, at the angle of the two. Source: NDS 2018 12.2, 12.3, Equation 12.4-1. */
    private static Force lag(Anchors anchors, Pull each, int of) {
        // as on a wood post: a person is an occupant, who may hang there every day
        double duration = WoodPostStrength.duration(each.combination());
        Force drawn = Withdrawal.allowed(
                Withdrawal.lagPerInch(BLOCKING_GRAVITY, anchors.diameter()), anchors.embedment(), duration, 1);
        Force sideways = new YieldModes(
                        anchors.diameter().times(ROOT),
                        anchors.diameter(),
                        LAG_YIELD,
                        anchors.embedment(),
                        DowelBearing.across(BLOCKING_GRAVITY, anchors.diameter()),
                        STRAP,
                        STRAP_BEARING,
                        90)
                .governing()
                .value()
                .times(duration);
        double angle = StrictMath.toDegrees(StrictMath.atan2(each.onAnchor(of), each.push(of)));
        return YieldModes.combined(drawn, sideways, angle);
    }

    /** The anchors of a post of the fence along a wall, or of a latch: nothing hangs on them, so the push alone is shown. */
    public static HeldPost along(String part, Support.WallAnchor wall, Optional<Force> push) {
        HeldPost.Notes notes = new HeldPost.Notes();
        double each = push.map(Force::pounds).orElse(0.0) / 2;
        notes.fact("anchorPushLb", "push on the most loaded anchor, half of all", each, "lb");
        if (refuses(wall.of()))
            notes.note(Checked.note(
                    "wall.veneer",
                    Severity.CAUTION,
                    part,
                    "Post " + part + " lies along " + (wall.of() == WallKind.SIDING ? "siding" : "brick veneer")
                            + ", which holds no load: fix it through to the frame behind, or set it in the ground.",
                    Basis.commonPractice("veneer and siding carry no fence")));
        if (!wall.anchors().isVouchedFor())
            notes.note(Checked.note(
                    "wall.anchors",
                    Severity.CAUTION,
                    part,
                    "Post " + part + " along the wall: up to " + DecimalText.whole(each)
                            + " lb push on one of its anchors; see that the maker's sheet allows it in this wall.",
                    Basis.job("the anchor maker's sheet")));
        else
            notes.check(Checked.of(
                    "wall.anchors",
                    Severity.MUST_FIX,
                    part,
                    "Post " + part + " along the wall: up to " + DecimalText.whole(each)
                            + " lb push on one of its anchors.",
                    Basis.job("the anchor maker's sheet"),
                    Measure.demand(each, wall.anchors().shear().pounds(), "lb")));
        return notes.done();
    }
}
