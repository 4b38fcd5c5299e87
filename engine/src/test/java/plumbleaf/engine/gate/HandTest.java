package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Offset;

/** Hands against the plan sketch of the conventions: a run to the east, outside on the right, which is south. */
class HandTest {
    private static final Opening EAST = GateSamples.opening(Direction.EAST, Side.RIGHT);

    @Test
    void theSentenceIsTheSameEverywhere() {
        assertThat(new Hand(Side.RIGHT, SwingWay.IN).sentence())
                .isEqualTo("Seen from outside: hinges on the right, swings in");
    }

    @Test
    void leftFromOutsideIsTheFaceNearerTheStartWhenOutsideIsOnTheRight() {
        SwingAxes axes = SwingAxes.of(EAST, new Hand(Side.LEFT, SwingWay.IN), GateSamples.pin(0.375, 0));
        assertThat(axes.pin().xIn()).isCloseTo(216.375, within(1e-12));
        assertThat(axes.along()).isEqualTo(Direction.EAST);
        assertThat(axes.side()).isEqualTo(Direction.NORTH);
        assertThat(axes.viewerSign()).isEqualTo(-1);
    }

    @Test
    void rightFromOutsideIsTheOtherFaceAndPointsBack() {
        SwingAxes axes = SwingAxes.of(EAST, new Hand(Side.RIGHT, SwingWay.OUT), GateSamples.pin(0.375, 0));
        assertThat(axes.pin().xIn()).isCloseTo(263.625, within(1e-12));
        assertThat(axes.along().east()).isEqualTo(-1);
        assertThat(axes.side().north()).isEqualTo(-1);
        assertThat(axes.viewerSign()).isEqualTo(1);
    }

    @Test
    void withOutsideOnTheLeftTheViewerStandsNorthAndHisLeftIsEast() {
        Opening opening = GateSamples.opening(Direction.EAST, Side.LEFT);
        SwingAxes axes = SwingAxes.of(opening, new Hand(Side.LEFT, SwingWay.OUT), GateSamples.pin(0, 0));
        assertThat(axes.pin().xIn()).isCloseTo(264, within(1e-12));
        assertThat(axes.along().east()).isEqualTo(-1);
        assertThat(axes.side().north()).isEqualTo(1);
    }

    @Test
    void aPlanPointGoesThereAndBack() {
        SwingAxes axes = SwingAxes.of(EAST, new Hand(Side.RIGHT, SwingWay.IN), GateSamples.pin(0.375, 0));
        PlanPoint point = axes.plan(Offset.inches(20), Offset.inches(7));
        assertThat(axes.alongIn(point)).isCloseTo(20, within(1e-12));
        assertThat(axes.sideIn(point)).isCloseTo(7, within(1e-12));
    }

    @Test
    void whatWasNotSaidLeavesFourTwoOrOneHand() {
        assertThat(Hand.agreeing(Stated.open(), Stated.open())).hasSize(4);
        assertThat(Hand.agreeing(Stated.of(Side.LEFT), Stated.open())).hasSize(2);
        assertThat(Hand.agreeing(Stated.of(Side.LEFT), Stated.of(SwingWay.OUT)))
                .containsExactly(new Hand(Side.LEFT, SwingWay.OUT));
    }
}
