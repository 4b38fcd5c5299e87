package plumbleaf.engine.support;

import plumbleaf.engine.quantity.Length;

/**
 * The widened foot of a belled hole: a cone from the shaft out to the foot, below frost.
 *
 * @param diameter at the foot; zero for none
 * @param height of the cone
 */
public record Bell(Length diameter, Length height) {
    public static final Bell NONE = new Bell(Length.ZERO, Length.ZERO);

    public boolean isNone() {
        return diameter.isZero() || height.isZero();
    }
}
