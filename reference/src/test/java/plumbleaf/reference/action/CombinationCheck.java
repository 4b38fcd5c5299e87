package plumbleaf.reference.action;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * The combinations of allowable-stress design that fences meet, on one set of loads.
 * Source: ASCE 7-16 and 7-22 2.4.1 as listed in STRUCTURE magazine and a public code summary (lines without snow).
 * Tolerance: 0.05 %, the printed digits.
 */
class CombinationCheck {
    @Test
    void linesWithoutSnow() {
        Vector vector = Vectors.one("combinations", "CX28");
        double dead = vector.in("D_lb");
        double live = vector.in("L_lb");
        double wind = vector.in("W_lb");
        vector.check("c1", Combination.D.of(dead, live, wind));
        vector.check("c2", Combination.D_L.of(dead, live, wind));
        vector.check("c5", Combination.D_W.of(dead, live, wind));
        vector.check("c7", Combination.LESS_D_W.of(dead, live, wind));
        double snowShare = 0.75 * vector.in("S_lb");
        vector.check("c6_16", Combination.D_L_W.of(dead, live, wind) + snowShare);
    }
}
