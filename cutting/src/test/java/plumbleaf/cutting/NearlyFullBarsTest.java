package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/** Pieces cut from full bars of a fine scale: a plan without any waste is there, and nothing but such a plan will do. */
class NearlyFullBarsTest {
    private static final int BAR = 2500;

    /** A multiple of three. */
    private static final int LONG_BAR = 9999;

    private static final String PETERSEN = "01 12 23 34 40 05 16 27 38 49 57 79 96 68 85";

    @ParameterizedTest
    @CsvSource({"1, 150", "2, 150", "3, 200", "4, 200", "5, 200"})
    void aPlanWithoutWasteIsFoundAgain(int seed, int pieces) {
        Random random = new Random(seed);
        List<Piece> cut = new ArrayList<>();
        int bars = 0;
        while (cut.size() < pieces) {
            int first = (int) (BAR * (0.2 + 0.3 * random.nextDouble()));
            int second = (int) ((BAR - first) * (0.3 + 0.4 * random.nextDouble()));
            for (int size : List.of(first, second, BAR - first - second))
                cut.add(Piece.square("p" + cut.size(), "", size));
            bars++;
        }
        CutTask task = taskOf(BAR, cut);
        CutPlan plan = planned(task);
        assertThat(plan.bars()).hasSize(bars);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }

    /**
     * No plan is as good as the length allows, and one of a bar more is: what would have to lie together in the first need not in the second. The fewest bars by trying
     * all sets of pieces, apart from the planner.
     */
    @ParameterizedTest
    @CsvSource({
        "9, 687 665 627 606 594 585 580 556 446 422 395 389 382 356 168 164 134 82 80 63",
        "10, 773 724 680 666 640 629 604 580 518 439 439 379 326 255 249 226 197 177 135 133 113 108",
    })
    void whatLiesTogetherAtTheBoundNeedNotABarAboveIt(int bars, String lengths) {
        List<Piece> cut = new ArrayList<>();
        for (String length : lengths.split(" ", -1))
            cut.add(Piece.square("p" + cut.size(), "", Integer.parseInt(length)));
        CutTask task = taskOf(1_000, cut);
        CutPlan plan = planned(task);
        assertThat(plan.bars()).hasSize(bars).hasSize(fewest(1_000, cut));
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }

    /** Every piece lies together with others that fill a bar, so no task is left: it once went on for ever at that. Whatever a bar costs. */
    @ParameterizedTest
    @ValueSource(longs = {500, 1})
    @Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void nothingIsLeftWhereAllLieTogether(long cents) {
        List<Piece> cut = new ArrayList<>();
        for (int length : new int[] {
            4697, 3947, 3666, 3615, 3347, 3230, 2770, 2147, 1422, 1189, 921, 811, 792, 627, 557, 534, 450, 399, 310,
            212, 187, 170
        }) cut.add(Piece.square("p" + cut.size(), "", length));
        CutTask task = taskOf(6_000, Money.cents(cents), cut);
        CutPlan plan = planned(task);
        assertThat(plan.bars()).hasSize(6);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }

    /** Of every set of pieces the least that it takes: whole bars, and so much of one more. */
    private static int fewest(int bar, List<Piece> pieces) {
        int[] least = new int[1 << pieces.size()];
        for (int set = 1; set < least.length; set++) {
            least[set] = Integer.MAX_VALUE;
            for (int i = 0; i < pieces.size(); i++) {
                if ((set >> i & 1) == 0) continue;
                int length = (int) pieces.get(i).longPointNm();
                int before = least[set ^ 1 << i];
                int room = (bar - before % bar) % bar;
                int after = before + length + (length <= room ? 0 : room);
                least[set] = Math.min(least[set], after);
            }
        }
        return (least[least.length - 1] + bar - 1) / bar;
    }

