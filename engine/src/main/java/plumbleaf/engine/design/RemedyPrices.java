package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;

/** Says of every remedy that can be made with one press what it does to the price: the whole job is quoted again with it. */
final class RemedyPrices {
    private RemedyPrices() {}

    /**
     * @param now total of the job as it stands
     * @param total quotes a changed job; empty where it cannot be laid out
     */
    static List<Finding> priced(List<Finding> findings, Job job, Money now, Function<Job, Optional<Money>> total) {
        List<Finding> priced = new ArrayList<>();
        for (Finding finding : findings) {
            boolean plain = finding instanceof Checked
                    && (finding.severity() == Severity.MUST_FIX || isOfMeeting(finding))
                    && !finding.remedies().isEmpty();
            priced.add(plain ? priced((Checked) finding, job, now, total) : finding);
        }
        return priced;
    }

    /** What holds a pair where its leaves meet is asked its price on the customary basis too, where wind is a caution. */
    private static boolean isOfMeeting(Finding finding) {
        return finding.severity() == Severity.CAUTION && finding.id().startsWith("pair.");
    }

    private static Finding priced(Checked finding, Job job, Money now, Function<Job, Optional<Money>> total) {
        List<Remedy> remedies = new ArrayList<>();
        for (Remedy remedy : finding.remedies()) {
            Optional<Money> change = remedy.edit()
                    .flatMap(edit -> RemedyEdit.on(job, edit))
                    .flatMap(total)
                    .map(then -> then.minus(now));
            remedies.add(new Remedy(remedy.id(), remedy.words(), remedy.ratio(), change, remedy.edit()));
        }
        return finding.withRemedies(remedies);
    }
}
