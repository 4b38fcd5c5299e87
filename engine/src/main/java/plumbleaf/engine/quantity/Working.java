package plumbleaf.engine.quantity;

import java.util.List;

/**
 * One thing worked out, for the calculation book.
 *
 * @param what is worked out
 * @param clause where its formulas stand
 * @param where what its letters are
 */
public record Working(String what, String clause, String where, List<WorkedLine> lines) {
    public Working {
        lines = List.copyOf(lines);
    }
}
