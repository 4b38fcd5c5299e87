package plumbleaf.browser.packed;

/** The kinds of the values that wait to be used, block within block. What comes after a jump is never reached and may be told wrongly: it is a guess, and the same on both sides. */
final class Waiting {
    final int[] nothing = {};

    private final int[] kinds = new int[100_000];
    private final int[] heights = new int[10_000];
    private final int[][] yields = new int[10_000][];
    private int count = 0;
    private int depth = 0;

    void clear() {
        count = 0;
        depth = 0;
        heights[0] = 0;
        yields[0] = nothing;
    }

    void put(int kind) {
        kinds[count++] = kind;
    }

    void putAll(int[] all) {
        for (int kind : all) put(kind);
    }

    /** The last one, no longer waiting; 0 where none waits in this block. */
    int take() {
        return count > heights[depth] ? kinds[--count] : 0;
    }

    void take(int many) {
        count = Math.max(heights[depth], count - many);
    }

    /** The last but so many; 0 where fewer wait. */
    int last(int but) {
        return count - 1 - but >= 0 ? kinds[count - 1 - but] : 0;
    }

    /** What it refers to; below zero where it is no reference. */
    int referred(int but) {
        int kind = last(but);
        return kind < 0 ? -1 : kind >> 1;
    }

    void open(int taken, int[] yielded) {
        depth++;
        heights[depth] = Math.max(heights[depth - 1], count - taken);
        yields[depth] = yielded;
    }

    /** Something aside, which is over when the depth is less than what this gives. */
    int aside() {
        depth++;
        heights[depth] = count;
        yields[depth] = nothing;
        return depth;
    }

    void otherwise() {
        count = heights[depth];
    }

    void close() {
        count = heights[depth];
        int[] yielded = yields[depth];
        depth--;
        putAll(yielded);
    }

    int depth() {
        return depth;
    }

    int count() {
        return count;
    }

    void back(int toCount, int toDepth) {
        count = toCount;
        depth = toDepth;
    }
}
