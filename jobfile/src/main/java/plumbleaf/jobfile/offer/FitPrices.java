package plumbleaf.jobfile.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Node;

/**
 * Each run priced racked, stepped and level top: the whole job is designed and priced again for every one, all else as it stands. Stretches with a fit of their
 * own keep it.
 */
public record FitPrices(List<OfRun> runs) {
    public FitPrices {
        runs = List.copyOf(runs);
    }

    /** @param ways in the order of the fits; one that cannot be designed is left out */
    public record OfRun(String run, Fit now, List<Way> ways) {
        public OfRun {
            ways = List.copyOf(ways);
        }

        /** The least price among those that pass as the job does or better; of equal ones the fit as it is, then the first. */
        public Optional<Way> cheapest() {
            return ways.stream()
                    .filter(way -> way.mustFix() <= mustFixNow())
                    .min(Comparator.comparing(Way::total).thenComparing(way -> way.fit() == now ? 0 : 1));
        }

        private long mustFixNow() {
            return ways.stream()
                    .filter(way -> way.fit() == now)
                    .mapToLong(Way::mustFix)
                    .findFirst()
                    .orElse(0);
        }
    }

    /**
     * A run built one way.
     *
     * @param total price of the whole job, with tax
     * @param mustFix how many findings of the whole job must be fixed
     * @param change from the job as it stands
     */
    public record Way(Fit fit, Money total, Verdict verdict, long mustFix, Difference change) {}

    /**
     * @param base the job itself, designed
     * @param designer designs a job as the base was designed
     */
    public static FitPrices of(Design base, Catalogue catalogue, Function<Job, Design> designer) {
        Node tree = JobFile.tree(base.job());
        List<OfRun> runs = new ArrayList<>();
        for (Run run : base.job().runs()) {
            if (run.isLoneGate()) continue;
            List<Way> ways = new ArrayList<>();
            for (Fit fit : Fit.values())
                designed(base, tree, run, fit, catalogue, designer)
                        .ifPresent(design -> ways.add(way(base, fit, design)));
            runs.add(new OfRun(run.id(), run.fit(), ways));
        }
        return new FitPrices(runs);
    }

    /** What takes a run's fit, as an edit of the job. */
    public static String edit(String run, Fit fit) {
        return place(run) + "=" + fit.key();
    }

    private static String place(String run) {
        return "runs[" + run + "].fit";
    }

    private static Optional<Design> designed(
            Design base, Node tree, Run run, Fit fit, Catalogue catalogue, Function<Job, Design> designer) {
        if (fit == run.fit()) return Optional.of(base);
        Parsed<Node> edited = JobEdit.all(tree, List.of(new JobEdit(place(run.id()), fit.key())));
        return edited.match(
                read -> JobFile.read("the job", read.is(), catalogue)
                        .match(good -> Optional.of(designer.apply(good.is())), bad -> Optional.empty()),
                refused -> Optional.empty());
    }

    private static Way way(Design base, Fit fit, Design design) {
        long mustFix = design.findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .count();
        return new Way(fit, design.quote().price().total(), design.verdict(), mustFix, Difference.of(base, design));
    }
}
