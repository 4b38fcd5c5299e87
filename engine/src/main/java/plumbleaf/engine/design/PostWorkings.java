package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.PostPush;
import plumbleaf.engine.section.PostStock;

/** What a hinge post is bent by in the case that bends it most, and what it and its hinges give, line by line for the calculation book. */
final class PostWorkings {
    /** A moment less than this share of the whole is none. */
    private static final double NOTHING = 1e-6;

    private PostWorkings() {}

    /** From the pull of every hinge to the moment at grade, in the case of the greatest; the pulls are those of the frame in space. */
    static Optional<Working> governing(HungGate gate, List<CaseForces> cases, HungLoads loads) {
        if (gate.isOnWall()) return Optional.empty();
        CaseForces worst = cases.get(0);
        for (CaseForces each : cases) if (Ties.isMore(size(each), size(worst))) worst = each;
        return Optional.of(new Working(
                "Hinge post at grade in the case that bends it most: " + HingeJoint.name(worst),
                "statics",
                "what each hinge does to the post, from the lowest up: H towards the latch, A outward, V down, by the stiffness of the whole; z above grade; e, o from the post's axis to the pins along and across the fence",
                lines(gate, worst, loads)));
    }

    private static double size(CaseForces each) {
        return each.hingePost().size().poundInches();
    }

    private static List<WorkedLine> lines(HungGate gate, CaseForces worst, HungLoads loads) {
        List<WorkedLine> lines = new ArrayList<>();
        BaseAction at = worst.hingePost();
        double turn = (gate.leaf().hand().swing() == SwingWay.OUT ? 1 : -1)
                * worst.angle().inDegrees();
        double cos = StrictMath.cos(StrictMath.toRadians(turn));
        double sin = StrictMath.sin(StrictMath.toRadians(turn));
        List<WorkedLine> along = new ArrayList<>();
        List<WorkedLine> across = new ArrayList<>();
        double down = 0;
        StringBuilder weights = new StringBuilder();
        WorkedLine.Open weight = WorkedLine.of("V", weights(worst, weights));
        for (int i = 0; i < worst.hinges().size(); i++) {
            HingeForce hinge = worst.hinges().get(i);
            double h = hinge.horizontal().pounds();
            double a = hinge.across().pounds();
            down += hinge.down().pounds();
            weight.put("V" + (i + 1), hinge.down());
            along.add(turned("X" + (i + 1), i + 1, turn, h, -a, h * cos - a * sin, "H", "A"));
            across.add(turned("Y" + (i + 1), i + 1, turn, a, h, a * cos + h * sin, "A", "H"));
        }
        lines.addAll(along);
        lines.addAll(across);
        WorkedLine v = weight.note("down on the post").gives(down, "lb");
        lines.add(v);
        WorkedLine ma = moment("Ma", along, worst, v, "e", axisIn(gate), List.of(), loads)
                .note("tips the post towards the latch")
                .gives(at.momentAlong().poundInches(), "lb-in");
        lines.add(ma);
        List<PostPush> pushes = loads.onHingePost();
        if (Math.abs(at.momentAcross().poundInches()) < NOTHING * size(worst)) return lines;
        WorkedLine mc = moment("Mc", across, worst, v, "o", gate.pinAcross().inches(), pushes, loads)
                .note("tips it outward"
                        + (pushes.isEmpty() || !worst.combination().hasWind()
                                ? ""
                                : "; B the wind on the fence beside it"))
                .gives(at.momentAcross().poundInches(), "lb-in");
        lines.add(mc);
        lines.add(WorkedLine.of("M", "sqrt(Ma\u00b2 + Mc\u00b2)")
                .put(ma)
                .put(mc)
                .gives(at.size().poundInches(), "lb-in"));
        return lines;
    }

    private static String weights(CaseForces worst, StringBuilder weights) {
        for (int i = 1; i <= worst.hinges().size(); i++)
            weights.append(i == 1 ? "V" : " + V").append(i);
        return weights.toString();
    }

    /** A hinge's pull in the axes of the fence: as it is while the leaf is shut. */
    private static WorkedLine turned(
            String name, int hinge, double turn, double own, double other, double value, String first, String second) {
        String one = first + hinge;
        if (turn == 0) return WorkedLine.of(name, one).put(one, own, "lb").gives(value, "lb");
        String two = second + hinge;
        String sign = first.equals("H") ? " - " : " + ";
        return WorkedLine.of(
                        name,
                        one + " \u00d7 cos(q \u00d7 \u03c0 / 180)" + sign + two + " \u00d7 sin(q \u00d7 \u03c0 / 180)")
                .put(one, own, "lb")
                .put(two, first.equals("H") ? -other : other, "lb")
                .put("q", turn)
                .gives(value, "lb");
    }

    private static WorkedLine.Open moment(
            String name,
            List<WorkedLine> pulls,
            CaseForces worst,
            WorkedLine v,
            String arm,
            double armIn,
            List<PostPush> pushes,
            HungLoads loads) {
        StringBuilder formula = new StringBuilder();
        for (int i = 0; i < pulls.size(); i++)
            formula.append(i == 0 ? "" : " + ")
                    .append(pulls.get(i).symbol())
                    .append(" \u00d7 z")
                    .append(i + 1);
        formula.append(" + V \u00d7 ").append(arm);
        double share = loads.fenceShare(worst.combination()) * worst.wind().outward();
        boolean pushed = share != 0;
        for (int i = 0; pushed && i < pushes.size(); i++)
            formula.append(" + B").append(i + 1).append(" \u00d7 h").append(i + 1);
        WorkedLine.Open line = WorkedLine.of(name, formula.toString());
        for (int i = 0; i < pulls.size(); i++)
            line.put(pulls.get(i)).put("z" + (i + 1), worst.hinges().get(i).z().inches(), "in.");
        line.put(v).put(arm, armIn, "in.");
        for (int i = 0; pushed && i < pushes.size(); i++)
            line.put("B" + (i + 1), pushes.get(i).outward().pounds() * share, "lb")
                    .put("h" + (i + 1), pushes.get(i).height());
        return line;
    }

