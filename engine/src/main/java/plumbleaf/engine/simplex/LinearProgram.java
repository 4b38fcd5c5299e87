package plumbleaf.engine.simplex;

import java.util.List;

/** Make the sum of cost times variable least, with every variable and every constraint within its limits. */
public record LinearProgram(List<Variable> variables, List<Constraint> constraints) {
    public LinearProgram {
        variables = List.copyOf(variables);
        constraints = List.copyOf(constraints);
        for (Constraint constraint : constraints) {
            for (Term term : constraint.terms()) {
                if (term.variable() >= variables.size())
                    throw new IllegalArgumentException("Constraint " + constraint.name() + " names variable "
                            + term.variable() + " of " + variables.size());
            }
        }
    }
}
