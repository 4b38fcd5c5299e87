package plumbleaf.cutting;

import java.util.Arrays;
import java.util.List;

/** One bar cut one way: which kind of bar, and how many of each size. */
record Pattern(int kind, List<Integer> counts) {
    Pattern {
        counts = List.copyOf(counts);
    }

    static Pattern of(int kind, int[] counts) {
        return new Pattern(kind, Arrays.stream(counts).boxed().toList());
    }

    boolean within(int[] demand, int[] supply) {
        if (supply[kind] <= 0) return false;
        for (int i = 0; i < demand.length; i++) {
            if (counts.get(i) > demand[i]) return false;
        }
        return true;
    }

    /** This pattern without what is no longer wanted. */
    Pattern trimmedTo(int[] demand) {
        int[] least = new int[demand.length];
        for (int i = 0; i < demand.length; i++) least[i] = Math.min(demand[i], counts.get(i));
        return of(kind, least);
    }

    boolean isEmpty() {
        return counts.stream().allMatch(count -> count == 0);
    }

    void takeFrom(int[] demand) {
        for (int i = 0; i < demand.length; i++) demand[i] -= counts.get(i);
    }
}
