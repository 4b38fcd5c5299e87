package plumbleaf.reference.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * The benchmark classes of the literature, made anew from their published descriptions: every plan is proven, each piece lies in it once and no bar is overfull.
 * Triplets are made from full bins of three, so that their optimum is known; the Petersen graph has no three perfect matchings that cover it, so that sizes made
 * of it need a bar more than the fractions say.
 * Source: E. Falkenauer, Journal of Heuristics 2 (1996) 5-30 (uniform and triplet classes); A. Scholl, R. Klein and C. Juergens, Computers and Operations Research 24 (1997) 627-645;
 * P. Schwerin and G. Waescher, ITOR 4 (1997) 377-389; M. Delorme, M. Iori and S. Martello, EJOR 255 (2016) 1-20 (random class); A. Caprara and others, INFORMS Journal on Computing 27 (2015) (non-round-up instances from the Petersen graph); all descriptions from memory.
 * Tolerance: none, whole bars.
 */
@Tag("slow")
class BenchmarkClassesCheck {
    private static final int[][] PETERSEN = {
        {0, 1}, {1, 2}, {2, 3}, {3, 4}, {4, 0}, {0, 5}, {1, 6}, {2, 7}, {3, 8}, {4, 9}, {5, 7}, {7, 9}, {9, 6}, {6, 8},
        {8, 5}
    };

