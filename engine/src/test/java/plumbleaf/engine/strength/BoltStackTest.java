package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.quantity.Length;

/** A half-inch bolt through a strap, a tube and a nailer, and shorter ones. */
class BoltStackTest {
    private static final BoltSize HALF = new BoltSize(
            Length.inches(0.5),
            13,
            Length.inches(0.4375),
            Length.inches(0.109),
            Length.inches(0.5625),
            Length.inches(1.0625),
            Length.inches(1.375),
            Length.inches(0.371),
            Length.inches(0.3125));

    /** 1/4 + 2 + 1-1/2 + two washers 0.218 + nut 0.4375 + two threads 0.154 = 4.56: order 5 in. */
    @Test
    void strapTubeAndNailerAskForFiveInches() {
        BoltStack stack = BoltStack.of(HALF, List.of(Length.inches(0.25), Length.inches(2), Length.inches(1.5)));
        assertThat(stack.least().inches()).isCloseTo(4.5593, within(0.0001));
        assertThat(stack.order().inches()).isEqualTo(5);
        assertThat(stack.stickOut().inches()).isCloseTo(5 - 3.75 - 0.218 - 0.4375, within(1e-9));
        assertThat(stack.needsCap()).isTrue();
    }

    /** 5 in. has 1-1/4 in. of thread, so the plain shank ends 3.641 in. below the washer: the strap's face is far above, the last 0.109 in. of the nailer is in the thread. */
    @Test
    void theThreadStaysOutOfTheShearPlane() {
        BoltStack stack = BoltStack.of(HALF, List.of(Length.inches(0.25), Length.inches(2), Length.inches(1.5)));
        assertThat(stack.threadInGrip().inches()).isCloseTo(3.75 - (3.75 - 0.109), within(1e-9));
        assertThat(stack.threadClearOf(Length.inches(0.25))).isTrue();
        assertThat(stack.threadClearOf(Length.inches(3.7))).isFalse();
    }

    @Test
    void aThinGripIsAllThread() {
        BoltStack stack = BoltStack.of(HALF, List.of(Length.inches(0.25)));
        assertThat(stack.order().inches()).isEqualTo(1.5);
        assertThat(stack.threadClearOf(Length.inches(0.25))).isFalse();
        assertThat(BoltStack.sleeve(Length.inches(2)).inches()).isEqualTo(1.96875);
    }

    @Test
    void beyondSixInchesBoltsComeInWholeInches() {
        assertThat(BoltStack.of(HALF, List.of(Length.inches(6))).order().inches())
                .isEqualTo(7);
    }
}
