package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.wind.LeafWind;

/**
 * What holds each leaf of a pair where they meet, against the wind that asks for it: moments about its own pins. What asks is by statics from pressure and face,
 * what holds is the frame's in space, so that the one checks the other; they part by what a slope of the frame shifts.
 */
final class MeetingLines {
    private final Leaf a;
    private final HungLoads onA;
    private final Leaf b;
    private final HungLoads onB;

    MeetingLines(Leaf a, HungLoads onA, Leaf b, HungLoads onB) {
        this.a = a;
        this.onA = onA;
        this.b = b;
        this.onB = onB;
    }

    /** + outward on the leaf. */
    List<WorkedLine> of(MeetingForces at) {
        List<WorkedLine> lines = new ArrayList<>(wind("a", a, onA, at));
        lines.add(held("a", at.rodA(), 1, at, at.stopA(), at.keeperA()));
        lines.addAll(wind("b", b, onB, at));
        lines.add(held("b", at.rodB(), -1, at, at.stopB(), at.keeperB()));
        return lines;
    }

    private static List<WorkedLine> wind(String leaf, Leaf of, HungLoads loads, MeetingForces at) {
        double factor = at.combination().wind();
        if (factor == 0) return List.of();
        LeafWind wind = loads.blowing(at.combination(), LeafState.CLOSED);
        double faceFt2 = of.outline().face().inSquareFeet();
        double push = factor * wind.pressure().psf() * faceFt2;
        double middle =
                (of.outline().hingeEdge().inches() + of.outline().latchEdge().inches()) / 2;
        double stile = of.of(MemberRole.LATCH_STILE).get(0).middle().r().inches();
        WorkedLine force = WorkedLine.of("F" + leaf, "n \u00d7 p \u00d7 A")
                .put("n", factor)
                .put("p", wind.pressure().psf(), "psf")
                .put("A", faceFt2, "ft\u00b2")
                .note("wind on leaf " + leaf)
                .gives(push, "lb");
        return List.of(
                force,
                WorkedLine.of("N" + leaf, "F" + leaf + " \u00d7 (m + o) / l")
                        .put(force)
                        .put("m", middle, "in.")
                        .put("o", wind.offCentre())
                        .put("l", stile, "in.")
                        .note(
                                "needed at its meeting stile: m to the middle of the face, o off it, l to the stile, from the"
                                        + " pins")
                        .gives(push * (middle + wind.offCentre().inches()) / stile, "lb"));
    }

    private static WorkedLine held(String leaf, Force rod, int side, MeetingForces at, Force stop, Force keeper) {
        double latch = side * at.latch().pounds();
        double strip = side * (at.stripFoot().pounds() + at.stripTop().pounds());
        double all = rod.pounds() + latch + strip + stop.pounds() + keeper.pounds();
        return WorkedLine.of("H" + leaf, "rod + latch + strip + stop + keeper")
                .put("rod", rod)
                .put("latch", latch, "lb")
                .put("strip", strip, "lb")
                .put("stop", stop)
                .put("keeper", keeper)
                .note("what holds leaf " + leaf + ", + outward, of the frame in space: to be N" + leaf
                        + " against the wind")
                .gives(all, "lb");
    }
}
