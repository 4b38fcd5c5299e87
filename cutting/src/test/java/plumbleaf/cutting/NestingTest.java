package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Angle;

class NestingTest {
    private static final long INCH = 25_400_000;

    @Test
    void mitredPiecesTurnedOverShareTheirCutsAndNeedOneBarLess() {
        // Four of 61 in. with 45 degree ends from 2 in. tube, no kerf: 61 + 3 x (61 - 2) = 238 in., where side by side
        // they need 244.
        CutPlan plan = planned(task(0, 240, mitred(4, 61, 45, 45, Piece.Ends.OPPOSED, 2)));
        assertThat(plan.bars()).hasSize(1);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.isNested()).isTrue();
        assertThat(plan.bars().get(0).cuts()).extracting(Cut::flip).containsExactly(false, true, false, true);
        assertThat(plan.bars().get(0).cuts().get(1).lapNm()).isEqualTo(2 * INCH - 1);
        assertThat(plan.bars().get(0).offcutNm()).isEqualTo(2 * INCH - 3);
    }

    @Test
    void theKerfIsWiderAlongASlantedCut() {
        // 1/8 in. kerf is 0.1768 in. along the bar at 45 degrees.
        CutPlan plan = planned(task(INCH / 8, 240, mitred(4, 61, 45, 45, Piece.Ends.OPPOSED, 2)));
        long lap = plan.bars().get(0).cuts().get(1).lapNm();
        assertThat(lap / (double) INCH).isBetween(1.948, 1.949);
    }

    @Test
    void parallelEndsShareACutWithoutTurningWhileUnlikeAnglesTakeTurns() {
        CutPlan alike = planned(task(0, 241, mitred(4, 61, 30, 30, Piece.Ends.PARALLEL, 2)));
        assertThat(alike.bars()).hasSize(1);
        assertThat(alike.bars().get(0).cuts()).extracting(Cut::flip).containsOnly(false);
        CutPlan unlike = planned(task(0, 241, mitred(4, 61, 30, 40, Piece.Ends.PARALLEL, 2)));
        assertThat(unlike.bars()).hasSize(1);
        assertThat(unlike.bars().get(0).cuts()).extracting(Cut::flip).containsExactly(false, true, false, true);
    }

    /**
     * A raked pair's tube comes to 32.8 ft, more than the longer bar: two bars at least, and no two cost less than two of the shorter. That is seen at a glance, though fractions say a
     * third less and costs lie five cents apart.
     */
    @Test
    void aPairOfLeavesFromBarsOfTwoLengthsTakesNoLongSearch() {
        List<Piece> pieces = new ArrayList<>();
        for (String leaf : List.of("G1a", "G1b")) {
            double stile = leaf.equals("G1a") ? 13.93 : 20.89;
            double mid = leaf.equals("G1a") ? 10.25 : 17.22;
            double brace = leaf.equals("G1a") ? 26.31 : 34.04;
            pieces.add(tube(leaf + ".m1", leaf, 59, 39.26, 50.74, Piece.Ends.OPPOSED));
            pieces.add(tube(leaf + ".m2", leaf, 59, 50.74, 39.26, Piece.Ends.OPPOSED));
            pieces.add(tube(leaf + ".m3", leaf, stile, 39.26, 50.74, Piece.Ends.OPPOSED));
            pieces.add(tube(leaf + ".m4", leaf, mid, 11.48, 11.48, Piece.Ends.PARALLEL));
            pieces.add(tube(leaf + ".m5", leaf, stile, 50.74, 39.26, Piece.Ends.OPPOSED));
            pieces.add(tube(leaf + ".m6", leaf, brace, 68.48, 68.48, Piece.Ends.PARALLEL));
        }
        List<StockBar> bars = List.of(
                new StockBar("20 ft", 240 * INCH, Money.cents(59_70), Supply.asMany(), false),
                new StockBar("24 ft", 288 * INCH, Money.cents(69_85), Supply.asMany(), false));
        CutPlan plan =
                planned(new CutTask("tube", pieces, bars, new SawRules(INCH / 8, INCH / 2, 24 * INCH), 80_000_000));
        assertThat(plan.proven()).isTrue();
        assertThat(plan.cost()).isEqualTo(Money.cents(119_40));
        assertThat(plan.steps()).isLessThan(200_000);
    }

    private static Piece tube(String id, String leaf, double inches, double first, double second, Piece.Ends ends) {
        return new Piece(
                id, leaf, Math.round(inches * INCH), Angle.degrees(first), Angle.degrees(second), ends, 2 * INCH);
    }

    @Test
    void nothingLapsWhereTheJointForbidsItOrNoBarIsSaved() {
        assertThat(planned(task(0, 240, mitred(4, 61, 45, 45, Piece.Ends.OPPOSED, 0)))
                        .bars())
                .hasSize(2);
        CutPlan loose = planned(task(0, 240, mitred(3, 61, 45, 45, Piece.Ends.OPPOSED, 2)));
        assertThat(loose.isNested()).isFalse();
        assertThat(loose.proven()).isTrue();
    }

    @Test
    void seededFramesFitAsTheSawCutsThemAndNeverCostMoreThanUnlapped() {
        Random random = new Random(41);
        int laps = 0;
        int proven = 0;
        for (int round = 0; round < 60; round++) {
            List<Piece> pieces = new ArrayList<>();
            int slants = 1 + random.nextInt(2);
            for (int s = 0; s < slants; s++) {
                int one = 20 + random.nextInt(30);
                int other = random.nextInt(3) == 0 ? 20 + random.nextInt(30) : one;
                Piece.Ends ends = random.nextBoolean() ? Piece.Ends.OPPOSED : Piece.Ends.PARALLEL;
                pieces.addAll(mitred(2 + random.nextInt(6), 30 + random.nextInt(60), one, other, ends, 2));
            }
            for (int n = random.nextInt(4); n > 0; n--)
                pieces.add(Piece.square("q" + n, "G", (20L + random.nextInt(50)) * INCH));
            List<Piece> named = new ArrayList<>();
            List<Piece> blunt = new ArrayList<>();
            for (int n = 0; n < pieces.size(); n++) {
                Piece p = pieces.get(n);
                named.add(new Piece("p" + n, "G", p.longPointNm(), p.first(), p.second(), p.ends(), p.acrossNm()));
                blunt.add(Piece.square("p" + n, "G", p.longPointNm()));
            }
            CutPlan plan = planned(task(INCH / 8, 240, named));
            assertThat(plan.cost())
                    .isLessThanOrEqualTo(planned(task(INCH / 8, 240, blunt)).cost());
            if (plan.isNested()) laps++;
            if (plan.proven()) proven++;
        }
        assertThat(laps).isPositive();
        assertThat(proven).isGreaterThan(50);
    }

    private static List<Piece> mitred(int count, int inches, int first, int second, Piece.Ends ends, int across) {
        List<Piece> pieces = new ArrayList<>();
        for (int n = 0; n < count; n++)
            pieces.add(new Piece(
                    "m" + n, "G1a", inches * INCH, Angle.degrees(first), Angle.degrees(second), ends, across * INCH));
        return pieces;
    }

    private static CutTask task(long kerf, int barInches, List<Piece> pieces) {
        StockBar bar = new StockBar("bar", barInches * INCH, Money.dollars(40), Supply.asMany(), false);
        return new CutTask("tube", pieces, List.of(bar), new SawRules(kerf, 0, 24 * INCH), CutTask.USUAL_STEPS);
    }

    private static CutPlan planned(CutTask task) {
        CutAnswer answer = new ProvenCutPlanner().plan(task);
        assertThat(answer).isInstanceOf(CutAnswer.Planned.class);
        CutPlan plan = ((CutAnswer.Planned) answer).plan();
        PlanAudit.of(task, plan);
        return plan;
    }
}
