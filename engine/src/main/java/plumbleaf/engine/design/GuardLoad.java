package plumbleaf.engine.design;

import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * What people do to the top of a guard: {@code P = max(200 lb, 50 plf s)}, on a house of one or two families 200 lb alone; along its top in any direction, here
 * across the run. Not applied with wind.
 * Source: ASCE 7-16 4.5.1; IBC 1607.8.1 with exception 1 (1607.9.1 in the 2021 edition). Check: GuardPostCheck (CX30).
 */
public final class GuardLoad {
    private static final double POINT_LB = 200;
    private static final double ALONG_LB_PER_FT = 50;

    /** Source: IBC 1015.2, IRC R312.1.1: more than 30 in. */
    static final Length DROP = Length.inches(30);

    private GuardLoad() {}

    /** Whether codes ask for a guard beside such a drop. */
    static boolean asked(Guarded guard) {
        return guard.drop().compareTo(DROP) > 0;
    }

    /** On a post with half of each bay beside it. */
    public static Force on(Guarded guard, Length halfBays) {
        double along = guard.dwelling() ? 0 : ALONG_LB_PER_FT * halfBays.inFeet();
        return Force.pounds(Math.max(POINT_LB, along));
    }

    /** On its top rail, as pounds an inch that bend it alike: a load in the middle of a simple span bends as {@code 2 P / L} spread over it. */
    static double onRailLbPerIn(Guarded guard, Length span) {
        double point = 2 * POINT_LB / span.inches();
        return guard.dwelling() ? point : Math.max(point, ALONG_LB_PER_FT / 12);
    }
}
