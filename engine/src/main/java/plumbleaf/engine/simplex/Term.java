package plumbleaf.engine.simplex;

/** A factor times a variable, the variable named by its place in the program. */
public record Term(int variable, double factor) {
    public Term {
        if (variable < 0 || !(Math.abs(factor) < 1e15))
            throw new IllegalArgumentException("A term needs a variable and a finite factor");
    }
}
