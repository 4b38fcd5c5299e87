package plumbleaf.reference.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.table.CsvTable;

/**
 * Least cost of seeded tasks with mixed prices, short supply, kerf and trim, against a general whole-number solver that chooses among all patterns.
 * Source: CBC 2.10.8 and GLPK 5.0, as recorded in solver-instances.csv by recipes/cutting_by_general_solver.py: a second method, not a publication.
 * Tolerance: none, to the cent.
 */
class GeneralSolverCheck {
    private static final long SIXTEENTH_NM = 1_587_500;

    record Instance(String name, CutTask task, long cents) {
        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("instances")
    void leastCost(Instance instance) {
        CutAnswer answer = new ProvenCutPlanner().plan(instance.task());
        assertThat(answer).isInstanceOf(CutAnswer.Planned.class);
        CutPlan plan = ((CutAnswer.Planned) answer).plan();
        assertThat(plan.cost()).isEqualTo(Money.cents(instance.cents()));
        assertThat(plan.proven()).isTrue();
    }

    static List<Instance> instances() {
        CsvTable<Instance> table = CsvTable.read(
                "solver-instances.csv",
                CuttingStockCheck.text("/plumbleaf/reference/cutting/solver-instances.csv"),
                List.of("name", "bars", "pieces", "cents"),
                row -> new Instance(
                        row.needed("name"),
                        new CutTask(
                                row.needed("name"),
                                pieces(row.needed("pieces")),
                                bars(row.needed("bars")),
                                new SawRules(2 * SIXTEENTH_NM, 8 * SIXTEENTH_NM, 0),
                                CutTask.USUAL_STEPS),
                        (long) row.number("cents", 1, 1e9)));
        assertThat(table.errors()).isEmpty();
        assertThat(table.rows()).hasSizeGreaterThan(200);
        return table.rows();
    }

    private static List<StockBar> bars(String text) {
        List<StockBar> bars = new ArrayList<>();
        for (List<Long> bar : numbers(text)) {
            Supply supply =
                    bar.get(2) == 0 ? Supply.asMany() : Supply.atMost(bar.get(2).intValue());
            bars.add(
                    new StockBar("k" + bars.size(), bar.get(0) * SIXTEENTH_NM, Money.cents(bar.get(1)), supply, false));
        }
        return bars;
    }

    private static List<Piece> pieces(String text) {
        List<Piece> pieces = new ArrayList<>();
        for (List<Long> piece : numbers(text)) {
            for (int n = 0; n < piece.get(1); n++)
                pieces.add(Piece.square("p" + pieces.size(), "", piece.get(0) * SIXTEENTH_NM));
        }
        return pieces;
    }

    private static List<List<Long>> numbers(String text) {
        return Arrays.stream(text.split(" ", -1))
                .map(each ->
                        Arrays.stream(each.split(":", -1)).map(Long::valueOf).toList())
                .toList();
    }
}
