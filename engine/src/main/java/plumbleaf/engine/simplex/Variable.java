package plumbleaf.engine.simplex;

/**
 * What may be chosen.
 *
 * @param cost of one unit; the program makes the sum of costs least
 * @param lower least value, or negative infinity
 * @param upper greatest value, or positive infinity
 */
public record Variable(String name, double cost, double lower, double upper) {
    public Variable {
        if (!(lower <= upper) || !(Math.abs(cost) < 1e15))
            throw new IllegalArgumentException("Variable " + name + " has crossed limits or no finite cost");
    }

    /** Zero or more. */
    public static Variable positive(String name, double cost) {
        return new Variable(name, cost, 0, Double.POSITIVE_INFINITY);
    }

    /** Any value. */
    public static Variable free(String name, double cost) {
        return new Variable(name, cost, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
}
