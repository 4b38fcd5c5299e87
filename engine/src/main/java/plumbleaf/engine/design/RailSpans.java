package plumbleaf.engine.design;

import java.util.List;
import java.util.OptionalDouble;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Picket;

/**
 * How far what stands upright on a leaf spans from one rail's middle to the next; where rails lean apart, at the wider edge of the leaf.
 *
 * @param rails from the lowest up
 */
record RailSpans(List<Member> rails) {
    RailSpans {
        rails = List.copyOf(rails);
    }

    static RailSpans of(Leaf leaf) {
        return new RailSpans(leaf.rails());
    }

    /** In inches; nothing between fewer than two rails. */
    OptionalDouble widest() {
        OptionalDouble widest = OptionalDouble.empty();
        for (int i = 1; i < rails.size(); i++)
            widest = OptionalDouble.of(Math.max(widest.orElse(0), between(rails.get(i - 1), rails.get(i))));
        return widest;
    }

    /** In inches: the widest span, or twice what a piece stands out past the outermost rails, which asks as much of it. */
    double asked(Picket piece) {
        double middle = piece.r().inches() + piece.width().inches() / 2;
        double half = piece.length().inches() / 2;
        double above = piece.middle().inches() + half - heightIn(rails.get(rails.size() - 1), middle);
        double below = heightIn(rails.get(0), middle) - (piece.middle().inches() - half);
        return Math.max(widest().orElse(0), 2 * Math.max(above, below));
    }

    private static double between(Member lower, Member upper) {
        double hinge = Math.max(lower.from().r().inches(), upper.from().r().inches());
        double latch = Math.min(lower.to().r().inches(), upper.to().r().inches());
        return Math.max(apart(lower, upper, hinge), apart(lower, upper, latch));
    }

    private static double apart(Member lower, Member upper, double rIn) {
        return heightIn(upper, rIn) - heightIn(lower, rIn);
    }

    private static double heightIn(Member rail, double rIn) {
        double from = rail.from().r().inches();
        double share = (rIn - from) / (rail.to().r().inches() - from);
        return rail.from().z().inches()
                + share * (rail.to().z().inches() - rail.from().z().inches());
    }
}