    /** From the post's axis to the pins along the fence. */
    private static double axisIn(HungGate gate) {
        return gate.hinge().pinOffset().inches() + gate.hingePostCentre().inches();
    }

    /**
     * What two hinges and a post above grade give under the leaf's own weight, closed: {@code 2 H b / (k d)} and the cantilever of the post under a pull at
     * each pin and the weight's couple, along the fence and across it. None where there are more hinges, or a wall carries them.
     * Source: statics; cantilever formulas of any handbook (AISC Manual Table 3-23, from memory). Check: BookFollowsTest against the frame in space.
     */
    static List<WorkedLine> gives(HungGate gate, GateSag sag) {
        return gate.isOnWall() || sag.hinges().size() != 2
                ? List.of()
                : gives(gate, sag, sag.hinges().get(0), sag.hinges().get(1));
    }

    private static List<WorkedLine> gives(HungGate gate, GateSag sag, HingeForce low, HingeForce high) {
        double b = gate.leaf().freeCorner().r().inches();
        double d = gate.leaf().pinSpacing().inches();
        double e = axisIn(gate);
        double o = gate.pinAcross().inches();
        PostStock stock = gate.hingePost();
        double down = low.down().pounds() + high.down().pounds();
        boolean onLower = Math.abs(low.down().pounds()) >= Math.abs(high.down().pounds());
        double carriesAt = (onLower ? low : high).z().inches();
        BentPost along = new BentPost(
                new BentPost.Letters("H", "u", "t", "C", "EI", "along the fence"),
                low,
                high,
                low.horizontal(),
                high.horizontal(),
                e,
                stock.elasticModulus().psi(),
                stock.ixIn4());
        BentPost across = new BentPost(
                new BentPost.Letters("A", "v", "s", "K", "EJ", "across it"),
                low,
                high,
                low.across(),
                high.across(),
                o,
                stock.elasticModulus().psi(),
                stock.iyIn4());
        List<WorkedLine> lines = new ArrayList<>();
        lines.add(WorkedLine.of("hinges", "((H2 - H1) \u00d7 b - (A2 - A1) \u00d7 o) / (k \u00d7 d) + V / kr")
                .put("H2", high.horizontal())
                .put("H1", low.horizontal())
                .put("b", b, "in.")
                .put("A2", high.across())
                .put("A1", low.across())
                .put("o", o, "in.")
                .put("k", gate.hinge().stiffnessLbPerIn(), "lb/in.")
                .put("d", d, "in.")
                .put("V", down, "lb")
                .put("kr", Link.RIGID_LB_PER_IN, "lb/in.")
                .note(
                        "k of one hinge, kr of a pin along itself, as good as rigid; 1 the lower, 2 the upper, H towards the latch, A outward; o from the leaf's plane out to the pins")
                .gives(sag.byCause().hingeFlex().inches(), "in."));
        lines.addAll(along.lines());
        lines.addAll(across.lines());
        WorkedLine twist = WorkedLine.of("w", "(A2 \u00d7 e - H2 \u00d7 o) \u00d7 d / (G \u00d7 J)")
                .put("A2", high.across())
                .put("e", e, "in.")
                .put("H2", high.horizontal())
                .put("o", o, "in.")
                .put("d", d, "in.")
                .put("G", stock.shearModulus().psi(), "psi")
                .put("J", stock.jIn4(), "in4")
                .note("twist of the post from pin to pin")
                .gives(
                        (high.across().pounds() * e - high.horizontal().pounds() * o)
                                * d
                                / (stock.shearModulus().psi() * stock.jIn4()),
                        "rad");
        lines.add(twist);
        WorkedLine sinks = WorkedLine.of("c", "V \u00d7 z / (E \u00d7 Ap)")
                .put("V", down, "lb")
                .put("z", carriesAt, "in.")
                .put("E", stock.elasticModulus().psi(), "psi")
                .put("Ap", stock.areaIn2(), "in\u00b2")
                .note("shortening of the post below the pin that carries")
                .gives(down * carriesAt / (stock.elasticModulus().psi() * stock.areaIn2()), "in.");
        lines.add(sinks);
        lines.add(WorkedLine.of(
                        "post",
                        "(u2 - u1) \u00d7 b / d + t \u00d7 e - (v2 - v1) \u00d7 o / d + s \u00d7 o - w \u00d7 o \u00d7 (b + e) / d + c")
                .put(twist)
                .put(sinks)
                .put(along.upper())
                .put(along.lower())
                .put("b", b, "in.")
                .put("d", d, "in.")
                .put(along.turn())
                .put("e", e, "in.")
                .put(across.upper())
                .put(across.lower())
                .put("o", o, "in.")
                .put(across.turn())
                .note("the leaf turns with its pins and sinks with the one that carries it")
                .gives(sag.byCause().post().inches(), "in."));
        return lines;
    }
}
