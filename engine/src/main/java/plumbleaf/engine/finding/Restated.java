package plumbleaf.engine.finding;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A finding in other words: the same check, said in other units. Its numbers, and so its measure, stay in those of the check.
 */
public record Restated(Finding said, UnaryOperator<String> words) implements Finding {
    /** Every finding of a list in other words. */
    public static List<Finding> all(List<Finding> findings, UnaryOperator<String> words) {
        return findings.stream()
                .<Finding>map(finding -> new Restated(finding, words))
                .toList();
    }

    @Override
    public String id() {
        return said.id();
    }

    @Override
    public Severity severity() {
        return said.severity();
    }

    @Override
    public String part() {
        return said.part();
    }

    @Override
    public String message() {
        return words.apply(said.message());
    }

    @Override
    public Basis basis() {
        return new Basis(said.basis().kind(), words.apply(said.basis().text()));
    }

    @Override
    public Optional<Measure> measure() {
        return said.measure();
    }

    @Override
    public List<Remedy> remedies() {
        return said.remedies().stream()
                .map(remedy -> new Remedy(
                        remedy.id(), words.apply(remedy.words()), remedy.ratio(), remedy.priceChange(), remedy.edit()))
                .toList();
    }
}
