package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Span;

/** How far the next post of a leg may stand, by the bending of posts in the wind; nearer to a free end it is less. */
public final class PostSpacing {
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = 0.6;

    private PostSpacing() {}

    /**
     * The longest bay that may begin at a place of a leg: with bays of that length on either side, neither of its two posts bends beyond its allowable. The sum
     * of place and answer does not fall along the leg while neighbouring strips of wind differ less than threefold, as they do in the standard.
     *
     * @param from along the leg, of the post where the bay begins
     * @param allowable moment of a post at grade
     * @param most what rails allow
     */
    public static Length longestFrom(LegWind leg, Length legLength, Length from, Moment allowable, Length most) {
        return GreatestSpacing.solve(
                spacing -> Math.max(
                        use(leg, legLength, from.inches(), spacing, allowable),
                        use(leg, legLength, from.inches() + spacing.inches(), spacing, allowable)),
                most);
    }

    private static double use(LegWind leg, Length legLength, double postIn, Length spacing, Moment allowable) {
        double firstIn = Math.max(0, postIn - spacing.inches() / 2);
        double lastIn = Math.min(legLength.inches(), postIn + spacing.inches() / 2);
        if (lastIn <= firstIn) return 0;
        Moment moment = leg.over(new Span(Length.inches(firstIn), Length.inches(lastIn)))
                .momentAtGrade();
        return ASD * moment.poundInches() / allowable.poundInches();
    }
}
