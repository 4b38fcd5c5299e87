package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;

/** The different shapes of a task, widest first, and the whole-number {@link Cutting} they make under a rule of lapping. */
final class Sizes {
    /** How slanted ends are counted. */
    enum Lapping {
        /** Every piece by its long point: what the plan of a plain saw is made with. */
        NONE,
        /** No plan that laps wastes less than this: for a bound. */
        AT_MOST,
        /** Every pattern fits, its runs lapped: for a plan. */
        SURE
    }

    /** Runs of so many slants are lapped; in a bar with two of them both begin anew. */
    private static final int SLANTS = 2;

    private final CutTask task;
    private final Lapping lapping;
    private final List<Shape> lapped;
    private final List<Shape> shapes;
    private final Map<Shape, Integer> counts = new LinkedHashMap<>();

    Sizes(CutTask task, Lapping lapping) {
        this.task = task;
        this.lapping = lapping;
        this.lapped = lapping == Lapping.SURE ? commonest(task) : List.of();
        for (Piece piece : task.pieces()) counts.merge(shape(piece), 1, Integer::sum);
        this.shapes = new ArrayList<>(counts.keySet());
        shapes.sort(Comparator.comparingLong((Shape shape) -> -eachNm(shape))
                .thenComparing(Comparator.comparingLong(Shape::lengthNm).reversed())
                .thenComparing(Shape::toString));
    }

    static boolean anyLaps(CutTask task) {
        return task.pieces().stream()
                .map(Shape::of)
                .anyMatch(shape -> shape.mostSaved(task.saw().kerfNm()) > 0);
    }

    private static List<Shape> commonest(CutTask task) {
        Map<Shape, Integer> slants = new LinkedHashMap<>();
        for (Piece piece : task.pieces()) {
            Shape slant = Shape.of(piece).slant();
            if (slant.leastLap(task.saw().kerfNm()) > 0) slants.merge(slant, 1, Integer::sum);
        }
        return slants.entrySet().stream()
                .filter(each -> each.getValue() > 1)
                .sorted(Map.Entry.<Shape, Integer>comparingByValue().reversed())
                .limit(SLANTS)
                .map(Map.Entry::getKey)
                .toList();
    }

    List<Shape> shapes() {
        return List.copyOf(shapes);
    }

    /** Whether pieces are what they measure, and no more or less. */
    boolean isPlain() {
        return lapping == Lapping.NONE;
    }

    boolean laps(Shape shape) {
        return lapped.contains(shape.slant());
    }

    Shape shape(Piece piece) {
        Shape full = Shape.of(piece);
        if (lapping == Lapping.NONE || (lapping == Lapping.SURE && !lapped.contains(full.slant()))) return full.plain();
        return full;
    }

    /** What a piece takes of a bar, the kerf behind it and the lap off it. */
    private long eachNm(Shape shape) {
        long kerf = task.saw().kerfNm();
        return shape.lengthNm() + kerf - lapNm(shape, kerf);
    }

    private long lapNm(Shape shape, long kerf) {
        return switch (lapping) {
            case NONE -> 0;
            case AT_MOST -> Math.min(shape.mostSaved(kerf), shape.lengthNm() - 1);
            case SURE -> laps(shape) ? shape.leastLap(kerf) : 0;
        };
    }

    /** A kerf goes with every piece, and one more with the bar: n pieces need n - 1. The first piece of a run laps nothing. Bars that all cost nothing are told apart by length. */
    Cutting cutting(boolean free) {
        long kerf = task.saw().kerfNm();
        long firsts = lapped.stream().mapToLong(slant -> slant.leastLap(kerf)).sum();
        int kinds = task.bars().size();
        long[] room = new long[kinds];
        long[] price = new long[kinds];
        int[] supply = new int[kinds];
        for (int k = 0; k < kinds; k++) {
            StockBar bar = task.bars().get(k);
            room[k] = Math.max(0, task.saw().usableNm(bar) + kerf - firsts);
            price[k] =
                    free ? Math.max(1, bar.lengthNm() / 1_000_000) : bar.price().cents();
            supply[k] = bar.supply().match(asMany -> Cutting.UNLIMITED, Supply.AtMost::bars);
            if (price[k] == 0) supply[k] = Math.min(supply[k], task.pieces().size());
        }
        return new Cutting(
                shapes.stream().mapToLong(this::eachNm).toArray(),
                shapes.stream().mapToInt(shape -> counts.getOrDefault(shape, 0)).toArray(),
                room,
                price,
                supply);
    }
}
