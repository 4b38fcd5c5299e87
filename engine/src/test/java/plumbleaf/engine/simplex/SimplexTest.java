package plumbleaf.engine.simplex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SimplexTest {
    @Test
    void twoVariablesInTheHead() {
        // Most of 3x + 2y with x + y <= 4, x + 3y <= 7, x <= 3: at (3, 1), worth 11.
        Answer.Optimal best = optimal(new LinearProgram(
                List.of(new Variable("x", -3, 0, 3), Variable.positive("y", -2)),
                List.of(
                        Constraint.atMost("a", List.of(new Term(0, 1), new Term(1, 1)), 4),
                        Constraint.atMost("b", List.of(new Term(0, 1), new Term(1, 3)), 7))));
        assertThat(best.cost()).isCloseTo(-11, within(1e-9));
        assertThat(best.values()).containsExactly(3.0, 1.0);
        assertThat(best.duals().get(0)).isCloseTo(-2, within(1e-9));
        assertThat(best.duals().get(1)).isCloseTo(0, within(1e-9));
    }

    @Test
    void tellsInfeasibleFromUnbounded() {
        List<Variable> x = List.of(Variable.positive("x", -1));
        Answer apart = Simplex.minimise(new LinearProgram(
                x,
                List.of(
                        Constraint.atMost("low", List.of(new Term(0, 1)), 1),
                        Constraint.atLeast("high", List.of(new Term(0, 1)), 2))));
        assertThat(apart).isInstanceOf(Answer.Infeasible.class);
        Answer endless =
                Simplex.minimise(new LinearProgram(x, List.of(Constraint.atLeast("high", List.of(new Term(0, 1)), 2))));
        assertThat(endless).isInstanceOf(Answer.Unbounded.class);
    }

    @Test
    void aFreeVariableMayGoBelowZero() {
        Answer.Optimal best = optimal(new LinearProgram(
                List.of(Variable.free("x", 1), Variable.positive("y", 0)),
                List.of(
                        Constraint.equal("tie", List.of(new Term(0, 1), new Term(1, 1)), 2),
                        new Constraint("band", List.of(new Term(1, 1)), 1, 5))));
        assertThat(best.values()).containsExactly(-3.0, 5.0);
    }

    @Test
    void bealesProgramWhichCyclesUnderTheSteepestPriceEnds() {
        // E. M. L. Beale 1955: least -3/4 a + 150 b - 1/50 c + 6 d; least cost -1/20.
        Answer.Optimal best = optimal(new LinearProgram(
                List.of(
                        Variable.positive("a", -0.75),
                        Variable.positive("b", 150),
                        new Variable("c", -0.02, 0, 1),
                        Variable.positive("d", 6)),
                List.of(
                        Constraint.atMost("1", terms(0.25, -60, -0.04, 9), 0),
                        Constraint.atMost("2", terms(0.5, -90, -0.02, 3), 0))));
        assertThat(best.cost()).isCloseTo(-0.05, within(1e-9));
    }

    @Test
    void theDualsProveTheCostOnSeededPrograms() {
        Random random = new Random(11);
        int solved = 0;
        for (int round = 0; round < 400; round++) {
            LinearProgram program = seeded(random);
            Answer answer = Simplex.minimise(program);
            if (!(answer instanceof Answer.Optimal best)) continue;
            solved++;
            assertWithinLimits(program, best);
            assertThat(dualBound(program, best)).isCloseTo(best.cost(), within(1e-6));
        }
        assertThat(solved).isGreaterThan(80);
    }

    @Test
    void aColumnAddedLaterIsTakenUpAsIfItHadAlwaysBeenThere() {
        GrowingProgram growing = new GrowingProgram(new double[] {10}, new double[] {Double.POSITIVE_INFINITY});
        growing.add(3, 0, Double.POSITIVE_INFINITY, List.of(new Term(0, 1)));
        assertThat(cost(growing)).isCloseTo(30, within(1e-9));
        growing.add(4, 0, Double.POSITIVE_INFINITY, List.of(new Term(0, 2)));
        assertThat(cost(growing)).isCloseTo(20, within(1e-9));
        growing.limitVariable(1, 0, 2);
        assertThat(cost(growing)).isCloseTo(26, within(1e-9));
        growing.limitRow(0, 4, Double.POSITIVE_INFINITY);
        assertThat(cost(growing)).isCloseTo(8, within(1e-9));
    }

    private static double cost(GrowingProgram growing) {
        return growing.minimise(1000).match(Answer.Optimal::cost, no -> -1.0, no -> -2.0, no -> -3.0);
    }

    private static LinearProgram seeded(Random random) {
        int columns = 2 + random.nextInt(8);
        int rows = 1 + random.nextInt(8);
        List<Variable> variables = new ArrayList<>();
        for (int j = 0; j < columns; j++) {
            double lower = random.nextInt(4) == 0 ? Double.NEGATIVE_INFINITY : random.nextInt(5) - 3;
            double upper = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : Math.max(lower, -3) + random.nextInt(6);
            variables.add(new Variable("x" + j, random.nextInt(21) - 8, lower, upper));
        }
        List<Constraint> constraints = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            List<Term> terms = new ArrayList<>();
            for (int j = 0; j < columns; j++) {
                if (random.nextInt(2) == 0) terms.add(new Term(j, random.nextInt(11) - 4));
            }
            double lower = random.nextInt(3) == 0 ? Double.NEGATIVE_INFINITY : random.nextInt(12) - 6;
            double upper = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : Math.max(lower, -6) + random.nextInt(9);
            constraints.add(new Constraint("r" + i, terms, lower, upper));
        }
        return new LinearProgram(variables, constraints);
    }

    private static void assertWithinLimits(LinearProgram program, Answer.Optimal best) {
        for (int j = 0; j < program.variables().size(); j++) {
            Variable variable = program.variables().get(j);
            assertThat(best.values().get(j)).isBetween(variable.lower() - 1e-7, variable.upper() + 1e-7);
        }
        for (Constraint constraint : program.constraints()) {
            double sum = 0;
            for (Term term : constraint.terms())
                sum += term.factor() * best.values().get(term.variable());
            assertThat(sum).isBetween(constraint.lower() - 1e-7, constraint.upper() + 1e-7);
        }
    }

    /** The bound that the duals alone give: every price times the limit it presses against. */
    private static double dualBound(LinearProgram program, Answer.Optimal best) {
        double bound = 0;
        List<Double> reduced =
                new ArrayList<>(program.variables().stream().map(Variable::cost).toList());
        for (int i = 0; i < program.constraints().size(); i++) {
            Constraint constraint = program.constraints().get(i);
            double price = best.duals().get(i);
            if (Math.abs(price) > 1e-9) bound += price * (price > 0 ? constraint.lower() : constraint.upper());
            for (Term term : constraint.terms())
                reduced.set(term.variable(), reduced.get(term.variable()) - price * term.factor());
        }
        for (int j = 0; j < reduced.size(); j++) {
            Variable variable = program.variables().get(j);
            double price = reduced.get(j);
            if (Math.abs(price) > 1e-8) bound += price * (price > 0 ? variable.lower() : variable.upper());
        }
        return bound;
    }

    private static List<Term> terms(double... factors) {
        List<Term> terms = new ArrayList<>();
        for (int j = 0; j < factors.length; j++) terms.add(new Term(j, factors[j]));
        return terms;
    }

    private static Answer.Optimal optimal(LinearProgram program) {
        Answer answer = Simplex.minimise(program);
        assertThat(answer).isInstanceOf(Answer.Optimal.class);
        return (Answer.Optimal) answer;
    }
}
