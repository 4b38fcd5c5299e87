package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;

/** What the chain-link installation standard digs. Not a wind design. */
public final class TradeDepth {
    private TradeDepth() {}

    /** 24 in., and 3 in. more for each foot of fence over 4. Source: ASTM F567-07. Check: TradeDepthCheck (E12). */
    public static Length depth(Length fenceHeight) {
        return Length.inches(24 + 3 * Math.max(0, fenceHeight.inFeet() - 4));
    }

    /** Four times the post up to 4 in., three times above. Source: ASTM F567-07. Check: TradeDepthCheck (E12). */
    public static Length hole(Length post) {
        return post.times(post.inches() <= 4 ? 4 : 3);
    }
}
