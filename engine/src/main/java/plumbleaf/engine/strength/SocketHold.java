package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;

/**
 * A rigid post grouted in a core of concrete: the push of its upper block and the greatest pressure, at the top.
 *
 * @param upper P2, force of the block above the pivot, towards the edge
 * @param peakLbPerIn p0, load per inch of depth at the top
 */
public record SocketHold(Force upper, double peakLbPerIn) {
    /** Grout and concrete pressing back, per inch of depth and of movement. Judgement. */
    private static final Stress GROUT = Stress.psi(1e6);

    private static final Basis SIDE =
            Basis.judgement("ACI 318-19 17.7.2.2.1 without a diameter; a socket's side has no clause of its own");

    /**
     * {@code P2 = (2 m H + 3 M)^2 / [3 m (m H + 2 M)], p0 = 2 (2 m H + 3 M) / m2}, for a rigid post on constant stiffness; with M = H L the pivot is
     * {@code a = (2 m2 + 3 L m) / (3 m + 6 L)}. Good down to no push at all.
     * Source: engineering forum threads 8728 and 8797, derived again from statics. Check: SocketHoldCheck (CX24).
     *
     * @param push H at the concrete's face
     * @param moment M there
     * @param depth m of the socket
     */
    public static SocketHold of(Force push, Moment moment, Length depth) {
        double m = depth.inches();
        double h = push.pounds();
        double sum = 2 * m * h + 3 * moment.poundInches();
        double below = 3 * m * (m * h + 2 * moment.poundInches());
        return new SocketHold(Force.pounds(below > 0 ? sum * sum / below : 0), 2 * sum / (m * m));
    }

    /** Stress of the grout on the post. */
    public Stress peak(Length postWidth) {
        return Stress.psi(peakLbPerIn / postWidth.inches());
    }

    /** How the foot gives. */
    public static BaseSpring spring(PostStock post, Support.CoreSocket in, double factor) {
        return BaseSpring.Planes.alike(
                new SoilStiffness.Constant(GROUT.times(factor)).spring(new HoleSize(post.depth(), in.depth())));
    }

    /** Crushing of the grout and breaking out of the side, under every combination. */
    public static HeldPost held(
            String part, PostStock post, Support.CoreSocket in, List<CombinedAction> actions, DesignBasis basis) {
        HeldPost.Notes notes = new HeldPost.Notes();
        List<CombinedAction> still =
                actions.stream().filter(one -> !one.combination().hasWind()).toList();
        boolean all = basis == DesignBasis.ENGINEERED || still.isEmpty();
        CombinedAction worst = worst(all ? actions : still, in.depth());
        SocketHold hold = of(worst(actions, in.depth()), in.depth());
        notes.fact(
                        "socketForceLb",
                        "force of the upper block towards the edge",
                        hold.upper().pounds(),
                        "lb")
                .fact(
                        "socketPressurePsi",
                        "greatest pressure on the grout",
                        hold.peak(post.depth()).psi(),
                        "psi");
        notes.worked(working(part, post, in, worst));
        depth(notes, part, in);
        bearing(notes, part, post, in, worst, Severity.MUST_FIX, "socket.bearing");
        side(notes, part, in.slab(), in.depth(), worst, Severity.MUST_FIX, "socket.side");
        if (!all && actions.size() > still.size())
            side(notes, part, in.slab(), in.depth(), worst(actions, in.depth()), Severity.CAUTION, "support.wind");
        return notes.done();
    }

    /** Both checks line by line for the calculation book: {@code bearing} and, where the concrete has an edge, {@code side}. */
    private static Working working(String part, PostStock post, Support.CoreSocket in, CombinedAction at) {
        SocketHold hold = of(at, in.depth());
        double m = in.depth().inches();
        double h = at.action().push().pounds();
        double sum = 2 * m * h + 3 * at.action().size().poundInches();
        Slab slab = in.slab();
        List<WorkedLine> lines = new ArrayList<>();
        WorkedLine s = WorkedLine.of("s", "2 \u00d7 m \u00d7 H + 3 \u00d7 M")
                .put("m", in.depth())
                .put("H", h, "lb")
                .put("M", at.action().size().poundInches(), "lb-in")
                .gives(sum, "lb-in");
        WorkedLine p = WorkedLine.of("p", "2 \u00d7 s / m\u00b2 / w")
                .put(s)
                .put("m", in.depth())
                .put("w", post.depth())
                .note("on the grout at the top, w the post's width")
                .gives(hold.peak(post.depth()).psi(), "psi");
        WorkedLine fb = WorkedLine.of("Fb", "0.85 \u00d7 fc \u00d7 min(2; (w + 2 \u00d7 c) / w) / 2.31")
                .put("fc", slab.strength().psi(), "psi")
                .put("w", post.depth())
                .put("c", slab.edge())
                .note("J8, c to the edge of the concrete")
                .gives(mayBear(post, slab).psi(), "psi");
        lines.addAll(List.of(s, p, fb));
        lines.add(WorkedLine.of("bearing", "p / Fb").put(p).put(fb).gives(p.value() / fb.value()));
        if (!slab.edge().isZero()) lines.addAll(sideLines(in, at, hold, s));
        return new Working(
                "Socket of post " + part + ", " + at.name(),
                "rigid post on constant stiffness; AISC 360-22 J8; ACI 318-19 17.7.2",
                "m depth of the socket, H and M what the post brings to its mouth",
                lines);
    }

