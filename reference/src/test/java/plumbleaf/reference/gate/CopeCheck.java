package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.gate.Cope;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * The saddle of a round tube against another: every point of the template, put back round the tube, lies on the other tube; depth and ears in closed form.
 *
 * Source: plane geometry of two cylinders: {@code x2 + y2 = R2} for every point of the cut; equal tubes meet in two ellipses, deep {@code R (1 + sin a) / cos a}.
 * Tolerance: 1e-9 in.
 */
class CopeCheck {
    @ParameterizedTest
    @CsvSource({"1.9,1.9,0", "1.9,1.9,7", "1.66,2.375,0", "1.66,2.375,30", "2,2,48"})
    void everyPointLiesOnTheOtherTube(double branch, double other, double degrees) {
        double a = Math.toRadians(degrees);
        double r = branch / 2;
        Cope cope = Cope.cut(0, Length.inches(branch), Length.inches(other), Angle.degrees(degrees));
        double first = cope.template().get(0).back().inches();
        double atTop = (other / 2 + r * Math.sin(a)) / Math.cos(a);
        for (Cope.Point point : cope.template()) {
            double w = point.around().inches() / r;
            double s = atTop + point.back().inches() - first;
            double x = s * Math.cos(a) - r * Math.cos(w) * Math.sin(a);
            double y = r * Math.sin(w);
            assertThat(Math.hypot(x, y)).isCloseTo(other / 2, within(1e-9));
        }
    }

    @Test
    void equalTubesAreCopedToTheAxis() {
        Cope square = Cope.cut(0, Length.inches(2), Length.inches(2), Angle.ZERO);
        assertThat(square.depth().inches()).isCloseTo(1, within(1e-9));
        Cope leaning = Cope.cut(0, Length.inches(2), Length.inches(2), Angle.degrees(30));
        assertThat(leaning.depth().inches())
                .isCloseTo((1 + Math.sin(Math.PI / 6)) / Math.cos(Math.PI / 6), within(1e-9));
    }
}
