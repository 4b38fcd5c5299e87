package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * Lists grown to be hard, whose lengths are those of whole bars. To a core, the edges of the Petersen graph, that needs four bars where its length is three, come
 * three pieces at a time which fill a bar; the long one so that without the second nothing makes up its rest. So the two lie together in a plan without waste,
 * the third may as well lie with them, and whether there is such a plan is as it was with the core. Where no such three are found all lengths are doubled.
 * With one piece of the core cut in two, so that three bars do, the same grows a list that fills every bar.
 * Source: M. Delorme, M. Iori and S. Martello, EJOR 255 (2016) 1-20, augmented classes; how the three are chosen is ours.
 */
class GrownListsTest {
    private static final String PETERSEN = "01 12 23 34 40 05 16 27 38 49 57 79 96 68 85";

    private final Random random = new Random();
    private int bar;
    private List<Integer> sizes = List.of();

    @ParameterizedTest
    @CsvSource({"1, 201", "2, 201", "3, 402", "4, 402", "1519214156, 600", "1519372536, 600"})
    void oneBarMoreThanTheLengthsSay(int seed, int pieces) {
        random.setSeed(seed);
        core();
        grow(pieces);
        held(sizes.stream().mapToInt(size -> size).sum() / bar + 1);
    }

    @ParameterizedTest
    @CsvSource({"5, 202", "6, 202", "7, 403", "8, 403"})
    void everyBarFull(int seed, int pieces) {
        random.setSeed(seed);
        do {
            core();
            int cut = random.nextInt(15);
            int first = random.nextInt(sizes.get(cut));
            sizes.add(sizes.get(cut) - first);
            sizes.set(cut, first);
        } while (sizes.contains(0) || !coversOnce());
        grow(pieces);
        held(sizes.stream().mapToInt(size -> size).sum() / bar);
    }

    private void held(int bars) {
        List<Piece> cut = new ArrayList<>();
        for (int size : sizes) cut.add(Piece.square("p" + cut.size(), "", size));
        StockBar stock = new StockBar("bar", bar, Money.dollars(1), Supply.asMany(), false);
        CutTask task = new CutTask("tube", cut, List.of(stock), new SawRules(0, 0, 0), 60_000_000);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
        assertThat(plan.bars()).hasSize(bars);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }

    /** Edges as long as their two corners; drawn until three bars do not hold them. */
    private void core() {
        int[] corner = new int[10];
        do {
            bar = 150 + random.nextInt(600);
            int left = bar;
            for (int i = 0; i < 9; i++) {
                corner[i] = (int) Math.exp(random.nextDouble() * Math.log(bar / 2.0));
                left -= corner[i];
            }
            corner[9] = left;
            sizes = new ArrayList<>(Stream.of(PETERSEN.split(" "))
                    .map(edge -> corner[edge.charAt(0) - '0'] + corner[edge.charAt(1) - '0'])
                    .toList());
        } while (corner[9] < 1 || sizes.stream().anyMatch(size -> size >= bar) || coversOnce());
    }

    private boolean coversOnce() {
        List<Integer> full = new ArrayList<>();
        for (int set = 1; set < 1 << sizes.size(); set++) {
            int sum = 0;
            for (int i = 0; i < sizes.size(); i++) if ((set >> i & 1) == 1) sum += sizes.get(i);
            if (sum == bar) full.add(set);
        }
        return covers(full, 0);
    }

    private boolean covers(List<Integer> full, int taken) {
        if (taken == (1 << sizes.size()) - 1) return true;
        int next = Integer.lowestOneBit(~taken);
        for (int set : full) {
            if ((set & next) != 0 && (set & taken) == 0 && covers(full, taken | set)) return true;
        }
        return false;
    }

    private void grow(int pieces) {
        int from = (bar + 1) / 2;
        while (sizes.size() < pieces) {
            BitSet made = made();
            int at = from;
            while (at <= bar * 9 / 10 && !threeFrom(at, made)) at++;
            from = at;
            if (at <= bar * 9 / 10) continue;
            bar *= 2;
            sizes.replaceAll(size -> 2 * size);
            from = bar / 2;
        }
    }

    private boolean threeFrom(int longest, BitSet made) {
        int rest = bar - longest;
        for (int tries = 0; tries < 20 && rest > 1 && !made.get(rest); tries++) {
            int third = 1 + random.nextInt(Math.max(1, rest / 5));
            if (third == rest || made.get(rest - third)) continue;
            sizes.addAll(List.of(longest, rest - third, third));
            return true;
        }
        return false;
    }

    /** What can be laid together of the pieces under half a bar. */
    private BitSet made() {
        BitSet made = new BitSet();
        made.set(0);
        for (int size : sizes) {
            if (size * 2 >= bar) continue;
            for (int sum = made.previousSetBit(bar - size); sum >= 0; sum = made.previousSetBit(sum - 1))
                made.set(sum + size);
        }
        return made;
    }
}
