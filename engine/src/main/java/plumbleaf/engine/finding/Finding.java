package plumbleaf.engine.finding;

import java.util.List;
import java.util.Optional;

/**
 * Something that is so about a job. A result, never a fault. Each package adds its own records, which hold values; the sentence is
 * made when it is asked for.
 */
public interface Finding {
    /** Area and word: {@code swing.strikes}. */
    String id();

    Severity severity();

    /** The thing concerned: {@code G1}, {@code P7}, {@code site}. */
    String part();

    /** What, where, how much, what to do, in the words of the trade. */
    String message();

    /** The clause, or what else the limit rests on. */
    Basis basis();

    /** Measured against its limit, where the finding compares two numbers. */
    default Optional<Measure> measure() {
        return Optional.empty();
    }

    /** What would cure it, computed, cheapest first. */
    default List<Remedy> remedies() {
        return List.of();
    }
}
