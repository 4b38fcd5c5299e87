package plumbleaf.engine.design;

import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;

/**
 * How high a piece of fence stands in the wind where it was built: a level top over falling ground has longer boards than the run asked for, a step hangs its bay
 * over the ground of the post below it. Both bend that post more than the fence that was asked for would.
 *
 * @param surface height of the infill
 * @param gap between the ground and its bottom
 */
record AsBuilt(Length surface, Length gap) {
    /**
     * A fence this much taller or higher up than the run asked for counts as built: nearer than that no crew sets its string, and the moment at grade of a 4 ft fence
     * moves by less than 4 percent. Judgement.
     */
    static final double COUNTS_IN = 0.5;

    private static final double STEP_IN = 1;

    /** Of the half of a bay beside a post, the near end of the bay counts for three quarters: the mean over that half. Geometry. */
    private static final double NEAR = 0.75;

    /** As the run asks for it. */
    static AsBuilt asked(Run run) {
        return new AsBuilt(run.infill(), run.bottomGap());
    }

    /** The half of a bay that a post carries, over the ground at the post. */
    static AsBuilt besidePost(Run run, Bay bay, Post post) {
        boolean first = bay.from().equals(post.id());
        double nearIn = first ? atStartIn(bay) : atEndIn(bay);
        double farIn = first ? atEndIn(bay) : atStartIn(bay);
        double bottomIn = (first ? bay.bottomFrom() : bay.bottomTo()).inches();
        return counted(
                run, NEAR * nearIn + (1 - NEAR) * farIn, bottomIn - post.grade().inches());
    }

    /** A whole bay, as its rails meet the wind. */
    static AsBuilt of(Run run, Bay bay) {
        return counted(run, (atStartIn(bay) + atEndIn(bay)) / 2, gapIn(run, bay));
    }

    /** A bay at its tallest and at its highest over the ground, for posts that are not placed yet. */
    static AsBuilt tallestOf(Run run, Bay bay) {
        double highIn = Math.max(run.bottomGap().inches(), bay.groundGapMax().inches());
        return counted(run, Math.max(atStartIn(bay), atEndIn(bay)), highIn).upToStep(run);
    }

    private static double gapIn(Run run, Bay bay) {
        return bay.fit() == Fit.STEPPED
                ? bay.groundGapMax().inches()
                : run.bottomGap().inches();
    }

    boolean isAsked(Run run) {
        return equals(asked(run));
    }

    /** How much further down its infill hangs than asked. */
    Length below(Run run) {
        return Length.inches(Math.max(0, surface.inches() - run.infill().inches()));
    }

    /** The taller and the higher of two. */
    AsBuilt most(AsBuilt other) {
        return new AsBuilt(
                surface.compareTo(other.surface) > 0 ? surface : other.surface,
                gap.compareTo(other.gap) > 0 ? gap : other.gap);
    }

    Length top() {
        return surface.plus(gap);
    }

    /** Whole steps over what was asked, on the safe side: where posts may stand is asked often, and few heights are quickly answered. */
    private AsBuilt upToStep(Run run) {
        return new AsBuilt(upToStep(run.infill(), surface), upToStep(run.bottomGap(), gap));
    }

    private static Length upToStep(Length asked, Length built) {
        double steps = Math.ceil((built.inches() - asked.inches()) / STEP_IN - 1e-9);
        return Length.inches(asked.inches() + steps * STEP_IN);
    }

    private static AsBuilt counted(Run run, double surfaceIn, double gapIn) {
        return new AsBuilt(counted(run.infill(), surfaceIn), counted(run.bottomGap(), gapIn));
    }

    private static Length counted(Length asked, double builtIn) {
        return builtIn > asked.inches() + COUNTS_IN ? new Length(builtIn) : asked;
    }

    private static double atStartIn(Bay bay) {
        return bay.topFrom().inches() - bay.bottomFrom().inches();
    }

    private static double atEndIn(Bay bay) {
        return bay.topTo().inches() - bay.bottomTo().inches();
    }
}
