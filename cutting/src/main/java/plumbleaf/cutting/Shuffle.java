package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Full bars from pieces nearly all of different lengths, hundreds of them, where no fraction points to a plan: ways in which few pieces just fill a bar are laid out
 * and give way to one another, for the worse ever more seldom, until so few bars are left that {@link LastBars} fills them. Long pieces find their place that
 * way, and the short ones, which many make up any length, remain for the last bars. Finds a plan or nothing, and proves nothing.
 * Source: S. Kirkpatrick, C. D. Gelatt and M. P. Vecchi, Optimization by simulated annealing, Science 220 (1983) 671-680; what a piece weighs is ours. Check:
 * ShuffleTest.
 */
final class Shuffle {
    private static final int PIECES_A_WAY = 3;

    /** Lists of fewer sizes, or with many pieces to a size, are for fractions. */
    private static final int SIZES = 60;

    private static final int PIECES_A_SIZE = 2;

    /** Ways beyond these are not looked for: with so many others lead there sooner. */
    private static final int MOST_WAYS = 400_000;

    private static final int MOVES_A_TURN = 1_500_000;
    private static final double LONGER = 1.2;

    /** A piece weighs this much, and as much again by its length, about. */
    private static final int UNIT = 100;

    /** Of this much more a piece weighs for every turn that left it over. */
    private static final int MORE = 10;

    private static final double WARM = 0.6 * UNIT;
    private static final double COLD = 0.3 * UNIT;
    private static final int COOLINGS = 64;

    /** Bars that may be left for the last. */
    private static final int LAST = 24;

    private static final int MOST_PIECES_LEFT = 260;

    /** Moves between two looks at the last bars. */
    private static final int PAUSE = 2_000;

    private static final int STEPS_A_MOVE = 2;

    /** So few bars are looked at whatever there is to hope, down to a thousandth: all ways to fill them are soon tried. */
    private static final int FEW_BARS = 5;

    private static final double LITTLE_HOPE = 7;
    private static final double SOME_HOPE = 2;

    /** How far uphill a move may go at warmth one, for each of as many draws. */
    private static final double[] CLIMB = new double[1024];

    static {
        for (int n = 0; n < CLIMB.length; n++) CLIMB[n] = -StrictMath.log((n + 0.5) / CLIMB.length);
    }

    private final Cutting cutting;
    private final Effort effort;
    private final long room;
    private final long[] length;
    private final int[] sizeOf;
    private final int[] enough = new int[LAST + 1];
    private final int[][] ways;
    private final int[][] with;
    private final int[] weight;
    private final int[] leftOver;

    /** The way a piece lies in, or below zero. */
    private final int[] lies;

    private final int[] free;
    private final int[] place;
    private int frees;
    private int barsLeft;
    private long seed;

    private Shuffle(Cutting cutting, long bars, long seed, Effort effort) {
        this.cutting = cutting;
        this.seed = seed;
        this.effort = effort;
        this.room = cutting.room[0];
        int pieces = cutting.pieces();
        this.length = new long[pieces];
        this.sizeOf = new int[pieces];
        int n = 0;
        for (int i = 0; i < cutting.sizes(); i++) {
            for (int each = 0; each < cutting.demand[i]; each++) {
                sizeOf[n] = i;
                length[n++] = cutting.size[i];
            }
        }
        this.ways = FewPieces.fill(length, room, PIECES_A_WAY, effort).toArray(new int[0][]);
        int[] count = new int[pieces];
        for (int[] way : ways) for (int piece : way) count[piece]++;
        this.with = new int[pieces][];
        for (int piece = 0; piece < pieces; piece++) with[piece] = new int[count[piece]];
        Arrays.fill(count, 0);
        for (int w = 0; w < ways.length; w++) for (int piece : ways[w]) with[piece][count[piece]++] = w;
        this.weight = new int[pieces];
        this.leftOver = new int[pieces];
        this.lies = new int[pieces];
        this.free = new int[pieces];
        this.place = new int[pieces];
        this.barsLeft = (int) bars;
        for (int k = 2; k <= LAST; k++) enough[k] = enoughFor(k);
    }

    static boolean suits(Cutting cutting) {
        return cutting.sizes() >= SIZES
                && cutting.pieces() <= PIECES_A_SIZE * cutting.sizes()
                && FillTable.suits(cutting);
    }

    /**
     * @param bars how many have to do
     * @param seed each begins another way
     * @param steps effort allowed for it
     * @return one pattern a bar; empty where none were found
     */
    static List<Column> of(Cutting cutting, long bars, long seed, Effort effort, long steps) {
        Shuffle shuffle = new Shuffle(cutting, bars, seed, effort);
        return shuffle.ways.length > MOST_WAYS ? List.of() : shuffle.turns((int) bars, effort.taken() + steps);
    }

