package plumbleaf.engine.choose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Severity;

/**
 * The cheapest build that passes. Builds are judged in order of price, so that when one passes, every cheaper one has been judged and failed: that
 * is the proof, and it is kept. Exact on the lattice it is given; the effort is the number of builds judged.
 */
public final class Cheapest {
    private Cheapest() {}

    /**
     * @param candidates all builds, in any order
     * @param judge the findings of a build's own parts
     * @param alternatives how many passing builds beyond the cheapest are wanted
     */
    public static <B> Choice<B> of(List<Candidate<B>> candidates, Function<B, List<Finding>> judge, int alternatives) {
        List<Candidate<B>> byPrice = new ArrayList<>(candidates);
        byPrice.sort(Comparator.comparing((Candidate<B> candidate) -> candidate.price())
                .thenComparing(Candidate::id));
        return of(byPrice.iterator(), candidates.size(), judge, alternatives);
    }

    /**
     * @param byPrice all builds, the cheapest first
     * @param all how many there are
     * @param judge the findings of a build's own parts; of one that fails, as soon as it is known, a part of them will do
     */
    public static <B> Choice<B> of(
            Iterator<Candidate<B>> byPrice, int all, Function<B, List<Finding>> judge, int alternatives) {
        List<Candidate<B>> best = new ArrayList<>();
        List<Candidate<B>> next = new ArrayList<>();
        List<Rejected> rejected = new ArrayList<>();
        while (byPrice.hasNext() && (best.isEmpty() || next.size() < alternatives)) {
            Candidate<B> candidate = byPrice.next();
            List<Finding> findings = Findings.join(judge.apply(candidate.build()));
            boolean passes = passes(findings);
            if (!passes && best.isEmpty())
                rejected.add(new Rejected(candidate.id(), candidate.price(), findings.get(0)));
            if (passes && best.isEmpty()) best.add(candidate);
            else if (passes) next.add(candidate);
        }
        return new Choice<>(best, next, rejected, all);
    }

    /** Whether a build may stand with these findings. */
    public static boolean passes(List<Finding> findings) {
        return findings.stream()
                .allMatch(finding -> finding.severity() == Severity.PASS || finding.severity() == Severity.CAUTION);
    }
}
