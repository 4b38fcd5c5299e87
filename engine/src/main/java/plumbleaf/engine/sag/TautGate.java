package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;

/**
 * A gate whose rods carry tension alone. A rod that the frame would press is taken out and the frame solved again, until every rod left pulls.
 *
 * <p>Tightened on the bench, each rod pulls with its pretension {@code P} while nothing else acts, and the leaf is trued like that: this is where movements
 * are counted from. A rod shortened by so much that it would pull with {@code Q} if its corners did not give pulls with {@code Q + sum n Q}, n the forces
 * in the rods of the all-taut frame under a unit pair at each; so {@code P = Q + N Q} gives Q. Under loads a rod pulls with its bar's force plus its Q. When it
 * goes slack its pretension goes with it: movements then are those of the frame without it under the loads and a pair that opens its corners with P.
 * Linear in each state; exact for rods without weight of their own. Source: statics; the slack one drops out as in any tension-only analysis. Checks:
 * TautGateTest, TensionOnlyCheck (T7).
 */
final class TautGate {
    /** A gate's frame without these rods. */
    interface Shape {
        GateFrame without(List<String> slackRods);
    }

    /** Loads on a frame. */
    interface Acting {
        List<Load> on(GateFrame frame);
    }

    private static final String UNIT = "unit pair at ";
    private static final String PULL = "which rods pull";

    private final Shape shape;
    private final GateFrame whole;
    private final double pretensionLb;
    private final List<String> rods;
    private final Map<String, Double> shortened = new LinkedHashMap<>();

    TautGate(HungGate gate, Shape shape) {
        this.shape = shape;
        this.whole = shape.without(List.of());
        this.rods = whole.leaf.rods().stream().map(chain -> chain.member.id()).toList();
        this.pretensionLb = pretensionLb(gate);
        if (!rods.isEmpty()) shorten();
    }

    /** What each rod is tightened to; nothing where there is none. */
    static double pretensionLb(HungGate gate) {
        return gate.leaf()
                .make()
                .bracing()
                .match(tubes -> 0.0, cross -> 0.0, rod -> rod.pretension().pounds());
    }

    static boolean hasRods(HungGate gate) {
        return gate.leaf().make().bracing().match(tubes -> false, cross -> false, rod -> true);
    }

    /** With every rod in it. */
    GateFrame whole() {
        return whole;
    }

    /** Rods that go slack under these loads. */
    List<String> slackUnder(Acting acting) {
        List<String> slack = new ArrayList<>();
        while (slack.size() < rods.size()) {
            GateFrame frame = shape.without(slack);
            FrameSolution solved = frame.solve(List.of(new LoadCase(PULL, tightened(frame, slack, acting))));
            String least = "";
            double most = 0;
            for (String rod : rods) {
                if (slack.contains(rod)) continue;
                double pull = pullLb(solved, PULL, rod);
                if (pull < most) {
                    most = pull;
                    least = rod;
                }
            }
            if (least.isEmpty()) return slack;
            slack.add(least);
        }
        return slack;
    }

    /** Forces under loads and pretension. A rod's own are read by {@link #pullLb}. */
    Hanging forces(String name, Acting acting) {
        List<String> slack = slackUnder(acting);
        GateFrame frame = shape.without(slack);
        return new Hanging(frame, frame.solve(List.of(new LoadCase(name, tightened(frame, slack, acting)))));
    }

    /**
     * Movements from the trued leaf.
     *
     * @param judged what decides which rods pull
     * @param laid whose movements are asked for: the same, or a part of it that comes last. For a part the state the rods end in counts for all of it, and what the
     *     dead load released before is left out
     */
    Hanging moves(String name, Acting judged, Acting laid, boolean withRelease) {
        List<String> slack = slackUnder(judged);
        GateFrame frame = shape.without(slack);
        List<Load> loads = new ArrayList<>(laid.on(frame));
        if (withRelease) for (String rod : slack) loads.addAll(frame.leaf.drawnTogether(rod, -pretensionLb));
        return new Hanging(frame, frame.solve(List.of(new LoadCase(name, loads))));
    }

    /** Pull of a rod in a solution of {@link #forces}; a slack one is not asked. */
    double pullLb(FrameSolution solved, String loadCase, String rod) {
        return barLb(solved, loadCase, rod) + Objects.requireNonNull(shortened.get(rod));
    }

    private static double barLb(FrameSolution solved, String loadCase, String rod) {
        return solved.internalAt(loadCase, rod + "/1", 0).nLb();
    }

    private List<Load> tightened(GateFrame frame, List<String> slack, Acting acting) {
        List<Load> loads = new ArrayList<>(acting.on(frame));
        for (String rod : rods)
            if (!slack.contains(rod))
                loads.addAll(frame.leaf.drawnTogether(rod, Objects.requireNonNull(shortened.get(rod))));
        return loads;
    }

    /** One rod or two: Cramer's rule. */
    private void shorten() {
        List<LoadCase> cases = new ArrayList<>();
        for (String rod : rods) cases.add(new LoadCase(UNIT + rod, whole.leaf.drawnTogether(rod, 1)));
        FrameSolution solved = whole.solve(cases);
        String a = rods.get(0);
        double aa = 1 + barLb(solved, UNIT + a, a);
        if (rods.size() == 1) {
            shortened.put(a, pretensionLb / aa);
            return;
        }
        String b = rods.get(1);
        double ab = barLb(solved, UNIT + b, a);
        double ba = barLb(solved, UNIT + a, b);
        double bb = 1 + barLb(solved, UNIT + b, b);
        double whole2 = aa * bb - ab * ba;
        shortened.put(a, pretensionLb * (bb - ab) / whole2);
        shortened.put(b, pretensionLb * (aa - ba) / whole2);
    }
}
