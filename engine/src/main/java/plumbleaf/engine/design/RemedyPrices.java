package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;

/**
 * Says of every remedy that can be made with one press what it does to the price: the whole job is quoted again with it. The worst findings come first; on a
 * fence of miles the rest of the changes keep their words and go without a price, or every gate would cost as much as the whole fence.
 */
final class RemedyPrices {
    /** Posts that are quoted again at most, all changes together: 57 changes to a yard of seventy posts. Judgement. */
    static final int MOST_POSTS = 4000;

    private final Job job;
    private final Money now;
    private final Function<Job, Optional<Money>> total;
    private final int mostChanges;
    private final Map<String, Optional<Money>> changes = new LinkedHashMap<>();
    private final Set<String> unpriced = new LinkedHashSet<>();

    private RemedyPrices(Job job, Money now, int posts, Function<Job, Optional<Money>> total) {
        this.job = job;
        this.now = now;
        this.total = total;
        this.mostChanges = MOST_POSTS / Math.max(1, posts);
    }

    /**
     * @param findings worst first
     * @param now total of the job as it stands
     * @param posts in the whole yard
     * @param total quotes a changed job; empty where it cannot be laid out
     */
    static List<Finding> priced(
            List<Finding> findings, Job job, Money now, int posts, Function<Job, Optional<Money>> total) {
        RemedyPrices prices = new RemedyPrices(job, now, posts, total);
        List<Finding> priced = new ArrayList<>();
        for (Finding finding : findings) {
            boolean plain = finding instanceof Checked
                    && (finding.severity() == Severity.MUST_FIX || isPricedAsCaution(finding))
                    && !finding.remedies().isEmpty();
            priced.add(plain ? prices.priced((Checked) finding) : finding);
        }
        return prices.unpriced.isEmpty() ? priced : Findings.join(priced, List.of(prices.saysSo(posts)));
    }

    /** What holds a pair where its leaves meet, or a leaf open, is asked its price on the customary basis too, where wind is a caution. */
    private static boolean isPricedAsCaution(Finding finding) {
        return finding.severity() == Severity.CAUTION
                && (finding.id().startsWith("pair.")
                        || finding.id().equals("gate.gust-slam")
                        || finding.id().equals("gate.slam"));
    }

    private Checked priced(Checked finding) {
        List<Remedy> remedies = new ArrayList<>();
        for (Remedy remedy : finding.remedies())
            remedies.add(new Remedy(
                    remedy.id(), remedy.words(), remedy.ratio(), remedy.edit().flatMap(this::change), remedy.edit()));
        return finding.withRemedies(remedies);
    }

    /** Several findings are often cured by the same change; it is quoted once. */
    private Optional<Money> change(String edit) {
        Optional<Money> known = changes.get(edit);
        if (known != null) return known;
        if (changes.size() >= mostChanges) {
            unpriced.add(edit);
            return Optional.empty();
        }
        Optional<Job> changed = RemedyEdit.on(job, edit);
        Optional<Money> change = changed.flatMap(total).map(then -> then.minus(now));
        if (changed.isPresent()) changes.put(edit, change);
        return change;
    }

    private Finding saysSo(int posts) {
        return Checked.note(
                "price.changes",
                Severity.PASS,
                job.title(),
                "What " + unpriced.size() + " of the changes offered would do to the price is left open: a fence of "
                        + posts + " posts has " + mostChanges
                        + " priced, those of the worst findings. Make one to see what it comes to.",
                Basis.judgement("so that a design of miles of fence takes seconds"));
    }
}