    /** So many pieces have, by the number of ways to deal them out, some hope to fill so many bars to the unit. */
    private int enoughFor(int bars) {
        double deals = 0;
        for (int k = 2; k <= bars; k++) deals -= StrictMath.log(k);
        double each = StrictMath.log(bars);
        double hope = bars <= FEW_BARS ? LITTLE_HOPE : SOME_HOPE;
        double wanted = (bars - 1) * StrictMath.log((double) room) - hope;
        int pieces = bars;
        while (deals + pieces * each < wanted) pieces++;
        return pieces;
    }

    private List<Column> turns(int bars, long until) {
        long moves = MOVES_A_TURN;
        for (int turn = 0; !effort.spent() && effort.taken() < until; turn++) {
            begin(bars, turn % 2 == 0);
            List<Column> found = turn(moves, until);
            if (!found.isEmpty()) return found;
            remember();
            moves = (long) (moves * LONGER);
        }
        return List.of();
    }

    /** What found no place weighs more the next time. */
    private void remember() {
        for (int n = 0; n < frees; n++) leftOver[free[n]]++;
    }

    private void begin(int bars, boolean byLength) {
        barsLeft = bars;
        frees = 0;
        long mean = cutting.volume() / length.length;
        for (int piece = 0; piece < length.length; piece++) {
            lies[piece] = -1;
            place[piece] = frees;
            free[frees++] = piece;
            weight[piece] = byLength ? (int) Math.max(1, UNIT * length[piece] / mean) : UNIT;
            weight[piece] += leftOver[piece] * MORE;
        }
    }

    private List<Column> turn(long moves, long until) {
        long paused = 0;
        double warmth = WARM;
        double cooling = StrictMath.pow(COLD / WARM, 1.0 / COOLINGS);
        for (int level = 0; level < COOLINGS && !effort.spent() && effort.taken() < until; level++) {
            for (long n = moves / COOLINGS; n > 0; n--) {
                paused++;
                if (!move(warmth)) continue;
                if (barsLeft > LAST || (barsLeft > 1 && (paused < PAUSE || frees < enough[barsLeft]))) continue;
                if (frees > MOST_PIECES_LEFT) continue;
                paused = 0;
                List<int[]> last = last();
                if (!last.isEmpty()) return bars(last);
            }
            effort.add(moves / COOLINGS * STEPS_A_MOVE);
            warmth *= cooling;
        }
        return List.of();
    }

    /** Lays out a way with a piece that lies in none, in place of those in its way; false when that was too much for the worse. */
    private boolean move(double warmth) {
        if (frees == 0) return false;
        int[] some = with[free[picked(frees)]];
        if (some.length == 0) return false;
        int w = some[picked(some.length)];
        int worse = 0;
        int first = -1;
        int second = -1;
        for (int piece : ways[w]) {
            worse -= weight[piece];
            int other = lies[piece];
            if (other < 0 || other == first || other == second) continue;
            if (first < 0) first = other;
            else second = other;
            for (int each : ways[other]) worse += weight[each];
        }
        if (worse > 0 && worse > warmth * CLIMB[picked(CLIMB.length)]) return false;
        if (first >= 0) takeUp(first);
        if (second >= 0) takeUp(second);
        layOut(w);
        return true;
    }

    private void takeUp(int w) {
        for (int piece : ways[w]) {
            lies[piece] = -1;
            place[piece] = frees;
            free[frees++] = piece;
        }
        barsLeft++;
    }

    private void layOut(int w) {
        for (int piece : ways[w]) {
            lies[piece] = w;
            int gap = place[piece];
            int moved = free[--frees];
            free[gap] = moved;
            place[moved] = gap;
        }
        barsLeft--;
    }

    private int picked(int from) {
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        return (int) (((seed >>> 33) * from) >>> 31);
    }

    private List<int[]> last() {
        int[] left = Arrays.copyOf(free, frees);
        Arrays.sort(left);
        if (barsLeft == 1) return List.of(left);
        long[] lengths = new long[frees];
        for (int n = 0; n < frees; n++) lengths[n] = length[left[n]];
        List<int[]> bars = new ArrayList<>();
        for (int[] bar : LastBars.fill(lengths, barsLeft, room, effort))
            bars.add(Arrays.stream(bar).map(n -> left[n]).toArray());
        return bars;
    }

    private List<Column> bars(List<int[]> last) {
        List<Column> bars = new ArrayList<>();
        boolean[] done = new boolean[ways.length];
        for (int way : lies) {
            if (way < 0 || done[way]) continue;
            done[way] = true;
            bars.add(column(ways[way]));
        }
        for (int[] bar : last) bars.add(column(bar));
        return bars;
    }

    private Column column(int[] pieces) {
        int[] counts = new int[cutting.sizes()];
        for (int piece : pieces) counts[sizeOf[piece]]++;
        return Column.of(0, counts);
    }
}
