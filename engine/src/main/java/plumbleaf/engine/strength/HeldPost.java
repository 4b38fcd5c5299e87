package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Working;

/**
 * How something else than a dug footing holds a post: the numbers that papers and results show, and what is found.
 *
 * @param facts in the order of the calculation
 * @param utilisation the greatest use of any check that could be run; zero where none could
 * @param workings what its checks come from, line by line for the calculation book
 */
public record HeldPost(List<Fact> facts, double utilisation, List<Finding> findings, List<Working> workings) {
    /** Nothing holds it that needs a word. */
    public static final HeldPost NOTHING = new HeldPost(List.of(), 0, List.of(), List.of());

    public HeldPost {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
        workings = List.copyOf(workings);
    }

    /** A wood post on a support that is worked out for steel alone. */
    public static HeldPost ofWood(String part, String support) {
        return new HeldPost(
                List.of(),
                0,
                List.of(Checked.note(
                        "support.wood",
                        Severity.CANNOT_SAY,
                        part,
                        "Post " + part + " is of wood: how " + support
                                + " holds it is not worked out here. Take a steel post there, or the maker's values of a post base.",
                        Basis.judgement("worked out for steel posts"))),
                List.of());
    }

    /**
     * One number of the calculation.
     *
     * @param key as the result writes it, with its unit: {@code anchorTensionLb}
     * @param words as papers and screens say it
     * @param unit as in result keys
     */
    public record Fact(String key, String words, double value, String unit) {}

    /** Facts and checks as they come up. */
    static final class Notes {
        private final List<Fact> facts = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
        private final List<Working> workings = new ArrayList<>();
        private double most;

        Notes fact(String key, String words, double value, String unit) {
            facts.add(new Fact(key, words, value, unit));
            return this;
        }

        Notes note(Finding finding) {
            findings.add(finding);
            return this;
        }

        /** A check with a ratio, which counts towards the utilisation. */
        Notes check(Checked checked) {
            checked.measure()
                    .ifPresent(measure -> most = Math.max(most, measure.ratio().orElse(most)));
            findings.add(checked);
            return this;
        }

        /** What a check comes from. */
        Notes worked(Working working) {
            workings.add(working);
            return this;
        }

        HeldPost done() {
            return new HeldPost(facts, most, findings, workings);
        }
    }
}
