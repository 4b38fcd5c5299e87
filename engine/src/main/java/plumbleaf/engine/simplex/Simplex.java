package plumbleaf.engine.simplex;

import java.util.ArrayList;
import java.util.List;

/**
 * Solves a linear program by the bounded simplex method.
 * Method: revised simplex with an explicit inverse and composite phase 1; source: V. Chvatal, Linear Programming (1983), chapters 7 and 8; Bland's rule
 * against cycling: chapter 3. Check: SimplexTest.
 */
public final class Simplex {
    private Simplex() {}

    /** As {@link #minimise(LinearProgram, int)}, with steps enough for any program of sensible size. */
    public static Answer minimise(LinearProgram program) {
        return minimise(
                program,
                20_000
                        + 50
                                * (program.variables().size()
                                        + program.constraints().size()));
    }

    /**
     * The same answer for the same program, to the last digit: the order of variables and constraints settles ties.
     *
     * @param stepLimit pivots allowed
     */
    public static Answer minimise(LinearProgram program, int stepLimit) {
        List<Constraint> constraints = program.constraints();
        GrowingProgram growing = new GrowingProgram(
                constraints.stream().mapToDouble(Constraint::lower).toArray(),
                constraints.stream().mapToDouble(Constraint::upper).toArray());
        List<List<Term>> byVariable = new ArrayList<>();
        for (int j = 0; j < program.variables().size(); j++) byVariable.add(new ArrayList<>());
        for (int i = 0; i < constraints.size(); i++) {
            for (Term term : constraints.get(i).terms())
                byVariable.get(term.variable()).add(new Term(i, term.factor()));
        }
        for (int j = 0; j < program.variables().size(); j++) {
            Variable variable = program.variables().get(j);
            growing.add(variable.cost(), variable.lower(), variable.upper(), byVariable.get(j));
        }
        return growing.minimise(stepLimit);
    }
}
