package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.line.SpacingLimit;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.PostSpacing;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.wind.LegWind;

/**
 * How far apart the wind lets the posts of engineered runs stand. A customary run keeps its own longest bay, and its rated gust says what that comes to.
 *
 * <p>What a post bends with also counts its weight, so that room for the weight of the longest bay is kept: with {@code Pr/(2 Pc) + Mr/Mc = 1} the moment may
 * be {@code Mc (1 - Pr/(2 Pc))}.
 * Source: AISC 360-22 H1-1b. Check: WindSpacingTest.
 */
final class WindSpacing implements SpacingLimit {
    /** Of a run with more walls, the first ones stand for it. */
    private static final int MOST_WALLS = 12;

    /** A bay belongs to the side that begins where it does, not to the one that ends there: what lies an inch on counts. */
    private static final double ON = 1;

    /** Farther apart no rail reaches. */
    private static final Length ASKED = Length.feet(20);

    private final Map<String, Engineered> runs = new LinkedHashMap<>();
    private final Map<String, Engineered> all = new LinkedHashMap<>();
    private final Job job;
    private final Catalogue catalogue;
    private final DisplayUnits display;

    /**
     * @param run as asked for
     * @param pick what its posts are of, side by side
     */
    private record Engineered(RunWind wind, List<LegWind> walls, Run run, PickedRun pick, FenceStyle style) {}

    /** @param winds on the runs of the job, in their order */
    WindSpacing(Job job, Catalogue catalogue, Picks picks, List<RunWind> winds) {
        this.job = job;
        this.catalogue = catalogue;
        this.display = job.display();
        for (int i = 0; i < job.runs().size(); i++) {
            Run run = job.runs().get(i);
            Optional<FenceStyle> style = catalogue.style(run.style());
            boolean engineered = job.basisOf(run) == DesignBasis.ENGINEERED
                    || job.site().forcesEngineered()
                    || run.sides().stream()
                            .anyMatch(side -> side.basis().or(DesignBasis.CUSTOMARY) == DesignBasis.ENGINEERED);
            if (style.isEmpty()) continue;
            RunWind wind = winds.get(i);
            Engineered one = new Engineered(wind, wind.designOfWalls(), run, picks.of(run), style.get());
            all.put(run.id(), one);
            if (engineered) runs.put(run.id(), one);
        }
    }

    /** What each run's posts would stand apart by the wind alone, at its start and in its middle: solved for, whatever the basis. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        all.forEach((run, one) -> {
            findings.add(solved(run, one));
            for (RunSide side : one.run().sides()) findings.add(side(one.run(), side));
        });
        return findings;
    }

    /** What a side is built on by itself. */
    private Finding side(Run run, RunSide side) {
        DesignBasis basis = job.basisAt(run, side.from().inches() + ON);
        String posts = side.post()
                .value()
                .flatMap(catalogue::post)
                .map(post -> ", on posts of its own, " + post.name())
                .orElse("");
        return Checked.note(
                "post.side",
                Severity.PASS,
                run.id(),
                run.id() + " from station " + display.length(side.from()) + " to " + display.length(side.to()) + " is "
                        + basis.key() + posts + "; the rest of the run is "
                        + (job.site().forcesEngineered() ? basis : job.basisOf(run)).key() + ".",
                Basis.job("sides of a run"));
    }

    private Finding solved(String run, Engineered one) {
        Length nearEnd = ASKED;
        Length inside = Length.ZERO;
        for (int wall = 0; wall < one.walls().size() && wall < MOST_WALLS; wall++) {
            Length length = one.wind().wallLength(wall);
            Length first = spacing(one, wall, length, Length.ZERO);
            Length middle = spacing(one, wall, length, length.times(0.5));
            if (first.compareTo(nearEnd) < 0) nearEnd = first;
            if (middle.compareTo(inside) > 0) inside = middle;
            if (first.compareTo(inside) > 0) inside = first;
        }
        boolean varies = inside.inches() - nearEnd.inches() > 1;
        String apart = display.length(new Length(Math.floor(inside.inches())));
        String words = inside.compareTo(ASKED) >= 0 && !varies
                ? "The wind on the posts of " + run + " sets no limit to their spacing below " + display.length(ASKED)
                : varies
                        ? "By the wind the posts of " + run + " may stand " + apart + " apart inside, "
                                + display.length(new Length(Math.floor(nearEnd.inches())))
                                + " near a free end or corner, where it is stronger"
                        : "By the wind the posts of " + run + " may stand " + apart + " apart";
        boolean governs = runs.containsKey(run);
        return Checked.note(
                "post.spacing",
                Severity.PASS,
                run,
                words + ", the bending of the post solved for"
                        + (governs
                                ? "; the layout keeps to it and to "
                                        + display.length(one.run().maxBay()) + " at most."
                                : "; on the customary basis the layout keeps to "
                                        + display.length(one.run().maxBay()) + " and tells the rated gust."),
                Basis.clause("ASCE 7-16 29.3; AISC 360-22 H1 or NDS 2018 3.9, solved for"));
    }

    private Length spacing(Engineered one, int wall, Length length, Length from) {
        double stationIn = one.wind().stationOn(wall, from).inches();
        return PostSpacing.longestFrom(one.walls().get(wall), length, from, allowable(one, stationIn), ASKED);
    }

    private Moment allowable(Engineered one, double stationIn) {
        Run run = one.run();
        PostStock post = one.pick().postAt(stationIn);
        Length height = run.infill().plus(run.bottomGap());
        double down = post.weightOf(height).pounds()
                + BayWeight.atMost(run.maxBay(), run.infill(), one.style(), catalogue)
                        .pounds();
        PostStrength strength = PostStrength.of(post);
        return strength.allowableInWind().times(strength.roomBeside(Force.pounds(down), height));
    }

    @Override
    public Length longestFrom(String run, Offset from) {
        Engineered engineered = runs.get(run);
        if (engineered == null || job.basisAt(engineered.run(), from.inches() + ON) != DesignBasis.ENGINEERED)
            return NONE.longestFrom(run, from);
        int wall = engineered.wind().wallAt(from);
        return PostSpacing.longestFrom(
                engineered.walls().get(wall),
                engineered.wind().wallLength(wall),
                engineered.wind().alongWall(wall, from),
                allowable(engineered, from.inches() + ON),
                engineered.run().maxBay());
    }
}
