package plumbleaf.engine.finding;

import java.util.List;
import java.util.Optional;

/**
 * The plain finding: one check, its numbers and its sentence. For checks that need nothing more of their own.
 */
public record Checked(
        String id,
        Severity severity,
        String part,
        String message,
        Basis basis,
        Optional<Measure> measure,
        List<Remedy> remedies)
        implements Finding {
    public Checked {
        remedies = List.copyOf(remedies);
    }

    /** A check by numbers: passes at a ratio of at most 1, else as bad as said. */
    public static Checked of(
            String id, Severity whenFailed, String part, String message, Basis basis, Measure measure) {
        boolean passes = measure.ratio().isPresent() && measure.ratio().getAsDouble() <= 1;
        return new Checked(
                id, passes ? Severity.PASS : whenFailed, part, message, basis, Optional.of(measure), List.of());
    }

    /** A remark without numbers. */
    public static Checked note(String id, Severity severity, String part, String message, Basis basis) {
        return new Checked(id, severity, part, message, basis, Optional.empty(), List.of());
    }

    public Checked withRemedies(List<Remedy> cures) {
        return new Checked(id, severity, part, message, basis, measure, cures);
    }
}
