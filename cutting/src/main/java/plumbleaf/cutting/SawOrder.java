package plumbleaf.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;

/** Patterns become bars with named pieces: bars with the longest pieces first, pieces long to short, those of one group together as far as lengths allow. */
final class SawOrder {
    private SawOrder() {}

    static List<CutBar> bars(CutTask task, List<Long> lengths, List<Pattern> patterns) {
        Map<Long, Deque<Piece>> waiting = new TreeMap<>();
        List<Piece> pieces = new ArrayList<>(task.pieces());
        pieces.sort(Comparator.comparing(Piece::group).thenComparing(Piece::id));
        for (Piece piece : pieces)
            waiting.computeIfAbsent(piece.longPointNm(), length -> new ArrayDeque<>())
                    .add(piece);
        List<Pattern> ordered = new ArrayList<>(patterns);
        ordered.sort(SawOrder::longestFirst);
        List<CutBar> bars = new ArrayList<>();
        for (Pattern pattern : ordered) bars.add(bar(task, lengths, pattern, waiting));
        return bars;
    }

    private static int longestFirst(Pattern one, Pattern other) {
        for (int i = 0; i < one.counts().size(); i++) {
            int more = Integer.compare(other.counts().get(i), one.counts().get(i));
            if (more != 0) return more;
        }
        return Integer.compare(one.kind(), other.kind());
    }

    private static CutBar bar(CutTask task, List<Long> lengths, Pattern pattern, Map<Long, Deque<Piece>> waiting) {
        StockBar stock = task.bars().get(pattern.kind());
        SawRules saw = task.saw();
        List<Cut> cuts = new ArrayList<>();
        long cutNm = 0;
        for (int i = 0; i < lengths.size(); i++) {
            Deque<Piece> ofLength = waiting.getOrDefault(lengths.get(i), new ArrayDeque<>());
            for (int n = 0; n < pattern.counts().get(i); n++) {
                Piece piece = ofLength.remove();
                cuts.add(new Cut(piece.id(), piece.group(), piece.longPointNm(), false));
                cutNm += piece.longPointNm();
            }
        }
        long restNm = saw.restNm(stock, cutNm, cuts.size());
        if (restNm < 0) throw new IllegalStateException("Bar " + stock.id() + " is overfull by " + -restNm + " nm");
        long trimNm = stock.fromOffcut() ? 0 : saw.endTrimNm();
        boolean usable = restNm > 0 && restNm >= saw.leastUsableOffcutNm();
        return new CutBar(
                stock.id(), stock.lengthNm(), stock.price(), stock.fromOffcut(), trimNm, cuts, restNm, usable);
    }
}
