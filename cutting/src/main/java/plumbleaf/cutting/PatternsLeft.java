package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The patterns left while bars are cut one after another until no piece is over, and what follows from each bar at once: patterns with a piece too many go, and a size
 * with one pattern left takes it. All of it can be taken back. Those left of a size stand first in its list, so that nothing else is looked at.
 * Source: P. Briggs and L. Torczon, An efficient representation for sparse sets (1993); from memory. Check: AheadTest.
 */
final class PatternsLeft {
    /** Pieces still to be cut of each size. */
    final int[] demand;

    /** How many patterns are left of each size; they are the first so many of {@link #with}. */
    final int[] left;

    final int[][] with;

    /** The sizes in each pattern. */
    final int[][] sizes;

    private final List<Column> patterns;
    private final Effort effort;
    private final int[][] times;
    private final int[][] place;
    private final int[] trail;
    private final int[] single;
    private int length;
    private int singles;
    private int stuck;

    PatternsLeft(Cutting cutting, List<Column> patterns, Effort effort) {
        this.patterns = List.copyOf(patterns);
        this.effort = effort;
        this.demand = cutting.demand.clone();
        this.left = new int[demand.length];
        this.with = new int[demand.length][];
        int number = patterns.size();
        this.sizes = new int[number][];
        this.times = new int[number][];
        this.place = new int[number][];
        this.trail = new int[number + cutting.pieces()];
        this.single = new int[2 * demand.length];
        for (int p = 0; p < number; p++) {
            sizes[p] = patterns.get(p).size;
            times[p] = patterns.get(p).times;
            place[p] = new int[sizes[p].length];
            for (int size : sizes[p]) left[size]++;
        }
        for (int size = 0; size < with.length; size++) with[size] = new int[left[size]];
        Arrays.fill(left, 0);
        for (int p = 0; p < number; p++) {
            for (int k = 0; k < sizes[p].length; k++) {
                int size = sizes[p][k];
                place[p][k] = left[size];
                with[size][left[size]++] = p;
            }
        }
    }

    boolean isLeft(int p) {
        int size = sizes[p][0];
        return place[p][0] < left[size];
    }

    /** The size that was left without a pattern last. */
    int stuck() {
        return stuck;
    }

    /** How far it has gone, for {@link #backTo}: bars cut and patterns gone. */
    int mark() {
        return length;
    }

    void backTo(int mark) {
        while (length > mark) {
            int p = trail[--length];
            if (p >= 0) {
                for (int size : sizes[p]) left[size]++;
            } else {
                for (int k = 0; k < sizes[~p].length; k++) demand[sizes[~p][k]] += times[~p][k];
            }
        }
    }

    List<Column> bars() {
        List<Column> bars = new ArrayList<>();
        for (int n = 0; n < length; n++) if (trail[n] < 0) bars.add(patterns.get(~trail[n]));
        return bars;
    }

    /** A bar cut so, and what follows; false when a size is left without a pattern. */
    boolean cut(int p) {
        return take(p) && follow();
    }

    /** No more bars cut so, and what follows; false when a size is left without a pattern. */
    boolean without(int p) {
        return rule(p) && follow();
    }

    private boolean follow() {
        while (singles > 0) {
            int size = single[--singles];
            if (demand[size] == 0 || left[size] != 1) continue;
            if (!take(with[size][0])) return false;
            if (demand[size] > 0) single[singles++] = size;
        }
        return true;
    }

    private boolean take(int p) {
        trail[length++] = ~p;
        int[] held = sizes[p];
        for (int k = 0; k < held.length; k++) demand[held[k]] -= times[p][k];
        boolean going = true;
        for (int size : held) {
            int still = demand[size];
            for (int at = left[size] - 1; at >= 0; at--) {
                int other = with[size][at];
                if (still > 0 && timesOf(other, size) <= still) continue;
                going &= rule(other);
            }
        }
        effort.add(1);
        if (!going) singles = 0;
        return going;
    }

    private int timesOf(int p, int size) {
        for (int k = 0; ; k++) if (sizes[p][k] == size) return times[p][k];
    }

    private boolean rule(int p) {
        trail[length++] = p;
        boolean going = true;
        int[] held = sizes[p];
        for (int k = 0; k < held.length; k++) {
            int size = held[k];
            int last = --left[size];
            int[] all = with[size];
            int gap = place[p][k];
            int moved = all[last];
            all[gap] = moved;
            all[last] = p;
            place[p][k] = last;
            if (moved != p) place[moved][at(moved, size)] = gap;
            if (last > 1 || demand[size] == 0) continue;
            if (last == 1) {
                single[singles++] = size;
            } else {
                stuck = size;
                going = false;
            }
        }
        effort.add(1);
        if (!going) singles = 0;
        return going;
    }

    private int at(int p, int size) {
        int k = 0;
        while (sizes[p][k] != size) k++;
        return k;
    }
}
