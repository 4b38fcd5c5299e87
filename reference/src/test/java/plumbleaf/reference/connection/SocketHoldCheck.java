package plumbleaf.reference.connection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.strength.ConcreteBreakout;
import plumbleaf.engine.strength.SocketHold;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * A rigid post in a concrete socket: the block towards the edge, and the peak pressure.
 * Source: engineering forum threads 8728 and 8797 (formula of the pivot and of P2), derived again from statics (CX24).
 * Tolerance: 0.1 %, the digits given; a moment alone to 1e-9 of its closed form 3 M / 2 m.
 */
class SocketHoldCheck {
    @Test
    void guardPost() {
        Vector vector = Vectors.one("connection", "CX24");
        Force push = Force.pounds(vector.in("P_lb"));
        Moment moment = Moment.poundInches(push.pounds() * vector.in("L_in"));
        SocketHold hold = SocketHold.of(push, moment, Length.inches(vector.in("m_in")));
        vector.check("P2_lb", hold.upper().pounds());
        vector.check("p0_lb_per_in", hold.peakLbPerIn());
        vector.check("p0_psi", hold.peak(Length.inches(vector.in("b_in"))).psi());
    }

    @Test
    void aMomentAloneTurnsItAboutItsMiddle() {
        SocketHold hold = SocketHold.of(Force.ZERO, Moment.poundInches(6000), Length.inches(8));
        assertThat(hold.upper().pounds()).isCloseTo(1.5 * 6000 / 8, within(1e-9 * 1125));
        assertThat(hold.peakLbPerIn()).isCloseTo(6.0 * 6000 / 64, within(1e-9 * 562.5));
    }

    /** The example's own verdict: at 4 in. to the edge 2,520 lb hold against 4,434 lb of the guard post. */
    @Test
    void fourInchesToTheEdgeDoNotHoldAGuardPost() {
        Force side = new ConcreteBreakout(ConcreteBreakout.POST_INSTALLED, Stress.psi(2500), Length.inches(5))
                .byEdgeAlone(Length.inches(4));
        assertThat(side.pounds()).isCloseTo(3600, within(1e-6));
        assertThat(side.pounds() * ConcreteBreakout.PHI_SHEAR).isCloseTo(2520, within(1e-6));
        assertThat(side.pounds() * ConcreteBreakout.PHI_SHEAR).isLessThan(1.6 * 2771);
    }
}
