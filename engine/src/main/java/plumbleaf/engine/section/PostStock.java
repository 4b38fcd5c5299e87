package plumbleaf.engine.section;

import java.util.function.Function;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** What a post is made of, as it is bought: a steel section or a wood post. */
public sealed interface PostStock permits Section, WoodPost {
    <T> T match(Function<Section, T> steel, Function<WoodPost, T> wood);

    String id();

    String name();

    /** Outside size along the run; the diameter of a round one. */
    Length depth();

    /** Outside size across it. */
    Length width();

    boolean isRound();

    /** Weight of a piece, a wood one full of water. */
    Force weightOf(Length length);

    /** Greatest size across it: a diameter, or a diagonal. */
    default Length across() {
        double d = depth().inches();
        double w = width().inches();
        return isRound() ? depth() : Length.inches(Math.sqrt(d * d + w * w));
    }
}
