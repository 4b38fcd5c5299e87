package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The most worth that fits in a room: bounded knapsack, exact, in whole numbers. Method: lists of undominated (size, worth) pairs, items in order of worth per
 * size, pairs that cannot beat the best known left out (G. L. Nemhauser and Z. Ullmann, Management Science 15, 1969, with bounds). Check: KnapsackTest.
 */
final class Knapsack {
    /** Room for this many states to begin with: most fills of a fence need few. */
    private static final int FIRST_STATES = 64;

    /** With more states than this, some forty megabytes, the sizes are too fine for lists: the best so far stands, with a limit beside it. */
    private static final int MOST_STATES = 1_000_000;

    private final long[] size;
    private final long[] worth;
    private final int[] most;
    private final long room;
    private final Effort effort;

    private long[] stateSize = new long[FIRST_STATES];
    private long[] stateWorth = new long[FIRST_STATES];
    private int[] stateFrom = new int[FIRST_STATES];
    private int[] stateItem = new int[FIRST_STATES];
    private int[] stateTimes = new int[FIRST_STATES];
    private int states;
    private int[] live = {0};
    private int liveCount = 1;
    private long bestWorth;
    private int best;
    private long atMost;

    private Knapsack(long[] size, long[] worth, int[] most, long room, Effort effort) {
        this.size = size;
        this.worth = worth;
        this.most = most;
        this.room = room;
        this.effort = effort;
    }

    /**
     * How many of each, and what they are worth together.
     *
     * @param atMost what no fill is worth more than; {@code worth} itself unless the sizes were too fine
     */
    record Fill(List<Integer> counts, long worth, long atMost) {
        Fill {
            counts = List.copyOf(counts);
        }
    }

    static Fill best(long[] size, long[] worth, int[] most, long room, Effort effort) {
        return new Knapsack(size, worth, most, room, effort).solve();
    }

    /** The best and, of the states on the way to it, the most worth that are worth more than {@code least}: patterns for the program to choose among. */
    static List<Fill> several(long[] size, long[] worth, int[] most, long room, long least, int wanted, Effort effort) {
        Knapsack knapsack = new Knapsack(size, worth, most, room, effort);
        List<Fill> fills = new ArrayList<>();
        fills.add(knapsack.solve());
        int[] also = IntStream.range(0, knapsack.states)
                .filter(at -> at != knapsack.best && knapsack.stateWorth[at] > least)
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(at -> -knapsack.stateWorth[at])
                        .thenComparing(at -> at))
                .limit(wanted)
                .mapToInt(at -> at)
                .toArray();
        for (int at : also) fills.add(knapsack.fillAt(at));
        return fills;
    }

    private Fill fillAt(int state) {
        int[] counts = new int[size.length];
        for (int at = state; at >= 0 && stateItem[at] >= 0; at = stateFrom[at]) counts[stateItem[at]] += stateTimes[at];
        return new Fill(Arrays.stream(counts).boxed().toList(), stateWorth[state], Math.max(atMost, stateWorth[state]));
    }

    private Fill solve() {
        int[] order = IntStream.range(0, size.length)
                .filter(i -> worth[i] > 0 && most[i] > 0 && size[i] <= room)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> -(double) worth[i] / size[i])
                        .thenComparing(i -> i))
                .mapToInt(i -> i)
                .toArray();
        push(0, 0, -1, -1, 0);
        greedy(order);
        for (int t = 0; t < order.length; t++) {
            int item = order[t];
            double nextDensity = t + 1 < order.length ? (double) worth[order[t + 1]] / size[order[t + 1]] : 0;
            double density = (double) worth[item] / size[item];
            int left = (int) Math.min(most[item], room / size[item]);
            for (int times = 1; left > 0; times *= 2) {
                int now = Math.min(times, left);
                left -= now;
                if (states + liveCount > MOST_STATES) {
                    tooFine(density);
                    return fillAt(best);
                }
                merge(item, now, left > 0 ? density : nextDensity);
            }
        }
        return fillAt(best);
    }

    /** What the states left could still come to, at the worth per size of the item whose turn it is. */
    private void tooFine(double density) {
        effort.foundTooFine();
        atMost = bestWorth;
        for (int n = 0; n < liveCount; n++) {
            int at = live[n];
            atMost = Math.max(atMost, stateWorth[at] + (long) Math.ceil(density * (room - stateSize[at])) + 1);
        }
    }

    /** A first fill, so that hopeless pairs fall out from the start. */
    private void greedy(int[] order) {
        int at = 0;
        for (int item : order) {
            int times = (int) Math.min(most[item], (room - stateSize[at]) / size[item]);
            if (times > 0)
                at = push(stateSize[at] + times * size[item], stateWorth[at] + times * worth[item], at, item, times);
        }
        best = at;
        bestWorth = stateWorth[at];
    }

    /** Every live pair with and without so many of an item, undominated ones only, by rising size. */
    private void merge(int item, int times, double density) {
        long addSize = size[item] * times;
        long addWorth = worth[item] * times;
        int[] next = new int[liveCount * 2];
        int kept = 0;
        int plain = 0;
        int more = 0;
        long last = -1;
        while (plain < liveCount || more < liveCount) {
            boolean takePlain = more >= liveCount
                    || (plain < liveCount && stateSize[live[plain]] <= stateSize[live[more]] + addSize);
            long newSize;
            long newWorth;
            int from;
            if (takePlain) {
                from = live[plain++];
                newSize = stateSize[from];
                newWorth = stateWorth[from];
            } else {
                from = live[more++];
                newSize = stateSize[from] + addSize;
                newWorth = stateWorth[from] + addWorth;
                if (newSize > room) break;
            }
            if (newWorth <= last) continue;
            boolean beats = newWorth > bestWorth;
            if (!beats && newWorth + density * (room - newSize) < bestWorth + 0.999) continue;
            last = newWorth;
            int at = takePlain ? from : push(newSize, newWorth, from, item, times);
            if (beats) {
                bestWorth = newWorth;
                best = at;
            }
            next[kept++] = at;
        }
        while (plain < liveCount) {
            int from = live[plain++];
            if (stateWorth[from] > last && stateWorth[from] + density * (room - stateSize[from]) >= bestWorth + 0.999) {
                last = stateWorth[from];
                next[kept++] = from;
            }
        }
        effort.add(kept / 8 + 1);
        live = next;
        liveCount = kept;
    }

    private int push(long newSize, long newWorth, int from, int item, int times) {
        if (states == stateSize.length) {
            int length = states * 2;
            stateSize = Arrays.copyOf(stateSize, length);
            stateWorth = Arrays.copyOf(stateWorth, length);
            stateFrom = Arrays.copyOf(stateFrom, length);
            stateItem = Arrays.copyOf(stateItem, length);
            stateTimes = Arrays.copyOf(stateTimes, length);
        }
        stateSize[states] = newSize;
        stateWorth[states] = newWorth;
        stateFrom[states] = from;
        stateItem[states] = item;
        stateTimes[states] = times;
        return states++;
    }
}
