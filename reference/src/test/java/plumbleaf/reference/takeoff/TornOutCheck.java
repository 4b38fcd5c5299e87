package plumbleaf.reference.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Existing;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.PlugFate;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.TornOut;
import plumbleaf.engine.takeoff.Truck;

/**
 * An old fence of 100 ft, a post every 8 ft in 10 by 30 in. of concrete: 14 posts, 205 lb of concrete each, what it comes to in loads, and what stays in the line.
 *
 * Source: geometry, pi/4 (10/12)^2 (30/12) 150 = 204.5 lb.
 * Tolerance: the printed digit, 0.5 lb.
 */
class TornOutCheck {
    private static OldFence fence(PlugFate fate) {
        return new OldFence(
                "boards",
                Length.feet(100),
                Length.feet(8),
                true,
                Force.pounds(15),
                Length.inches(10),
                Length.inches(30),
                fate,
                Stated.of("R1"),
                Length.feet(4),
                true);
    }

    private static TornOut torn(PlugFate fate) {
        return TornOut.of(new Existing(List.of(), List.of(), List.of(fence(fate)), List.of()), Truck.USUAL);
    }

    @Test
    void aPlugWeighsTwoHundredAndFivePounds() {
        assertThat(TornOut.weight(Length.inches(10), Length.inches(30)).pounds())
                .isCloseTo(204.5, within(0.05));
    }

    /** 1,500 lb of treated fence are one load of 1,500 lb, 14 plugs of 204.5 lb are 2,863 lb and two. */
    @Test
    void pulledConcreteIsHauled() {
        TornOut torn = torn(PlugFate.PULL);
        assertThat(torn.plugs()).isEqualTo(14);
        assertThat(torn.treated().pounds()).isCloseTo(1500, within(1e-9));
        assertThat(torn.concrete().pounds()).isCloseTo(2863, within(0.5));
        assertThat(torn.loads()).isEqualTo(3);
        assertThat(torn.left()).isZero();
    }

    @Test
    void concreteThatStaysIsInTheWay() {
        TornOut torn = torn(PlugFate.LEAVE);
        assertThat(torn.concrete().isZero()).isTrue();
        assertThat(torn.left()).isEqualTo(14);
        List<Double> stations = new Existing(List.of(), List.of(), List.of(fence(PlugFate.LEAVE)), List.of())
                .leftIn("R1").stream()
                        .map(left -> left.plug().station().inFeet())
                        .toList();
        assertThat(stations).hasSize(14).startsWith(4.0, 12.0).endsWith(100.0, 104.0);
    }
}
