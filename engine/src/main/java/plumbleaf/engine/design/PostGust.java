package plumbleaf.engine.design;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.Interaction;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.engine.strength.WoodPostStrength;

/**
 * Section and footing of a post that carries a gate, under one place of the gate's leaf while the wind grows: with the whole weight and with the part of it that may be
 * counted on. Source: ASCE 7-16 2.4.1 combinations 5 and 7.
 *
 * @param still what acts at grade without wind
 * @param windy the same under {@code D+0.6W}
 * @param gustPart part of the design wind that a plain gust keeps
 */
record PostGust(BaseAction still, BaseAction windy, double gustPart) {
    private static final double ASD = Combination.D_W.wind();

    GustPart steel(PostDesign post) {
        Length height = post.post().outOfGround();
        String link = "post " + post.id();
        return post.section()
                .match(
                        steel -> part(
                                link,
                                action -> Interaction.ratio(steel, action, height),
                                action -> Interaction.ratio(steel, action.times(1 / TubeStrength.SAFETY), height)),
                        wood -> part(
                                link,
                                action -> wood(wood, action, height),
                                action -> wood(wood, action.times(1 / WoodPostStrength.RESERVE), height)));
    }

    /** The wind's duration holds however weak the gust is. */
    private static double wood(WoodPost post, BaseAction action, Length height) {
        return PostStrength.of(post).ratio(new CombinedAction(Combination.D_W, "", "", action), height);
    }

    Optional<GustPart> footing(Optional<FootingGust> footing) {
        return footing.map(is -> part("footing " + is.part(), is::allowableUse, is::ultimateUse));
    }

    private GustPart part(
            String link, ToDoubleFunction<BaseAction> allowableUse, ToDoubleFunction<BaseAction> ultimateUse) {
        return GustPart.solved(
                link,
                times -> Math.max(
                        allowableUse.applyAsDouble(at(1, ASD * times)),
                        allowableUse.applyAsDouble(at(Combination.LESS_D_W.dead(), ASD * times))),
                times -> ultimateUse.applyAsDouble(at(1, times)));
    }

    /** What acts at so many times the wind: forces are linear. */
    private BaseAction at(double dead, double wind) {
        BaseAction blows = windy.plus(still.times(-1)).times(gustPart / ASD);
        return still.times(dead).plus(blows.times(wind));
    }
}
