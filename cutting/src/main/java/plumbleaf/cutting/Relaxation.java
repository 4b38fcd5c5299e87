package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What fractions of patterns would cost: column generation, each column the best by an exact knapsack. The worths asked about lie between those of the program
 * and those of the best {@link Bound} so far, which settles sooner. One program serves for the whole task and for what is left of it after some bars are
 * fixed: limits change, columns stay.
 * Source: P. C. Gilmore and R. E. Gomory, Operations Research 9 (1961) 849-859 and 11 (1963) 863-888; P. Wentges, International Transactions in Operational
 * Research 4 (1997) 151-162 for the worths in between. Check: ProvenCutPlannerTest.
 */
final class Relaxation {
    /** A piece left over costs this many of the dearest bars, far above what it could ever save. */
    private static final double LEFT_OVER = 1000;

    /** Worth of a column below which it is not added, against the dearest bar. */
    private static final double PAYS = 1e-7;

    /** How far the worths asked about lean to those of the best bound. */
    private static final double LEAN = 0.7;

    /** With fewer sizes leaning does not pay. */
    private static final int SIZES_TO_LEAN = 25;

    private static final int PIVOTS = 100_000;

    private final Cutting cutting;
    private final Effort effort;
    private final Pricing pricing;
    private final RowProgram program;
    private final long dearest;
    private final long step;
    private final List<Column> columns = new ArrayList<>();
    private final Set<Column> inProgram = new LinkedHashSet<>();