    /** Five hundred lengths with no common step, up to half a bar or a quarter, thousands of pieces: the last two pieces of a bar leave next to nothing of it. */
    @ParameterizedTest
    @CsvSource({"1, 250000", "2, 125000"})
    void thousandsOfPiecesOfHundredsOfFineLengths(int seed, int longest) {
        Random random = new Random(seed);
        List<Piece> cut = new ArrayList<>();
        for (int size = 0; size < 500; size++) {
            int length = 1 + random.nextInt(longest);
            for (int n = random.nextInt(10); n >= 0; n--) cut.add(Piece.square("p" + cut.size(), "", length));
        }
        CutTask task = taskOf(500_000, cut);
        CutPlan plan = planned(task);
        long volume = cut.stream().mapToLong(Piece::longPointNm).sum();
        assertThat(plan.bars()).hasSize((int) (volume / 500_000) + 1);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.steps()).isLessThan(20_000_000);
        PlanAudit.of(task, plan);
    }

    /**
     * Fillers of one more than a multiple of three, bar and core of multiples of three: a full bar holds three fillers or none, or six, and six are too long. Three
     * fillers leave less than the shortest piece of the core, so a bar is full of fillers alone or of the core alone; and no way of filling bars from the core, all
     * of them tried here, takes each of its pieces once. So a bar more than the lengths say is needed, and the planted fillers and four bars do.
     */
    @ParameterizedTest
    @CsvSource({"1, 60", "2, 60", "3, 99", "4, 150", "5, 201"})
    void aBarMoreThanTheLengthsSay(int seed, int pieces) {
        Random random = new Random(seed);
        List<Long> core = core(random);
        assertThat(coversOnce(fullBars(core), 0)).isFalse();
        List<Piece> cut = new ArrayList<>();
        for (long size : core) cut.add(Piece.square("p" + cut.size(), "", size));
        long least = LONG_BAR * 294L / 1000 / 3 * 3 + 1;
        long spare = (LONG_BAR - 3 * least) / 3;
        while (cut.size() + 3 <= pieces) {
            long first = (long) (spare * random.nextDouble());
            long second = (long) ((spare - first) * random.nextDouble());
            for (long more : List.of(first, second, spare - first - second))
                cut.add(Piece.square("p" + cut.size(), "", least + 3 * more));
        }
        CutTask task = taskOf(LONG_BAR, cut);
        CutPlan plan = planned(task);
        long volume = cut.stream().mapToLong(Piece::longPointNm).sum();
        assertThat(volume % LONG_BAR).isZero();
        assertThat(plan.bars()).hasSize((int) (volume / LONG_BAR) + 1);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }

    /** The edges of the Petersen graph, which no three of its perfect matchings cover; each as long as its two corners, drawn until no other three bars do either. */
    private static List<Long> core(Random random) {
        long[] corner = new long[10];
        while (true) {
            long left = LONG_BAR;
            for (int i = 0; i < 9; i++) {
                corner[i] = 3L * (200 + random.nextInt(266));
                left -= corner[i];
            }
            corner[9] = left;
            List<Long> edges = Stream.of(PETERSEN.split(" "))
                    .map(edge -> corner[edge.charAt(0) - '0'] + corner[edge.charAt(1) - '0'])
                    .toList();
            boolean inRange = left >= 600 && left <= 1400;
            if (inRange && !coversOnce(fullBars(edges), 0)) return edges;
        }
    }

    /** Every set of pieces, as bits, that is just a bar long. */
    private static List<Integer> fullBars(List<Long> core) {
        List<Integer> full = new ArrayList<>();
        for (int set = 1; set < 1 << core.size(); set++) {
            long sum = 0;
            for (int i = 0; i < core.size(); i++) if ((set >> i & 1) == 1) sum += core.get(i);
            if (sum == LONG_BAR) full.add(set);
        }
        return full;
    }

    private static boolean coversOnce(List<Integer> full, int taken) {
        if (taken == (1 << 15) - 1) return true;
        int next = Integer.lowestOneBit(~taken);
        for (int set : full) {
            if ((set & next) != 0 && (set & taken) == 0 && coversOnce(full, taken | set)) return true;
        }
        return false;
    }

    private static CutTask taskOf(long bar, List<Piece> cut) {
        return taskOf(bar, Money.dollars(1), cut);
    }

    private static CutTask taskOf(long bar, Money price, List<Piece> cut) {
        return new CutTask(
                "tube",
                cut,
                List.of(new StockBar("bar", bar, price, Supply.asMany(), false)),
                new SawRules(0, 0, 0),
                60_000_000);
    }

    private static CutPlan planned(CutTask task) {
        return ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
    }
}
