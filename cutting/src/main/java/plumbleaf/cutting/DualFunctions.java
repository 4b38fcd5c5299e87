package plumbleaf.cutting;

import java.util.Arrays;
import java.util.stream.LongStream;

/**
 * How many bars of one kind are needed at least, by counting lengths otherwise than they are: a function of the length that never counts what fits one bar for more
 * than a bar. Quick to try and in whole numbers; where many pieces are longer than half a bar or a third of it, such a count says at once what lengths alone do not.
 * Source: S. Martello and P. Toth, Discrete Applied Mathematics 28 (1990) 59-70; S. P. Fekete and J. Schepers, Mathematical Programming 91 (2001) 11-31; J. Carlier,
 * F. Clautiaux and A. Moukrim, Computers and Operations Research 34 (2007) 2223-2250; all from memory, each shown again by DualFunctionsTest.
 */
final class DualFunctions {
    /** Of the second family the first so many are tried. */
    private static final int MULTIPLES = 60;

    private final long[] size;
    private final int[] demand;
    private final long room;

    private DualFunctions(Cutting cutting) {
        this.size = cutting.size;
        this.demand = cutting.demand;
        this.room = cutting.room[0];
    }

    /** Bars that no plan does without; of a cutting of one kind of bar. */
    static long bars(Cutting cutting, Effort effort) {
        DualFunctions functions = new DualFunctions(cutting);
        long most = 0;
        for (long limit : functions.limits()) {
            most = Math.max(most, functions.bars(length -> functions.longAsWhole(length, limit), functions.room));
            most = Math.max(
                    most, functions.bars(length -> functions.inSteps(length, limit), 2 * (functions.room / limit)));
        }
        for (long k = 1; k <= MULTIPLES; k++) {
            long times = k;
            most = Math.max(
                    most,
                    functions.bars(
                            length -> functions.inMultiples(length, times), Math.multiplyExact(k, functions.room)));
        }
        effort.add((long) cutting.sizes() * cutting.sizes() / 8 + 1);
        return most;
    }

    private interface Counted {
        long as(long length);
    }

    private long bars(Counted counted, long whole) {
        long sum = 0;
        for (int i = 0; i < size.length; i++)
            sum = Math.addExact(sum, Math.multiplyExact(counted.as(size[i]), (long) demand[i]));
        return -Math.floorDiv(-sum, whole);
    }

    /** Lengths up to half a bar at which a function changes: those of pieces, and of what they leave of a bar. */
    private long[] limits() {
        return LongStream.concat(Arrays.stream(size), Arrays.stream(size).map(each -> room - each + 1))
                .filter(each -> each > 0 && 2 * each <= room)
                .distinct()
                .sorted()
                .toArray();
    }

    /** What leaves less than the limit counts as a bar, and what is shorter than it not at all. */
    private long longAsWhole(long length, long limit) {
        if (length > room - limit) return room;
        return length < limit ? 0 : length;
    }

    /** Short pieces in steps of the limit, rounded down; long ones take what short ones cannot have beside them. Of {@code 2 floor(room / limit)}. */
    private long inSteps(long length, long limit) {
        long steps = room / limit;
        if (2 * length > room) return 2 * (steps - (room - length) / limit);
        return 2 * length == room ? steps : 2 * (length / limit);
    }

    /** So many and one times the length, in whole bars rounded down, unless it comes out whole. Of {@code times} bars. */
    private long inMultiples(long length, long times) {
        long more = Math.multiplyExact(times + 1, length);
        return more % room == 0 ? times * length : more / room * room;
    }
}
