package plumbleaf.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BoardTopTest {
    /** Half the width of a board of width 1 at a height above its shoulders, from the arcs and cuts themselves. */
    private static double halfWidth(BoardTop top, double up) {
        return switch (top) {
            case FLAT -> 0.5;
            case DOG_EAR, POINTED -> 0.5 - up;
            case ROUND -> Math.sqrt(0.25 - up * up);
            case GOTHIC -> Math.sqrt(1 - up * up) - 0.5;
        };
    }

    @Test
    void cutAwayIsWhatTheOutlineLeavesOfTheRectangle() {
        for (BoardTop top : BoardTop.values()) {
            double depth = top.depthOverWidth();
            if (depth == 0) continue;
            int steps = 200_000;
            double area = 0;
            for (int i = 0; i < steps; i++) area += 2 * halfWidth(top, (i + 0.5) / steps * depth) * depth / steps;
            assertThat(top.cutAwayShare()).as(top.key()).isCloseTo(1 - area / depth, within(1e-5));
        }
        assertThat(BoardTop.FLAT.cutAwayShare()).isZero();
    }

    @Test
    void pointsMeetOnTheMiddle() {
        assertThat(halfWidth(BoardTop.GOTHIC, BoardTop.GOTHIC.depthOverWidth())).isCloseTo(0, within(1e-12));
        assertThat(halfWidth(BoardTop.POINTED, 0.5)).isZero();
        assertThat(halfWidth(BoardTop.ROUND, 0.5)).isZero();
    }
}
