package plumbleaf.engine.action;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.wind.TributaryWind;

/** Builds every combination that can act on a post. */
public final class Combinations {
    private Combinations() {}

    /**
     * All combinations in one state of the gate; those with wind twice, blowing in and out, since a leaf's dead moment has a direction.
     *
     * @param windIn strength-level wind that blows from outside to inside
     */
    public static List<CombinedAction> of(String state, BaseAction dead, BaseAction live, BaseAction windIn) {
        List<CombinedAction> all = new ArrayList<>();
        for (Combination combination : Combination.with(false)) {
            if (!combination.hasWind()) {
                all.add(new CombinedAction(combination, state, "none", combination.of(dead, live, BaseAction.NONE)));
                continue;
            }
            all.add(new CombinedAction(combination, state, "wind-in", combination.of(dead, live, windIn)));
            all.add(new CombinedAction(combination, state, "wind-out", combination.of(dead, live, windIn.times(-1))));
        }
        return List.copyOf(all);
    }

    /**
     * All combinations on a line, corner or end post: its share of the fence's weight on its axis, wind across.
     * Blowing in, wind pushes towards the inside, so across and its moment are negative.
     *
     * @param weight of the post and of what hangs on it
     * @param wind on its share of the fence, strength level
     */
    public static List<CombinedAction> onLinePost(Force weight, TributaryWind wind) {
        BaseAction windIn = BaseAction.across(wind.force().times(-1), wind.height());
        return of("fence", BaseAction.weight(weight), BaseAction.NONE, windIn);
    }

    /** The combination with the greatest moment at grade. */
    public static CombinedAction worst(List<CombinedAction> all) {
        if (all.isEmpty()) throw new IllegalArgumentException("No combination was given");
        return Ties.most(all, combined -> combined.action().size().poundInches());
    }

    /** Those without wind: what stands every day. */
    public static List<CombinedAction> withoutWind(List<CombinedAction> all) {
        return all.stream()
                .filter(combined -> !combined.combination().hasWind())
                .toList();
    }
}
