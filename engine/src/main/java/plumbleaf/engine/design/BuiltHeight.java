package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;

/**
 * Where a fence was built higher than its run asks, under a level top over falling ground or hanging over the low post of a step. The
 * wind on posts and rails is counted on the height asked for, and is more than that there.
 */
final class BuiltHeight {
    /** Less than this moves the resultant by less than the 0.05 h that the standard adds to mid-height on a fence of 5 ft. Judgement. */
    private static final double COUNTS_IN = 3;

    private BuiltHeight() {}

    static List<Finding> of(Job job, Layout layout) {
        List<Finding> findings = new ArrayList<>();
        for (RunLayout run : layout.runs())
            highest(job, job.run(run.run()), run).ifPresent(findings::add);
        return findings;
    }

    private static Optional<Finding> highest(Job job, Run run, RunLayout layout) {
        double asked = run.infill().inches() + run.bottomGap().inches();
        return layout.bays().stream()
                .max(Comparator.comparingDouble(bay -> topIn(run, bay)))
                .filter(bay -> topIn(run, bay) > asked + COUNTS_IN)
                .map(bay -> Checked.note(
                        "wind.built-height",
                        Severity.CAUTION,
                        run.id(),
                        "The wind on " + run.id() + " is counted on a fence "
                                + job.display().length(asked)
                                + " high, as asked; at " + bay.id() + " its top stands "
                                + job.display().length(topIn(run, bay))
                                + " over the ground. Posts, footings and rails there carry more than is said here: "
                                + "ask for the tallest height that will be built, or have them looked at by an engineer.",
                        Basis.judgement("what is counted against what is built")));
    }

    /** Top of the infill over the ground where it hangs highest. */
    private static double topIn(Run run, Bay bay) {
        double from = bay.topFrom().inches() - bay.bottomFrom().inches();
        double to = bay.topTo().inches() - bay.bottomTo().inches();
        double gap = bay.fit() == Fit.STEPPED
                ? bay.groundGapMax().inches()
                : run.bottomGap().inches();
        return Math.max(from, to) + gap;
    }
}
