package plumbleaf.cutting;

/**
 * The most worth for every room up to a bar's and for every tail of the sizes: bounded knapsack by table, exact, in whole numbers. Quick where a bar has some
 * thousand units of length; where it has more, {@link Knapsack} keeps lists. Method: R. Bellman, Dynamic Programming (1957). Check: FillTableTest.
 */
final class FillTable {
    /** A table larger than this many cells is not kept. */
    private static final long MOST_CELLS = 12_000_000;

    private static final int MOST_ROOM = 30_000;

    private final int[] size;
    private final int room;
    private final int[][] own;
    private final int[][] tail;
    private final int[] worth;
    private final int[] most;
    private final int[] spare;

    private FillTable(int[] size, int room) {
        this.size = size;
        this.room = room;
        this.own = new int[size.length][];
        this.tail = new int[size.length + 1][];
        this.tail[size.length] = new int[room + 1];
        this.worth = new int[size.length];
        this.most = new int[size.length];
        this.spare = new int[room + 1];
    }

    static boolean suits(Cutting cutting) {
        long room = widest(cutting);
        return room <= MOST_ROOM && (room + 1) * (cutting.sizes() + 1) <= MOST_CELLS;
    }

    /** As many steps to the longest bar as a table of so many sizes can have. */
    static int finest(int sizes) {
        return (int) Math.min(MOST_ROOM, MOST_CELLS / (sizes + 1)) - 1;
    }

    static FillTable of(Cutting cutting) {
        int[] size = new int[cutting.sizes()];
        for (int i = 0; i < size.length; i++) size[i] = (int) Math.min(Integer.MAX_VALUE, cutting.size[i]);
        return new FillTable(size, (int) widest(cutting));
    }

    private static long widest(Cutting cutting) {
        long widest = 0;
        for (long each : cutting.room) widest = Math.max(widest, each);
        return widest;
    }

    /** Fills the table for these worths; no sum of worths that fit a bar may pass 2^31. */
    void fill(long[] newWorth, int[] newMost, Effort effort) {
        long cells = 0;
        for (int i = size.length - 1; i >= 0; i--) {
            worth[i] = (int) newWorth[i];
            most[i] = size[i] > room ? 0 : Math.min(newMost[i], room / size[i]);
            if (worth[i] <= 0 || most[i] <= 0) {
                tail[i] = tail[i + 1];
                continue;
            }
            int[] mine = own[i];
            if (mine == null) {
                mine = new int[room + 1];
                own[i] = mine;
            }
            int[] from = tail[i + 1];
            int left = most[i];
            for (int step = 1; left > 0; step *= 2) {
                int times = Math.min(step, left);
                left -= times;
                boolean last = left == 0;
                int[] to = last ? mine : from == spare ? mine : spare;
                if (last && from == mine) {
                    System.arraycopy(mine, 0, spare, 0, room + 1);
                    from = spare;
                }
                raise(from, to, Math.min((long) size[i] * times, room + 1L), worth[i] * times);
                from = to;
                cells += room;
            }
            tail[i] = mine;
        }
        effort.add(cells / 64 + 1);
    }

    private void raise(int[] from, int[] to, long bySize, int byWorth) {
        int shift = (int) bySize;
        System.arraycopy(from, 0, to, 0, Math.min(shift, room + 1));
        for (int c = shift; c <= room; c++) to[c] = Math.max(from[c], from[c - shift] + byWorth);
    }

    /** The most worth of sizes from this one on, in this much room. */
    int best(int from, long inRoom) {
        return tail[from][(int) Math.min(inRoom, room)];
    }

    int worth(int i) {
        return worth[i];
    }

    int most(int i) {
        return most[i];
    }

    /** How many of each size from this one on make the most worth; added to {@code counts}. */
    void trace(int from, long inRoom, int[] counts) {
        int left = (int) Math.min(inRoom, room);
        for (int i = from; i < size.length; i++) {
            if (tail[i] == tail[i + 1]) continue;
            int goal = tail[i][left];
            int times = 0;
            while (goal != tail[i + 1][left - times * size[i]] + times * worth[i]) times++;
            counts[i] += times;
            left -= times * size[i];
        }
    }
}
