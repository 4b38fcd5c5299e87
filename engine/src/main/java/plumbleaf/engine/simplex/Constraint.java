package plumbleaf.engine.simplex;

import java.util.List;

/** A sum of terms that has to stay between two limits, either of which may be infinite. */
public record Constraint(String name, List<Term> terms, double lower, double upper) {
    public Constraint {
        terms = List.copyOf(terms);
        if (!(lower <= upper)) throw new IllegalArgumentException("Constraint " + name + " has crossed limits");
    }

    public static Constraint atLeast(String name, List<Term> terms, double lower) {
        return new Constraint(name, terms, lower, Double.POSITIVE_INFINITY);
    }

    public static Constraint atMost(String name, List<Term> terms, double upper) {
        return new Constraint(name, terms, Double.NEGATIVE_INFINITY, upper);
    }

    public static Constraint equal(String name, List<Term> terms, double value) {
        return new Constraint(name, terms, value, value);
    }
}
