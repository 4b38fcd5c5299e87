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
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Node;

/**
 * Each run priced with its posts nearer together: fewest bays are least posts and holes, but rails and panels come in lengths, and what is sawn off them is paid for
 * too. The whole job is laid out, checked, cut and priced again for every spacing, all else as it stands. Check: SpacingPricesTest.
 */
public record SpacingPrices(List<OfRun> runs) {
    /** What posts are set at in the trade, in inches and in millimetres. Common practice, no source. */
    private static final List<Length> FEET =
            List.of(120, 96, 90, 84, 78, 72, 60).stream().map(Length::inches).toList();

    private static final List<Length> METRES = List.of(3000, 2700, 2400, 2100, 1800, 1500).stream()
            .map(mm -> Length.inches(mm / 25.4))
            .toList();

    public SpacingPrices {
        runs = List.copyOf(runs);
    }

    /**
     * @param now the largest bay the job allows
     * @param ways the way it is first, then ever shorter bays; two that set the same number of bays are one
     */
    public record OfRun(String run, Length now, List<Way> ways) {
        public OfRun {
            ways = List.copyOf(ways);
        }

        public Way asItIs() {
            return ways.get(0);
        }

        /** The least price among those that pass as the job does or better; of equal ones the fewest bays. */
        public Way cheapest() {
            return ways.stream()
                    .filter(way -> way.mustFix() <= asItIs().mustFix())
                    .min(Comparator.comparing(Way::total).thenComparingInt(Way::bays))
                    .orElse(asItIs());
        }

        /** Which governs, the fewest bays or the money, and why. */
        public String words(DisplayUnits display) {
            Way best = cheapest();
            if (!best.equals(asItIs()))
                return "Fewest bays are not cheapest on run " + run + ": " + told(best, display) + " cost "
                        + Money.ZERO.minus(best.change().price()).text() + " less than its "
                        + asItIs().bays()
                        + WayWords.reason(best.change()) + ".";
            String first = "Run " + run + " costs least with the fewest bays, " + told(best, display) + ".";
            return ways.stream()
                    .filter(way -> !way.equals(best) && way.mustFix() <= best.mustFix())
                    .min(Comparator.comparing(Way::total))
                    .map(next -> first + " " + told(next, display) + " add "
                            + next.change().price().text() + WayWords.reason(next.change()) + ".")
                    .orElse(first);
        }

        private static String told(Way way, DisplayUnits display) {
            return way.bays() + (way.bays() == 1 ? " bay of " : " bays of at most ") + display.length(way.longest());
        }
    }

    /**
     * A run with bays no longer than so.
     *
     * @param longest bay that comes of it, level
     * @param total price of the whole job, with tax
     * @param mustFix how many findings of the whole job must be fixed
     * @param change from the job as it stands
     */
    public record Way(
            Length maxBay, int bays, Length longest, Money total, Verdict verdict, long mustFix, Difference change) {}

    /**
     * @param base the job itself, designed
     * @param designer designs a job as the base was designed
     */
    public static SpacingPrices of(Design base, Catalogue catalogue, Function<Job, Design> designer) {
        Node tree = JobFile.tree(base.job());
        List<OfRun> runs = new ArrayList<>();
        for (Run run : base.job().runs()) {
            if (run.isLoneGate() || base.layout().run(run.id()).bays().isEmpty()) continue;
            List<Way> ways = new ArrayList<>();
            ways.add(way(base, run, run.maxBay(), base));
            for (Length bay : base.job().display() == DisplayUnits.METRIC ? METRES : FEET) {
                if (bay.compareTo(run.maxBay()) >= 0) continue;
                designed(tree, run, bay, catalogue, designer)
                        .map(design -> way(base, run, bay, design))
                        .filter(way -> ways.stream().allMatch(other -> other.bays() != way.bays()))
                        .ifPresent(ways::add);
            }
            runs.add(new OfRun(run.id(), run.maxBay(), ways));
        }
        return new SpacingPrices(runs);
    }

    /** What sets a run's largest bay, as an edit of the job. */
    public static String edit(String run, Length bay) {
        return place(run) + "=" + LengthText.exact(bay.inches());
    }

    private static String place(String run) {
        return "runs[" + run + "].maxBay";
    }

    private static Optional<Design> designed(
            Node tree, Run run, Length bay, Catalogue catalogue, Function<Job, Design> designer) {
        Parsed<Node> edited = JobEdit.all(tree, List.of(new JobEdit(place(run.id()), LengthText.exact(bay.inches()))));
        return edited.match(
                read -> JobFile.read("the job", read.is(), catalogue)
                        .match(good -> Optional.of(designer.apply(good.is())), bad -> Optional.empty()),
                refused -> Optional.empty());
    }

    private static Way way(Design base, Run run, Length maxBay, Design design) {
        List<Bay> bays = design.layout().run(run.id()).bays();
        double longest =
                bays.stream().mapToDouble(bay -> bay.level().inches()).max().orElse(0);
        long mustFix = design.findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .count();
        return new Way(
                maxBay,
                bays.size(),
                Length.inches(longest),
                design.quote().price().total(),
                design.verdict(),
                mustFix,
                Difference.of(base, design));
    }
}
