package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;

/** Fabric that ends on a gate's posts pulls them away from the opening, or hangs slack and takes nothing off the leaf. */
class FabricAtGateTest {
    private static List<CombinedAction> still(Design design, String post) {
        return design.post(post).orElseThrow().actions().stream()
                .filter(each ->
                        each.combination() == Combination.D && each.state().equals("closed"))
                .toList();
    }

    @Test
    void bothPostsArePulledAwayFromTheOpeningAndAskedWithoutItToo() {
        Design woven = Yard.nursery().with("wood-side-by-side", "chain-link").design();
        GateDesign gate = Yard.gate(woven);
        List<CombinedAction> hinge = still(woven, gate.hingePost());
        List<CombinedAction> latch = still(woven, gate.latchPost());
        assertThat(hinge).hasSize(2);
        assertThat(latch).hasSize(2);
        double pull = hinge.get(1).action().along().pounds()
                - hinge.get(0).action().along().pounds();
        double tip = hinge.get(1).action().momentAlong().poundInches()
                - hinge.get(0).action().momentAlong().poundInches();
        assertThat(pull).isNegative();
        assertThat(tip).isNegative();
        assertThat(latch.get(1).action().along().pounds()).isCloseTo(-pull, within(1e-9));
        assertThat(latch.get(1).action().momentAlong().poundInches()).isCloseTo(-tip, within(1e-6));
        assertThat(hinge.get(0).action().momentAlong().poundInches())
                .as("slack, the leaf's own pull is all there")
                .isPositive();
    }

    @Test
    void boardsPullNothing() {
        Design boarded = Yard.nursery().design();
        assertThat(still(boarded, Yard.gate(boarded).hingePost())).hasSize(1);
    }
}