    @ParameterizedTest
    @CsvSource({
        "uniform,120",
        "uniform,250",
        "uniform,500",
        "triplets,60",
        "triplets,120",
        "triplets,249",
        "scholl-1,200",
        "scholl-2,100",
        "scholl-2,200",
        "scholl-2,500",
        "scholl-3,200",
        "schwerin,100",
        "schwerin,120",
        "random,500",
        "random,1000",
        "wide,150",
        "tight,160",
        "augmented,120"
    })
    void everyPlanIsProven(String family, int pieces) {
        for (int seed = 1; seed <= 3; seed++) {
            Instance made = made(family, pieces, new Random(seed * 977L + pieces));
            CutPlan plan = planned(made);
            assertThat(plan.proven())
                    .as(family + " " + pieces + " seed " + seed)
                    .isTrue();
            if (family.equals("triplets")) assertThat(plan.bars()).hasSize(pieces / 3);
            audit(made, plan);
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5"})
    void sizesOfThePetersenGraphNeedABarMoreThanTheFractionsSay(int seed) {
        Random random = new Random(seed);
        List<Long> labels = new ArrayList<>();
        long bar = 0;
        for (int i = 0; i < 10; i++) {
            // powers of three apart, so that only the edges at all ten corners fill a bar
            long label = (long) Math.pow(3, i) * 1000 + random.nextInt(100);
            labels.add(label);
            bar += label;
        }
        List<Long> sizes = new ArrayList<>();
        for (int[] edge : PETERSEN) sizes.add(labels.get(edge[0]) + labels.get(edge[1]));
        CutPlan plan = planned(new Instance(bar, sizes));
        assertThat(plan.bars()).hasSize(4);
        assertThat(plan.proven()).isTrue();
    }

    record Instance(long bar, List<Long> sizes) {
        Instance {
            sizes = List.copyOf(sizes);
        }
    }

    private static Instance made(String family, int pieces, Random random) {
        return switch (family) {
            case "uniform" -> between(150, 20, 100, pieces, random);
            case "scholl-1" -> between(100 + 10 * random.nextInt(6), 20, 100, pieces, random);
            case "scholl-2" -> {
                double middle = 1000.0 / (3 + 2 * random.nextInt(4));
                double spread = List.of(0.2, 0.5, 0.9).get(random.nextInt(3));
                yield between(
                        1000, (int) Math.ceil(middle * (1 - spread)), (int) (middle * (1 + spread)), pieces, random);
            }
            case "scholl-3" -> between(100_000, 20_000, 35_000, pieces, random);
            case "random" -> {
                int bar = List.of(50, 75, 100, 120, 125, 150, 200, 300, 400, 500, 750, 1000)
                        .get(random.nextInt(12));
                int least = random.nextBoolean() ? bar / 10 : bar / 5;
                yield between(bar, least, bar * (7 + random.nextInt(2)) / 10, pieces, random);
            }
            case "schwerin" -> between(1000, 150, 200, pieces, random);
            case "wide" -> between(10_000, 20, 7_500, pieces, random);
            case "tight" -> tight(between(1000, 1, 800, pieces, random));
            case "triplets" -> triplets(new ArrayList<>(), 1000, 380, 490, 250, pieces, random);
            default -> augmented(pieces, random);
        };
    }

    private static Instance between(int bar, int least, int most, int pieces, Random random) {
        List<Long> sizes = new ArrayList<>();
        for (int i = 0; i < pieces; i++) sizes.add((long) least + random.nextInt(most - least + 1));
        return new Instance(bar, sizes);
    }

    /** Sizes cut down one by one until the volume just fills whole bars. */
    private static Instance tight(Instance loose) {
        List<Long> sizes = new ArrayList<>(loose.sizes());
        long over = sizes.stream().mapToLong(size -> size).sum() % loose.bar();
        for (int i = 0; over > 0; i = (i + 1) % sizes.size()) {
            if (sizes.get(i) < 3) continue;
            sizes.set(i, sizes.get(i) - 1);
            over--;
        }
        return new Instance(loose.bar(), sizes);
    }

    private static Instance triplets(
            List<Long> sizes, int bar, int least, int most, int smallest, int pieces, Random random) {
        while (sizes.size() + 3 <= pieces) {
            long first = (long) least + random.nextInt(most - least + 1);
            long rest = bar - first;
            long second = smallest + (long) random.nextInt((int) (rest / 2 - smallest) + 1);
            sizes.addAll(List.of(first, second, rest - second));
        }
        return new Instance(bar, sizes);
    }

    /** Fifteen sizes of the Petersen graph, and triplets round them. */
    private static Instance augmented(int pieces, Random random) {
        List<Long> labels = new ArrayList<>();
        long left = 2500;
        for (int i = 0; i < 9; i++) {
            long label = 80L + random.nextInt(340);
            labels.add(label);
            left -= label;
        }
        if (left < 60) return augmented(pieces, random);
        labels.add(left);
        List<Long> sizes = new ArrayList<>();
        for (int[] edge : PETERSEN) sizes.add(labels.get(edge[0]) + labels.get(edge[1]));
        return triplets(sizes, 2500, 500, 1250, 300, pieces, random);
    }

    private static CutPlan planned(Instance made) {
        List<Piece> pieces = new ArrayList<>();
        for (long size : made.sizes()) pieces.add(Piece.square("p" + pieces.size(), "", size));
        StockBar bar = new StockBar("bar", made.bar(), Money.dollars(1), Supply.asMany(), false);
        CutAnswer answer = new ProvenCutPlanner()
                .plan(new CutTask("made", pieces, List.of(bar), new SawRules(0, 0, 0), CutTask.USUAL_STEPS));
        assertThat(answer).isInstanceOf(CutAnswer.Planned.class);
        return ((CutAnswer.Planned) answer).plan();
    }

    private static void audit(Instance made, CutPlan plan) {
        TreeMap<String, Long> cut = new TreeMap<>();
        for (CutBar bar : plan.bars()) {
            long used = 0;
            for (Cut each : bar.cuts()) {
                used += each.longPointNm();
                assertThat(cut.put(each.piece(), each.longPointNm())).isNull();
            }
            assertThat(used).isLessThanOrEqualTo(made.bar());
        }
        assertThat(cut).hasSize(made.sizes().size());
        for (int i = 0; i < made.sizes().size(); i++)
            assertThat(cut).containsEntry("p" + i, made.sizes().get(i));
        assertThat(plan.cost()).isEqualTo(Money.dollars(plan.bars().size()));
    }
}
