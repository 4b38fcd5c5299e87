package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;

class RecutTest {
    /** Forty sizes, 1,831 pieces and eight lengths of bar at the length as price: it stood three units above what was shown, after all the steps there are. */
    @Test
    void aPlanThatWastesNextToNothing() {
        String sizes =
                "2929x87 2794x79 2792x94 2694x25 2612x44 2591x5 2518x52 2513x22 2410x7 2407x88 2181x69 2056x54 1944x31 1851x43 1825x21 1812x16 1789x87 1707x96 1703x80 1699x12 "
                        + "1673x47 1672x65 1630x2 1595x5 1525x70 1339x15 1275x2 1259x77 1117x44 1104x47 990x99 973x9 936x59 907x41 819x81 776x50 567x21 566x14 540x5 525x66";
        CutTask task = RisingCostTest.atTheLengthAsPrice(sizes, 5345, 5492, 5715, 8107, 8411, 8430, 8487, 10_000);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().order(task)).plan();
        PlanAudit.of(task, plan);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.steps()).isLessThan(60_000_000);
    }

    /** Whatever it finds is a plan of the bars at hand, and nothing is shown by it. */
    @Test
    void findsPlansOfTheBarsAtHandAndShowsNothing() {
        int cheaper = 0;
        for (int seed = 1; seed <= 300; seed++) {
            Cutting cutting =
                    new Sizes(ProvenCutPlannerTest.seeded(new Random(seed), 9, 3), Sizes.Lapping.NONE).cutting(false);
            if (!cutting.everySizeFits()) continue;
            Standing standing = new Standing(cutting);
            Effort effort = new Effort(1_000_000);
            standing.keep(OneByOne.fill(cutting, effort));
            if (!standing.hasPlan()) continue;
            long before = standing.bestCost();
            look(cutting, standing, effort);
            held(cutting, standing);
            assertThat(standing.bound()).isZero();
            if (standing.bestCost() < before) cheaper++;
        }
        assertThat(cheaper).isGreaterThan(10);
    }

    private static void look(Cutting cutting, Standing standing, Effort effort) {
        Relaxation relaxation = new Relaxation(cutting, new LinkedHashSet<>(), effort);
        Relaxation.Solved root = relaxation.solve(cutting.demand, cutting.supply, Long.MAX_VALUE);
        Recut.look(cutting, standing, root, relaxation.pricing(), effort);
    }

    private static void held(Cutting cutting, Standing standing) {
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        long cost = 0;
        for (Column bar : standing.best()) {
            long used = 0;
            for (int k = 0; k < bar.size.length; k++) used += bar.times[k] * cutting.size[bar.size[k]];
            assertThat(used).isLessThanOrEqualTo(cutting.room[bar.kind]);
            bar.takeFrom(demand);
            supply[bar.kind]--;
            cost += cutting.price[bar.kind];
        }
        assertThat(demand).containsOnly(0);
        assertThat(Arrays.stream(supply).min().orElse(0)).isNotNegative();
        assertThat(cost).isEqualTo(standing.bestCost());
    }
}
