package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * How a link was worked out, for the calculation book.
 *
 * @param formula as the source has it
 * @param numbers put in, of the case that governs
 * @param clause where it comes from
 * @param lines the same from line to line, as a pocket calculator follows it; empty where there is no more than one division of what the numbers say
 */
public record LinkWork(String formula, String numbers, String clause, List<WorkedLine> lines) {
    public LinkWork {
        lines = List.copyOf(lines);
    }

    public LinkWork(String formula, String numbers, String clause) {
        this(formula, numbers, clause, List.of());
    }
}
