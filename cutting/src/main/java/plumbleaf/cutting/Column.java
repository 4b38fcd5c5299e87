package plumbleaf.cutting;

import java.util.Arrays;
import java.util.List;

/** A {@link Pattern} in the form the search works on: only the sizes that are in it, longest first. */
final class Column {
    final int kind;
    final int[] size;
    final int[] times;

    Column(int kind, int[] size, int[] times) {
        this.kind = kind;
        this.size = size;
        this.times = times;
    }

    static Column of(int kind, int[] counts) {
        int n = 0;
        for (int each : counts) if (each > 0) n++;
        int[] size = new int[n];
        int[] times = new int[n];
        n = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] == 0) continue;
            size[n] = i;
            times[n++] = counts[i];
        }
        return new Column(kind, size, times);
    }

    static Column of(Pattern pattern) {
        List<Integer> counts = pattern.counts();
        int[] each = new int[counts.size()];
        for (int i = 0; i < each.length; i++) each[i] = counts.get(i);
        return of(pattern.kind(), each);
    }

    Pattern pattern(int sizes) {
        int[] counts = new int[sizes];
        for (int k = 0; k < size.length; k++) counts[size[k]] = times[k];
        return Pattern.of(kind, counts);
    }

    int count(int i) {
        int k = Arrays.binarySearch(size, i);
        return k < 0 ? 0 : times[k];
    }

    /** Cut alike from another kind of bar. */
    Column ofKind(int other) {
        return other == kind ? this : new Column(other, size, times);
    }

    /** So many of this and so many of the other, on a bar of this kind; sizes that come to nothing are gone. */
    Column plus(int mine, Column other, int others) {
        int[] sizes = new int[size.length + other.size.length];
        int[] counts = new int[sizes.length];
        int n = 0;
        int a = 0;
        int b = 0;
        while (a < size.length || b < other.size.length) {
            boolean takeMine = b == other.size.length || (a < size.length && size[a] <= other.size[b]);
            boolean takeOther = a == size.length || (b < other.size.length && other.size[b] <= size[a]);
            sizes[n] = takeMine ? size[a] : other.size[b];
            counts[n] = (takeMine ? mine * times[a] : 0) + (takeOther ? others * other.times[b] : 0);
            if (takeMine) a++;
            if (takeOther) b++;
            if (counts[n] != 0) n++;
        }
        return new Column(kind, Arrays.copyOf(sizes, n), Arrays.copyOf(counts, n));
    }

    Column dividedBy(int bars) {
        return new Column(
                kind, size, Arrays.stream(times).map(each -> each / bars).toArray());
    }

    /** Whether the other holds all that this one does. */
    boolean isWithin(Column other) {
        return firstBeyond(other) < 0;
    }

    /** The first size of which this one holds more than the other; below zero where there is none. */
    int firstBeyond(Column other) {
        int b = 0;
        for (int a = 0; a < size.length; a++) {
            while (b < other.size.length && other.size[b] < size[a]) b++;
            if (b == other.size.length || other.size[b] != size[a] || other.times[b] < times[a]) return size[a];
        }
        return -1;
    }

    /** Room taken. */
    long used(long[] of) {
        return worth(of);
    }

    boolean isEmpty() {
        return size.length == 0;
    }

    boolean within(int[] demand, int[] supply) {
        if (supply[kind] <= 0) return false;
        for (int k = 0; k < size.length; k++) {
            if (times[k] > demand[size[k]]) return false;
        }
        return true;
    }

    long worth(long[] each) {
        long sum = 0;
        for (int k = 0; k < size.length; k++) sum += times[k] * each[size[k]];
        return sum;
    }

    /** Without what is no longer wanted. */
    Column trimmedTo(int[] demand) {
        int[] counts = new int[demand.length];
        for (int k = 0; k < size.length; k++) counts[size[k]] = Math.min(times[k], Math.max(0, demand[size[k]]));
        return of(kind, counts);
    }

    /** How often it can be taken from these. */
    int timesIn(int[] demand) {
        int often = Integer.MAX_VALUE;
        for (int k = 0; k < size.length; k++) often = Math.min(often, demand[size[k]] / times[k]);
        return often;
    }

    void takeFrom(int[] demand) {
        for (int k = 0; k < size.length; k++) demand[size[k]] -= times[k];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Column column
                && column.kind == kind
                && Arrays.equals(column.size, size)
                && Arrays.equals(column.times, times);
    }

    @Override
    public int hashCode() {
        return (kind * 31 + Arrays.hashCode(size)) * 31 + Arrays.hashCode(times);
    }
}
