package plumbleaf.engine.rule;

import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.quantity.Length;

/**
 * One limit as published.
 *
 * @param id {@code PB01}
 * @param what is limited, in words
 * @param confidence {@code looked-up} or {@code memory}
 */
public record RuleRow(
        String id, String topic, String what, Length limit, String clause, String source, String confidence) {
    /** The same rule where local code asks for more. */
    RuleRow withLimit(Length local) {
        return new RuleRow(id, topic, what, local, clause + ", amended locally as the job says", source, confidence);
    }

    /** The clause with its id and the words that belong to every rule. */
    public Basis basis() {
        String text = clause + " (" + id + "); local code governs";
        return confidence.equals("memory") ? Basis.fromMemory(text) : Basis.clause(text);
    }
}
