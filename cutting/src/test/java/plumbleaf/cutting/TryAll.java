package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;

/** The least cost by putting every piece into every bar, for tasks of a few pieces. Shares no line with the planner. */
final class TryAll {
    private final CutTask task;
    private final List<Piece> pieces;
    private final List<StockBar> openKind = new ArrayList<>();
    private final List<Long> openAt = new ArrayList<>();
    private long best = Long.MAX_VALUE;

    private TryAll(CutTask task) {
        this.task = task;
        this.pieces = new ArrayList<>(task.pieces());
        pieces.sort(Comparator.comparingLong(Piece::longPointNm).reversed());
    }

    /** -1 when the bars do not hold the pieces. */
    static long leastCents(CutTask task) {
        TryAll tryAll = new TryAll(task);
        tryAll.place(0, 0);
        return tryAll.best == Long.MAX_VALUE ? -1 : tryAll.best;
    }

    private void place(int next, long cents) {
        if (cents >= best) return;
        if (next == pieces.size()) {
            best = cents;
            return;
        }
        long length = pieces.get(next).longPointNm();
        for (int b = 0; b < openKind.size(); b++) {
            long at = openAt.get(b);
            long end = at + task.saw().kerfNm() + length;
            if (end > openKind.get(b).lengthNm()) continue;
            openAt.set(b, end);
            place(next + 1, cents);
            openAt.set(b, at);
        }
        for (StockBar kind : task.bars()) {
            long used = openKind.stream()
                    .filter(open -> open.id().equals(kind.id()))
                    .count();
            long most = kind.supply().match(asMany -> Long.MAX_VALUE, atMost -> (long) atMost.bars());
            long trim = task.saw().endTrimNm();
            long start = kind.fromOffcut() || trim == 0 ? 0 : trim + task.saw().kerfNm();
            if (used >= most || start + length > kind.lengthNm()) continue;
            openKind.add(kind);
            openAt.add(start + length);
            place(next + 1, cents + kind.price().cents());
            openKind.remove(openKind.size() - 1);
            openAt.remove(openAt.size() - 1);
        }
    }
}
