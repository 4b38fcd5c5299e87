package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.simplex.Answer;
import plumbleaf.engine.simplex.Constraint;
import plumbleaf.engine.simplex.LinearProgram;
import plumbleaf.engine.simplex.Simplex;
import plumbleaf.engine.simplex.Term;
import plumbleaf.engine.simplex.Variable;

class RowProgramTest {
    /** Limits are kept a millionth wider, some rows deep. */
    private static final double EASE = 1e-3;

    @Test
    void agreesWithTheGeneralSimplexWhileRowsColumnsAndLimitsChange() {
        Random random = new Random(11);
        int impossible = 0;
        for (int round = 0; round < 200; round++) {
            int rows = 2 + random.nextInt(6);
            List<double[]> columns = new ArrayList<>();
            List<Double> costs = new ArrayList<>();
            double[] least = new double[rows];
            RowProgram program = new RowProgram(2);
            for (int r = 0; r < rows; r++) {
                least[r] = random.nextInt(5);
                program.addRow(least[r], Double.POSITIVE_INFINITY);
            }
            for (int step = 0; step < 6; step++) {
                for (int n = 0; n < 4; n++) {
                    double[] column = new double[rows];
                    for (int r = 0; r < rows; r++) column[r] = random.nextInt(3);
                    columns.add(column);
                    costs.add(1.0 + random.nextInt(9));
                    add(program, costs.get(costs.size() - 1), column);
                }
                int row = random.nextInt(rows);
                least[row] = random.nextInt(7);
                program.limit(row, least[row], Double.POSITIVE_INFINITY);
                RowProgram.End end = program.minimise(10_000);
                Answer answer = bySimplex(columns, costs, least);
                if (answer instanceof Answer.Optimal optimal) {
                    assertThat(end).as("round " + round).isEqualTo(RowProgram.End.OPTIMAL);
                    double cost = 0;
                    for (int c = 0; c < costs.size(); c++) cost += costs.get(c) * program.valueOf(c);
                    assertThat(cost).as("round " + round).isCloseTo(optimal.cost(), within(EASE));
                } else {
                    assertThat(end).isEqualTo(RowProgram.End.INFEASIBLE);
                    impossible++;
                }
            }
        }
        assertThat(impossible).isPositive();
    }

    @Test
    void aRowOverColumnsAlreadyThereAndAColumnSwitchedOffAreObeyed() {
        RowProgram program = new RowProgram(1);
        program.addRow(3, Double.POSITIVE_INFINITY);
        int cheap = program.addColumn(1, new int[] {0}, new double[] {1});
        int dear = program.addColumn(5, new int[] {0}, new double[] {1});
        program.minimise(100);
        assertThat(program.valueOf(cheap)).isCloseTo(3, within(EASE));
        program.addRow(Double.NEGATIVE_INFINITY, 1, new double[] {1, 0});
        assertThat(program.minimise(100)).isEqualTo(RowProgram.End.OPTIMAL);
        assertThat(program.valueOf(cheap)).isCloseTo(1, within(EASE));
        assertThat(program.valueOf(dear)).isCloseTo(2, within(EASE));
        program.switchOff(dear, true);
        assertThat(program.minimise(100)).isEqualTo(RowProgram.End.INFEASIBLE);
        program.switchOff(dear, false);
        program.switchOff(cheap, true);
        assertThat(program.minimise(100)).isEqualTo(RowProgram.End.OPTIMAL);
        assertThat(program.valueOf(dear)).isCloseTo(3, within(EASE));
    }

    private static void add(RowProgram program, double cost, double[] column) {
        int[] rows = new int[column.length];
        for (int r = 0; r < rows.length; r++) rows[r] = r;
        program.addColumn(cost, rows, column.clone());
    }

    private static Answer bySimplex(List<double[]> columns, List<Double> costs, double[] least) {
        List<Variable> variables = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) variables.add(Variable.positive("x" + c, costs.get(c)));
        List<Constraint> constraints = new ArrayList<>();
        for (int r = 0; r < least.length; r++) {
            List<Term> terms = new ArrayList<>();
            for (int c = 0; c < columns.size(); c++) terms.add(new Term(c, columns.get(c)[r]));
            constraints.add(Constraint.atLeast("r" + r, terms, least[r]));
        }
        return Simplex.minimise(new LinearProgram(variables, constraints));
    }
}
