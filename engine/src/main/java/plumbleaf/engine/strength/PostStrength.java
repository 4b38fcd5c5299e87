package plumbleaf.engine.strength;

import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.PostStock;

/** What a post bears at grade, whatever it is made of. */
public interface PostStrength {
    static PostStrength of(PostStock stock) {
        return stock.match(SteelPost::new, WoodPostStrength::of);
    }

    /**
     * Utilisation at grade, above 1 fails.
     *
     * @param height of the post above grade
     */
    double ratio(CombinedAction action, Length height);

    /** What it may bend with in wind, the weaker way. */
    Moment allowableInWind();

    /** What it is expected to bend with in wind before it fails. */
    Moment ultimateInWind();

    /** The share of its bending strength in wind that a weight on its axis leaves. */
    double roomBeside(Force down, Length height);

    /** Stiffness against bending, {@code E I}, the weaker way. */
    double stiffnessLbIn2();

    /** The clause that its strength is from. */
    Basis clause();
}