    private static List<WorkedLine> sideLines(Support.CoreSocket in, CombinedAction at, SocketHold hold, WorkedLine s) {
        Slab slab = in.slab();
        WorkedLine p2 = WorkedLine.of("P2", "s\u00b2 / (3 \u00d7 m \u00d7 (m \u00d7 H + 2 \u00d7 M))")
                .put(s)
                .put("m", in.depth())
                .put("H", at.action().push())
                .put("M", at.action().size().poundInches(), "lb-in")
                .note("of the upper block, towards the edge")
                .gives(hold.upper());
        WorkedLine vb = WorkedLine.of("Vb", "9 \u00d7 sqrt(fc) \u00d7 c^1.5")
                .put("fc", slab.strength().psi(), "psi")
                .put("c", slab.edge())
                .note("17.7.2.2.1(b)")
                .gives(byEdge(slab, in.depth()));
        WorkedLine va = WorkedLine.of(
                        "Va",
                        "Vb \u00d7 3 \u00d7 c \u00d7 min(1.5 \u00d7 c; ha) / (4.5 \u00d7 c\u00b2) \u00d7 max(1; sqrt(1.5 \u00d7 c / ha)) \u00d7 0.70 / \u03b1f")
                .put(vb)
                .put("c", slab.edge())
                .put("ha", slab.thickness())
                .put("\u03b1f", BasePlateHold.loadFactor(at.combination()))
                .note("17.7.2.1, 17.7.2.6; \u03b1f the load factor, ha the concrete's thickness")
                .gives(sideHolds(slab, in.depth(), at));
        return List.of(
                p2,
                vb,
                va,
                WorkedLine.of("side", "P2 / Va")
                        .put(p2)
                        .put(va)
                        .gives(hold.upper().pounds() / va.value()));
    }

    private static SocketHold of(CombinedAction action, Length depth) {
        return of(action.action().push(), action.action().size(), depth);
    }

    private static CombinedAction worst(List<CombinedAction> actions, Length depth) {
        CombinedAction worst = actions.get(0);
        double most = -1;
        for (CombinedAction one : actions) {
            double factored = of(one, depth).upper().pounds() * BasePlateHold.loadFactor(one.combination());
            if (factored > most) {
                most = factored;
                worst = one;
            }
        }
        return worst;
    }

    private static void bearing(
            HeldPost.Notes notes,
            String part,
            PostStock post,
            Support.CoreSocket in,
            CombinedAction at,
            Severity failed,
            String id) {
        double allowed = mayBear(post, in.slab()).psi();
        double peak = of(at, in.depth()).peak(post.depth()).psi();
        notes.check(Checked.of(
                id,
                failed,
                part,
                "Post " + part + ": in its socket the grout is pressed with " + DecimalText.whole(peak)
                        + " psi at the top, it may take " + DecimalText.whole(allowed) + " psi (" + at.name() + ").",
                Basis.clause("AISC 360-22 J8, rigid post on constant stiffness"),
                Measure.demand(peak, allowed, "psi")));
    }

    /** The other checks take the socket for held over its whole depth. */
    private static void depth(HeldPost.Notes notes, String part, Support.CoreSocket in) {
        Length thick = in.slab().thickness();
        notes.check(Checked.of(
                "socket.depth",
                Severity.MUST_FIX,
                part,
                "Post " + part + ": its socket is "
                        + LengthText.feetAndInches(in.depth().inches())
                        + " deep in concrete " + LengthText.feetAndInches(thick.inches())
                        + " thick, and only concrete holds it. Drill and measure the concrete; core no deeper than it is thick,"
                        + " or dig a footing.",
                Basis.clause("statics"),
                Measure.demand(in.depth().inches(), thick.inches(), "in")));
    }

    private static void side(
            HeldPost.Notes notes, String part, Slab slab, Length depth, CombinedAction at, Severity failed, String id) {
        double upper = of(at, depth).upper().pounds();
        double allowed = sideHolds(slab, depth, at).pounds();
        notes.check(Checked.of(
                id,
                failed,
                part,
                "Post " + part + ": its socket pushes the side of the concrete with " + DecimalText.whole(upper)
                        + " lb, " + DecimalText.whole(allowed) + " lb break out (" + at.name()
                        + "). More concrete to the edge or a bar hooked round the socket helps.",
                SIDE,
                Measure.demand(upper, allowed, "lb")));
    }

    /** {@code 0.85 f'c sqrt(A2/A1) / 2.31}, the concrete spread to its edge. Source: AISC 360-22 J8. */
    private static Stress mayBear(PostStock post, Slab slab) {
        double wide = post.depth().inches();
        double spread = Math.min(2, (wide + 2 * slab.edge().inches()) / wide);
        return slab.strength().times(0.85 * spread / BasePlateAnchors.BEARING_SAFETY);
    }

    private static Force byEdge(Slab slab, Length depth) {
        return new ConcreteBreakout(ConcreteBreakout.POST_INSTALLED, slab.strength(), depth).byEdgeAlone(slab.edge());
    }

    private static Force sideHolds(Slab slab, Length depth, CombinedAction at) {
        return ConcreteBreakout.allowable(
                byEdge(slab, depth).times(share(slab)),
                ConcreteBreakout.PHI_SHEAR,
                BasePlateHold.loadFactor(at.combination()));
    }

    /** What a slab thinner than 1.5 edge distances leaves of it. */
    private static double share(Slab slab) {
        if (slab.edge().isZero()) return 0;
        double c = slab.edge().inches();
        return ConcreteBreakout.faceIn2(slab.edge(), Length.ZERO, slab.thickness())
                / (4.5 * c * c)
                * ConcreteBreakout.thin(slab.edge(), slab.thickness());
    }
}
