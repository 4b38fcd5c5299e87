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
        return longestFrom((fromIn, toIn) -> new Met(leg, allowable), legLength, from, most);
    }

    /**
     * What a post meets and bears.
     *
     * @param wind on the leg as high as it stands there
     * @param allowable moment of the post at grade
     */
    public record Met(LegWind wind, Moment allowable) {}

    /** A fence that stands higher in one place than in another. */
    public interface Standing {
        /** The worst that a post at the second place meets, of a fence as high as anywhere between the two. */
        Met at(double fromIn, double toIn);
    }

    /**
     * The same where the fence does not stand alike all along: each of the two posts counts with its own height, the further one with the greatest on the way to it,
     * so that the answer still does not fall back behind a place that is passed.
     */
    public static Length longestFrom(Standing fence, Length legLength, Length from, Length most) {
        double fromIn = from.inches();
        Met first = fence.at(fromIn, fromIn);
        return GreatestSpacing.solve(
                spacing -> {
                    double toIn = fromIn + spacing.inches();
                    return Math.max(
                            use(first, legLength, fromIn, spacing),
                            use(fence.at(fromIn, toIn), legLength, toIn, spacing));
                },
                most);
    }

    private static double use(Met met, Length legLength, double postIn, Length spacing) {
        double firstIn = Math.max(0, postIn - spacing.inches() / 2);
        double lastIn = Math.min(legLength.inches(), postIn + spacing.inches() / 2);
        if (lastIn <= firstIn) return 0;
        Moment moment = met.wind()
                .over(new Span(Length.inches(firstIn), Length.inches(lastIn)))
                .momentAtGrade();
        return ASD * moment.poundInches() / met.allowable().poundInches();
    }
}
