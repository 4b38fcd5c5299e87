package plumbleaf.engine.strength;

import plumbleaf.engine.action.Combination;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Span;

/** How far the next post of a leg may stand, by the bending of posts in the wind; nearer to a free end it is less. */
public final class PostSpacing {
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();

    private PostSpacing() {}

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
     * The longest bay that may begin at a place of a leg: with bays of that length on either side, neither of its two posts bends beyond its allowable. The sum
     * of place and answer does not fall along the leg while neighbouring strips of wind differ less than threefold, as they do in the standard. Where the fence does
     * not stand alike all along, each of the two posts counts with its own height, the further one with the greatest on the way to it, so that the answer still does
     * not fall back behind a place that is passed.
     *
     * @param from along the leg, of the post where the bay begins
     * @param most what rails allow
     */
    public static Length longestFrom(Standing fence, Length legLength, Length from, Length most) {
        Met first = fence.at(from.inches(), from.inches());
        return GreatestSpacing.solve(bay -> use(fence, first, legLength, from, bay), most);
    }

    /** Whether a bay of that length may begin there. */
    public static boolean spans(Standing fence, Length legLength, Length from, Length bay) {
        return use(fence, fence.at(from.inches(), from.inches()), legLength, from, bay) <= 1;
    }

    private static double use(Standing fence, Met first, Length legLength, Length from, Length bay) {
        double toIn = from.inches() + bay.inches();
        return Math.max(
                use(first, legLength, from.inches(), bay), use(fence.at(from.inches(), toIn), legLength, toIn, bay));
    }

    private static double use(Met met, Length legLength, double postIn, Length spacing) {
        double firstIn = Math.max(0, postIn - spacing.inches() / 2);
        double lastIn = Math.min(legLength.inches(), postIn + spacing.inches() / 2);
        if (lastIn <= firstIn) return 0;
        Moment moment = met.wind().mostMoment(new Span(Length.inches(firstIn), Length.inches(lastIn)));
        return ASD * moment.poundInches() / met.allowable().poundInches();
    }
}
