package plumbleaf.engine.gate;

import java.util.Optional;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/** Whether a leaf of the wanted sizes can be made at all, asked before anything is drawn. */
final class LeafRoom {
    /** Between two faces of tube a torch and a hand need this much: judgement. */
    private static final double LEAST_CLEAR_IN = 2;

    /** No leaf follows ground steeper than one in one: that is a cliff, or a slip of the rod. Judgement. */
    private static final double STEEPEST = 1;

    private LeafRoom() {}

    /** What is wrong, as half a sentence; nothing where the leaf can be made. */
    static Optional<String> trouble(GateAsk ask, double widthIn, Slope bottom, Slope top) {
        DisplayUnits display = ask.display();
        double steepest = Math.max(Math.abs(bottom.ratio()), Math.abs(top.ratio()));
        if (steepest > STEEPEST)
            return Optional.of(
                    "it would follow a grade of " + DecimalText.upTo(100 * steepest, 0)
                            + " % from post to post, and no leaf hangs on more than 100 %: read the shots beside it again, or make the leaf square");
        double tube = ask.parts().frame().depth().inches();
        double leastWidth = 2 * tube + LEAST_CLEAR_IN;
        if (widthIn < leastWidth)
            return Optional.of("the gaps leave " + display.length(widthIn) + " for the leaf, and its two stiles need "
                    + display.length(leastWidth));
        double hingeEdge = ask.gate().leaf().hingeGap().inches()
                - ask.parts().hinge().pinOffset().inches();
        double closing = top.ratio() - bottom.ratio();
        LeafSpec spec = ask.gate().leaf();
        double frame = spec.frameHeight().inches();
        double atHinge = frame + hingeEdge * closing;
        double least = Math.min(atHinge, frame + (hingeEdge + widthIn) * closing);
        if (spec.top().curve().inches() > widthIn / 2)
            return Optional.of("its top curves by " + display.length(spec.top().curve()) + " over a leaf of "
                    + display.length(widthIn) + ", more than half a circle");
        int rails = spec.midRails() + 2;
        double leastHeight = rails * (tube + LEAST_CLEAR_IN);
        if (least < leastHeight)
            return Optional.of("the frame is " + display.length(least) + " high at its lower end, and its " + rails
                    + " rails need " + display.length(leastHeight));
        double under = tube / 2 + LEAST_CLEAR_IN;
        for (Length rail : spec.midRailsAt()) {
            under += tube;
            if (rail.inches() < under || rail.inches() > least - 1.5 * tube - LEAST_CLEAR_IN)
                return Optional.of("a mid rail " + display.length(rail)
                        + " up has not two inches clear of the rails beside it, and no torch gets in");
            under = rail.inches() + LEAST_CLEAR_IN;
        }
        double hinges = ask.gate().hinges().fromTop().inches()
                + ask.gate().hinges().fromBottom().inches();
        if (hinges >= atHinge)
            return Optional.of("the hinges sit " + display.length(hinges)
                    + " from its ends together, and the hinge edge is " + display.length(atHinge));
        return Optional.empty();
    }
}