    Relaxation(Cutting cutting, Set<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.pricing = new Pricing(cutting, effort);
        this.dearest = cutting.dearest();
        this.step = cutting.step();
        int sizes = cutting.sizes();
        this.program = new RowProgram(sizes + cutting.kinds());
        for (int i = 0; i < sizes; i++) program.addRow(0, Double.POSITIVE_INFINITY);
        for (int k = 0; k < cutting.kinds(); k++) program.addRow(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        for (int i = 0; i < sizes; i++) program.addColumn(LEFT_OVER, new int[] {i}, new double[] {1});
        for (Column column : pool) add(column);
    }

    /** A pattern and how often it is used. */
    record Share(Column column, double times) {}

    /**
     * @param cost of the fractions, in the unit of price
     * @param bound no whole plan costs less
     * @param complete no piece is left over and no column pays any more
     */
    record Solved(double cost, Bound bound, boolean complete, List<Share> shares) {
        Solved {
            shares = List.copyOf(shares);
        }
    }

    List<Column> columns() {
        return columns;
    }

    Pricing pricing() {
        return pricing;
    }

    /** To the end, or until the bound reaches {@code enough}. */
    Solved solve(int[] demand, int[] supply, long enough) {
        return solve(demand, supply, enough, false);
    }

    /** @param roughly stop once the bound, rounded up, cannot rise any more; the fractions are then near enough to round */
    Solved solve(int[] demand, int[] supply, long enough, boolean roughly) {
        int sizes = cutting.sizes();
        begin(demand, supply);
        Bound strongest = Bound.NONE;
        double[] middle = new double[sizes];
        boolean leaning = false;
        while (true) {
            long before = program.steps();
            RowProgram.End end = program.minimise(PIVOTS);
            effort.add(program.steps() - before + sizes);
            if (end != RowProgram.End.OPTIMAL) return new Solved(0, strongest, false, List.of());
            double[] dual = new double[sizes];
            for (int i = 0; i < sizes; i++) dual[i] = Math.max(0, program.dual(i));
            boolean grown = false;
            if (leaning) {
                double[] between = new double[sizes];
                for (int i = 0; i < sizes; i++) between[i] = LEAN * middle[i] + (1 - LEAN) * dual[i];
                Pricing.Found found = pricing.at(between, demand, supply);
                Bound bound = Bound.of(cutting, demand, supply, found.worth, found.best, found.scale);
                grown = addPaying(found);
                if (bound.isMoreThan(strongest)) {
                    strongest = bound;
                    middle = between;
                }
            }
            if (!grown) {
                Pricing.Found found = pricing.at(dual, demand, supply);
                Bound bound = Bound.of(cutting, demand, supply, found.worth, found.best, found.scale);
                grown = addPaying(found);
                if (bound.isMoreThan(strongest)) {
                    strongest = bound;
                    middle = dual;
                }
                leaning = sizes >= SIZES_TO_LEAN;
            }
            long shown = strongest.roundedUp(step);
            boolean enoughShown = shown >= enough || (roughly && shown >= cost(demand) - 1e-6 * dearest);
            if (!grown || enoughShown || effort.spent()) return solved(demand, strongest, !grown || enoughShown);
        }
    }

    private void begin(int[] demand, int[] supply) {
        int sizes = cutting.sizes();
        for (int i = 0; i < sizes; i++) {
            program.limit(i, demand[i], Double.POSITIVE_INFINITY);
            program.switchOff(i, demand[i] <= 0);
        }
        for (int k = 0; k < cutting.kinds(); k++) {
            double most = supply[k] == Cutting.UNLIMITED ? Double.POSITIVE_INFINITY : supply[k];
            program.limit(sizes + k, Double.NEGATIVE_INFINITY, most);
        }
        for (int c = 0; c < columns.size(); c++)
            program.switchOff(sizes + c, !columns.get(c).within(demand, supply));
        starters(demand, supply);
        effort.add(columns.size() / 4 + 1);
    }

    /** For each size a bar filled with it as far as it goes, and one with a single piece, from the kind where a piece is cheapest. */
    private void starters(int[] demand, int[] supply) {
        for (int i = 0; i < cutting.sizes(); i++) {
            if (demand[i] <= 0) continue;
            int bestKind = -1;
            int most = 0;
            double least = 0;
            for (int k = 0; k < cutting.kinds(); k++) {
                long times = Math.min(demand[i], cutting.room[k] / cutting.size[i]);
                if (supply[k] <= 0 || times <= 0) continue;
                double each = (double) cutting.price[k] / times;
                if (bestKind < 0 || each < least) {
                    bestKind = k;
                    most = (int) times;
                    least = each;
                }
            }
            if (bestKind < 0) continue;
            add(new Column(bestKind, new int[] {i}, new int[] {most}));
        }
    }

    private boolean addPaying(Pricing.Found found) {
        boolean grown = false;
        for (Column column : found.columns) {
            if (column.isEmpty()) continue;
            double saves = -price(column);
            if (saves > PAYS && add(column)) grown = true;
        }
        return grown;
    }

    private double price(Column column) {
        double reduced = (double) cutting.price[column.kind] / dearest - program.dual(cutting.sizes() + column.kind);
        for (int k = 0; k < column.size.length; k++) reduced -= column.times[k] * program.dual(column.size[k]);
        return reduced;
    }

    private boolean add(Column column) {
        if (!inProgram.add(column)) return false;
        int n = column.size.length;
        int[] rows = new int[n + 1];
        double[] factors = new double[n + 1];
        for (int k = 0; k < n; k++) {
            rows[k] = column.size[k];
            factors[k] = column.times[k];
        }
        rows[n] = cutting.sizes() + column.kind;
        factors[n] = 1;
        program.addColumn((double) cutting.price[column.kind] / dearest, rows, factors);
        columns.add(column);
        return true;
    }

    private double cost(int[] demand) {
        double cost = 0;
        for (int i = 0; i < demand.length; i++) cost += LEFT_OVER * dearest * program.valueOf(i);
        for (int c = 0; c < columns.size(); c++)
            cost += program.valueOf(demand.length + c) * cutting.price[columns.get(c).kind];
        return cost;
    }

    private Solved solved(int[] demand, Bound bound, boolean finished) {
        int sizes = cutting.sizes();
        double left = 0;
        for (int i = 0; i < sizes; i++) left += program.valueOf(i);
        List<Share> shares = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            double times = program.valueOf(sizes + c);
            if (times > 1e-5) shares.add(new Share(columns.get(c), times));
        }
        return new Solved(cost(demand), bound, finished && left < 1e-4, shares);
    }
}
