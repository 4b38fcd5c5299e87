package plumbleaf.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;

/**
 * Patterns become bars with named pieces: bars with the longest pieces first, pieces long to short. Of pieces alike, those of one leaf or bay are kept together: a
 * bar takes on with the group it holds already, then with that of the bar before; or all pieces go out in the order of their groups, whichever leaves fewer groups
 * split over bars. Pieces that lap lie in runs, each run in the place of its longest piece.
 */
final class SawOrder {
    private final CutTask task;
    private final Sizes sizes;
    private final List<Shape> shapes;
    /** Of each shape the pieces that have no bar yet, by what they are built into. */
    private final Map<Shape, SortedMap<String, Deque<Piece>>> waiting = new LinkedHashMap<>();

    private final boolean together;
    private String before = "";

    private SawOrder(CutTask task, Sizes sizes, boolean together) {
        this.task = task;
        this.sizes = sizes;
        this.together = together;
        this.shapes = sizes.shapes();
        List<Piece> pieces = new ArrayList<>(task.pieces());
        pieces.sort(Comparator.comparing(Piece::group).thenComparing(Piece::id));
        for (Piece piece : pieces)
            waiting.computeIfAbsent(sizes.shape(piece), shape -> new TreeMap<>())
                    .computeIfAbsent(piece.group(), group -> new ArrayDeque<>())
                    .add(piece);
    }

    static List<CutBar> bars(CutTask task, Sizes sizes, List<Column> patterns) {
        List<Column> ordered = new ArrayList<>(patterns);
        ordered.sort(SawOrder::longestFirst);
        List<CutBar> inOrder = new SawOrder(task, sizes, false).bars(ordered);
        List<CutBar> together = new SawOrder(task, sizes, true).bars(ordered);
        return splits(together) < splits(inOrder) ? together : inOrder;
    }

    private List<CutBar> bars(List<Column> ordered) {
        List<CutBar> bars = new ArrayList<>();
        for (Column pattern : ordered) bars.add(bar(pattern));
        return bars;
    }

    /** On how many bars one has to look for the pieces of a group, all groups together. */
    static int splits(List<CutBar> bars) {
        int splits = 0;
        for (CutBar bar : bars)
            splits += (int) bar.cuts().stream().map(Cut::group).distinct().count();
        return splits;
    }

    /** The next piece of this shape for a bar that holds these already. */
    private Piece next(Shape shape, List<Cut> cuts) {
        SortedMap<String, Deque<Piece>> alike = waiting.getOrDefault(shape, new TreeMap<>());
        String group = alike.firstKey();
        if (together) {
            if (alike.containsKey(before)) group = before;
            for (Cut cut : cuts) {
                if (!alike.containsKey(cut.group())) continue;
                group = cut.group();
                break;
            }
        }
        Deque<Piece> pieces = alike.getOrDefault(group, new ArrayDeque<>());
        Piece piece = pieces.remove();
        if (pieces.isEmpty()) alike.remove(group);
        return piece;
    }

    private static int longestFirst(Column one, Column other) {
        for (int k = 0; k < Math.min(one.size.length, other.size.length); k++) {
            if (one.size[k] != other.size[k]) return Integer.compare(one.size[k], other.size[k]);
            if (one.times[k] != other.times[k]) return Integer.compare(other.times[k], one.times[k]);
        }
        if (one.size.length != other.size.length) return Integer.compare(other.size.length, one.size.length);
        return Integer.compare(one.kind, other.kind);
    }

    /** The shapes of a pattern as they come to the saw: long to short, but what laps with an earlier one right behind it. */
    private List<Shape> inOrder(Column pattern) {
        List<Shape> all = new ArrayList<>();
        for (int k = 0; k < pattern.size.length; k++) {
            for (int n = 0; n < pattern.times[k]; n++) all.add(shapes.get(pattern.size[k]));
        }
        all.sort(Comparator.comparingLong(Shape::lengthNm).reversed());
        List<Shape> ordered = new ArrayList<>();
        while (!all.isEmpty()) {
            Shape first = all.get(0);
            List<Shape> run = sizes.laps(first)
                    ? all.stream()
                            .filter(each -> each.slant().equals(first.slant()))
                            .toList()
                    : List.of(first);
            ordered.addAll(run);
            for (Shape each : run) all.remove(each);
        }
        return ordered;
    }

    private CutBar bar(Column pattern) {
        StockBar stock = task.bars().get(pattern.kind);
        SawRules saw = task.saw();
        List<Cut> cuts = new ArrayList<>();
        long cutNm = 0;
        int inRun = 0;
        List<Shape> ordered = inOrder(pattern);
        for (int n = 0; n < ordered.size(); n++) {
            Shape shape = ordered.get(n);
            boolean goesOn =
                    n > 0 && sizes.laps(shape) && ordered.get(n - 1).slant().equals(shape.slant());
            inRun = goesOn ? inRun + 1 : 0;
            Piece piece = next(shape, cuts);
            Shape start = ordered.get(n - inRun);
            long lap = goesOn ? start.lapAfter(inRun - 1, saw.kerfNm()) : 0;
            boolean flip = goesOn && shape.isTurned(inRun, start);
            cuts.add(new Cut(piece.id(), piece.group(), piece.longPointNm(), flip, lap));
            cutNm += piece.longPointNm() - lap;
        }
        before = cuts.isEmpty() ? before : cuts.get(cuts.size() - 1).group();
        long restNm = saw.restNm(stock, cutNm, cuts.size());
        if (restNm < 0) throw new IllegalStateException("Bar " + stock.id() + " is overfull by " + -restNm + " nm");
        long trimNm = stock.fromOffcut() ? 0 : saw.endTrimNm();
        boolean usable = restNm > 0 && restNm >= saw.leastUsableOffcutNm();
        return new CutBar(
                stock.id(), stock.lengthNm(), stock.price(), stock.fromOffcut(), trimNm, cuts, restNm, usable);
    }
}
