package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The ways in which some few single pieces just fill a bar of the one kind there is. Pieces are numbered long to short, so those of a size lie in a row. */
final class FewPieces {
    private final long[] length;
    private final int most;
    private final int[] firstOf;
    private final int[] way;
    private final List<int[]> ways = new ArrayList<>();
    private long looks;

    private FewPieces(long[] length, long room, int most) {
        this.length = length;
        this.most = most;
        this.way = new int[most];
        this.firstOf = new int[(int) room + 1];
        Arrays.fill(firstOf, length.length);
        for (int piece = length.length - 1; piece >= 0; piece--) {
            if (length[piece] <= room) firstOf[(int) length[piece]] = piece;
        }
    }

    /**
     * @param length of each piece, long to short
     * @param room of a bar, some thousand units
     * @param most pieces to a way, two or more
     * @return each way as the numbers of its pieces, long to short
     */
    static List<int[]> fill(long[] length, long room, int most, Effort effort) {
        FewPieces few = new FewPieces(length, room, most);
        few.next(0, 0, room);
        effort.add(few.looks / 8 + 1);
        return few.ways;
    }

    private void next(int held, int from, long left) {
        if (held > 0 && left <= length[way[held - 1]]) last(held, from, left);
        if (held + 2 > most) return;
        for (int piece = from; piece < length.length; piece++) {
            long rest = left - length[piece];
            if (rest <= 0) continue;
            // the pieces still to come are no longer than this one
            if (rest > (most - held - 1) * length[piece]) break;
            looks++;
            way[held] = piece;
            next(held + 1, piece + 1, rest);
        }
    }

    private void last(int held, int from, long left) {
        for (int piece = Math.max(from, firstOf[(int) left]); piece < length.length && length[piece] == left; piece++) {
            int[] full = Arrays.copyOf(way, held + 1);
            full[held] = piece;
            ways.add(full);
        }
    }
}
