package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Volume;

/** What would let a slide leaf run clear, each worked out over the same ground. */
final class SlideRemedies {
    /** Leaves are raised by eighths of an inch. */
    private static final double RAISE_STEP_IN = 0.125;

    /** Ground is shaved a foot wide under a leaf that runs a few inches wide. Judgement. */
    private static final double SHAVED_IN = 12;

    private SlideRemedies() {}

    /** @param turned the same gate, opening to the other side */
    static List<Remedy> of(GateAsk ask, SlidePlan now, SlidePlan turned) {
        List<Remedy> found = new ArrayList<>();
        double marginIn = 2 * ask.gate().loads().shotError().inches();
        double running = now.travel().running().inches();
        double missing = marginIn - running;
        if (missing <= 0) return found;
        String gate = "gates[" + ask.gate().id() + "].";
        if (turned.travel().running().inches() >= marginIn)
            found.add(new Remedy(
                    "slide-side",
                    "let it slide to the " + turned.kind().opensTo().key() + ": clears by "
                            + ask.display().length(turned.travel().running()),
                    ratio(marginIn, turned.travel().running().inches()),
                    Optional.empty(),
                    Optional.of(gate + "slides=" + turned.kind().opensTo().key())));
        double up = Math.ceil(missing / RAISE_STEP_IN - 1e-9) * RAISE_STEP_IN;
        double gap = now.travel().closedLargest().inches() + up;
        double limit = ask.gap().largest().inches();
        found.add(new Remedy(
                "raise-leaf",
                "raise the leaf " + ask.display().length(up) + ": clears by "
                        + ask.display().length(running + up) + "; closed it leaves up to "
                        + ask.display().length(gap)
                        + (gap > limit + 1e-9
                                ? ", more than the " + ask.display().length(limit) + " allowed"
                                : ""),
                ratio(marginIn, running + up),
                Optional.empty(),
                Optional.of(gate + "leaf.bottomGap="
                        + LengthText.exact(ask.gate().leaf().bottomGap().inches() + up))));
        Regrade cut = cut(ask, now, missing);
        found.add(new Remedy(
                "grade-runback",
                "shave the ground along its way by up to " + ask.display().length(cut.deepest()) + ", a foot wide, "
                        + DecimalText.upTo(cut.soil().cubicFeet(), 2) + " cu ft of soil, if it may be cut",
                OptionalDouble.of(1),
                Optional.empty(),
                Optional.of(gate + "regrade=true")));
        return found;
    }

    /** The ground that is shaved along its way until it runs clear by twice the error of the shots; empty where the job does not say so or nothing is missing. */
    static Optional<Regrade> asked(GateAsk ask, SlidePlan now) {
        double marginIn = 2 * ask.gate().loads().shotError().inches();
        double missing = marginIn - now.travel().running().inches();
        return ask.gate().ground().regrade() && missing > 0 ? Optional.of(cut(ask, now, missing)) : Optional.empty();
    }

    private static Regrade cut(GateAsk ask, SlidePlan now, double missingIn) {
        double marginIn = 2 * ask.gate().loads().shotError().inches();
        double bottom = ask.gate().leaf().bottomGap().inches();
        double taken = ask.drop().inches() + now.travel().laterRise().inches();
        double volume = now.travel().tooHighIn3(bottom, marginIn, taken, SHAVED_IN);
        return Regrade.shaved(ask.gate().id(), Volume.cubicInches(volume), Length.inches(missingIn));
    }

    private static OptionalDouble ratio(double needed, double provided) {
        return provided > 0 ? OptionalDouble.of(needed / provided) : OptionalDouble.empty();
    }
}
