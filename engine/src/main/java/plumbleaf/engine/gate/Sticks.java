package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;

/** Members longer than a stick are made up of pieces, end to end. */
public final class Sticks {
    /** No tube is counted on in one piece beyond this: the shortest stick that yards keep is 20 ft, and its ends are trimmed. Common practice, no source. */
    private static final double LONGEST_IN = 236;

    private Sticks() {}

    /** A last piece is not shorter than this. Judgement. */
    private static final double SHORTEST_IN = 24;

    /** Lengths of the pieces that make up a member's long point, in order; one as a rule. */
    public static List<Length> pieces(Member member) {
        double left = member.longPoint().inches();
        List<Length> pieces = new ArrayList<>();
        if (left <= LONGEST_IN) return List.of(member.longPoint());
        while (left > LONGEST_IN) {
            double next = Math.min(LONGEST_IN, left - SHORTEST_IN);
            pieces.add(Length.inches(next));
            left -= next;
        }
        pieces.add(Length.inches(left));
        return List.copyOf(pieces);
    }
}
