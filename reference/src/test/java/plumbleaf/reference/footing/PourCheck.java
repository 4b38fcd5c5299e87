package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.footing.BagSize;
import plumbleaf.engine.footing.ConcreteOrder;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Concrete per hole, bags and yards for a job.
 * Source: geometry and bag yields on labels (MX36, MX37); concrete coverage guide of a bag mix (E11).
 * Tolerance: 0.1 %; bags exactly.
 */
class PourCheck {
    @ParameterizedTest
    @ValueSource(strings = {"MX36", "MX37"})
    void holesBagsAndYards(String id) {
        Vector vector = Vectors.one("footing", id);
        double post = vector.in("post_in");
        double outline = vector.text("post_shape").equals("round") ? Math.PI * post * post / 4 : post * post;
        HoleSize hole = new HoleSize(Length.inches(vector.in("hole_in")), Length.inches(vector.in("depth_in")));
        Pour pour = Pour.of(hole, Area.squareInches(outline));
        vector.check("ft3_each", pour.volume().cubicFeet());
        BagSize bag = vector.in("bag_yield_ft3") == 0.45 ? BagSize.SIXTY_POUND : BagSize.EIGHTY_POUND;
        ConcreteOrder order = ConcreteOrder.of(pour.volume().times(vector.in("n")), vector.in("waste_pct") / 100, bag);
        assertThat(order.bags()).isEqualTo((int) vector.out("bags"));
        vector.check("yd3", order.readyMix());
    }

    @Test
    void coverageGuide() {
        Vector vector = Vectors.one("footing", "E11");
        HoleSize hole =
                new HoleSize(Length.inches(vector.in("hole_dia_in")), Length.inches(vector.in("hole_depth_in")));
        Pour pour = Pour.of(hole, Area.ZERO);
        vector.check("volume_ft3", pour.volume().cubicFeet());
        assertThat(ConcreteOrder.of(pour.volume(), 0, BagSize.EIGHTY_POUND).bags())
                .isEqualTo((int) vector.out("bags"));
    }
}
