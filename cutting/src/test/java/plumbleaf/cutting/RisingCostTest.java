package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

class RisingCostTest {
    /** What it shows is what all plans tried show, and nothing is said below it. */
    @Test
    void endsAtTheLeastCostOfAllPlansTried() {
        int settled = 0;
        for (int seed = 1; seed <= 300; seed++) {
            CutTask task = ProvenCutPlannerTest.seeded(new Random(seed), 7, 3);
            Cutting cutting = new Sizes(task, Sizes.Lapping.NONE).cutting(false);
            Standing standing = new Standing(cutting);
            Effort effort = new Effort(10_000_000);
            if (cutting.everySizeFits()) standing.keep(OneByOne.fill(cutting, effort));
            if (!standing.hasPlan()) continue;
            look(cutting, standing, effort);
            long least = TryAll.leastCents(task);
            assertThat(standing.bestCost()).as("seed " + seed).isEqualTo(least);
            assertThat(standing.settled()).as("seed " + seed).isTrue();
            assertThat(standing.bound()).as("seed " + seed).isEqualTo(least);
            settled++;
        }
        assertThat(settled).isGreaterThan(150);
    }

    /** Without steps nothing is shown. */
    @Test
    void nothingIsShownWithoutSteps() {
        CutTask task = ProvenCutPlannerTest.seeded(new Random(3), 7, 3);
        Cutting cutting = new Sizes(task, Sizes.Lapping.NONE).cutting(false);
        Standing standing = new Standing(cutting);
        standing.keep(OneByOne.fill(cutting, new Effort(1_000_000)));
        Relaxation relaxation = new Relaxation(cutting, new LinkedHashSet<>(), new Effort(1_000_000));
        Bound worths =
                relaxation.solve(cutting.demand, cutting.supply, Long.MAX_VALUE).bound();
        RisingCost.look(cutting, standing, worths, relaxation.pricing(), RisingCost.Look.LONG, new Effort(0));
        assertThat(standing.bound()).isZero();
    }

    /** Twenty sizes, 926 pieces and eight lengths of bar at the length as price: it stood fifteen cents above what was shown, after all the steps there are. */
    @Test
    void eightLengthsOfBar() {
        String sizes =
                "4975x25 4336x35 4245x80 4085x17 3817x1 3605x97 3434x23 3426x67 3145x15 3115x65 3110x76 2735x31 2365x60 2034x38 1459x34 1320x29 1067x47 819x41 610x57 83x88";
        CutTask task = atTheLengthAsPrice(sizes, 6691, 7170, 7302, 7491, 9383, 9542, 9738, 10_000);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().order(task)).plan();
        PlanAudit.of(task, plan);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.steps()).isLessThan(20_000_000);
    }

    static CutTask atTheLengthAsPrice(String sizes, int... lengths) {
        List<Piece> pieces = new ArrayList<>();
        for (String size : List.of(sizes.split(" "))) {
            int x = size.indexOf('x');
            for (int n = Integer.parseInt(size.substring(x + 1)); n > 0; n--)
                pieces.add(Piece.square("p" + pieces.size(), "", Integer.parseInt(size.substring(0, x))));
        }
        List<StockBar> bars = new ArrayList<>();
        for (int length : lengths)
            bars.add(new StockBar("b" + length, length, Money.cents(length), Supply.asMany(), false));
        return new CutTask("tube", pieces, bars, new SawRules(0, 0, 0), CutTask.JOB_STEPS);
    }

    private static void look(Cutting cutting, Standing standing, Effort effort) {
        Relaxation relaxation = new Relaxation(cutting, new LinkedHashSet<>(), effort);
        Bound worths =
                relaxation.solve(cutting.demand, cutting.supply, Long.MAX_VALUE).bound();
        standing.atLeast(worths.roundedUp(cutting.step()));
        RisingCost.look(cutting, standing, worths, relaxation.pricing(), RisingCost.Look.LONG, effort);
    }
}
