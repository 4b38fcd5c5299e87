package plumbleaf.engine.section;

import java.util.function.Function;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

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

    double areaIn2();

    /** For bending along the run, in its depth. */
    double ixIn4();

    double sxIn3();

    /** For bending across the run, in its width. */
    double iyIn4();

    double syIn3();

    /** For twisting. */
    double jIn4();

    /** E it moves by: of a wood post, wet. */
    Stress elasticModulus();

    /** G it twists by. */
    Stress shearModulus();

    /** How many times a lasting load bends it over the years, over what it bends at once. */
    double lastingBend();

    /** Weight of a piece, a wood one full of water. */
    Force weightOf(Length length);

    /** Greatest size across it: a diameter, or a diagonal. */
    default Length across() {
        double d = depth().inches();
        double w = width().inches();
        return isRound() ? depth() : Length.inches(Math.sqrt(d * d + w * w));
    }
}
