package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;

/**
 * Ten miles of fence over rolling ground with a root every furlong, laid out: the fewest bays that the stock allows between roots, none longer along the slope than stock, none that
 * digs in, posts off the roots. The fewest bays that any layout needs are counted from the length of the ground.
 *
 * Source: plane geometry, closed forms.
 * Tolerance: 1e-6 in.
 */
@Tag("slow")
class LongRunCheck {
    private static final int FEET = 52_800;

    @Test
    void tenMilesAreLaidOut() {
        Random random = new Random(11);
        int count = FEET / 25 + 1;
        double[] shots = new double[2 * count];
        int height = 0;
        for (int i = 0; i < count; i++) {
            shots[2 * i] = 25 * i;
            shots[2 * i + 1] = height;
            height += random.nextInt(19) - 9;
        }
        StringBuilder roots = new StringBuilder(", \"noDig\": [");
        for (int at = 660; at < FEET; at += 660)
            roots.append(at > 660 ? "," : "")
                    .append(" { \"from\": \"" + at + "'\", \"to\": \"" + (at + 2) + "'\", \"why\": \"root\" }");
        LaidOut laid = LaidOut.run("{ \"length\": \"" + FEET + "'\" }", roots + " ]", shots);
        RunLayout run = laid.layout().runs().get(0);
        List<Bay> bays = run.bays();
        double alongGround = 0;
        for (int i = 1; i < count; i++) {
            double rise = shots[2 * i + 1] - shots[2 * i - 1];
            alongGround += Math.sqrt(300.0 * 300 + rise * rise);
        }
        assertThat(bays.size()).isBetween((int) Math.ceil(FEET / 8.0), (int) Math.ceil(alongGround / 96) + FEET / 660);
        for (Bay bay : bays) {
            assertThat(bay.slopeLength().inches()).isLessThanOrEqualTo(96.2);
            assertThat(bay.groundGapMin().inches()).isGreaterThanOrEqualTo(1 - 1e-6);
            double fromRoot = bay.start().inches() % (660 * 12);
            if (bay.start().inches() > 600 * 12) assertThat(fromRoot).isBetween(24 + 5 - 1e-6, 660 * 12 - 5 + 1e-6);
        }
    }
}
