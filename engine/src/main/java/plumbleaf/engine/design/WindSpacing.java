package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.SpacingLimit;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.PostSpacing;
import plumbleaf.engine.strength.PostStrength;

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

    private static final double ROUNDING_IN = 1e-6;

    /** Nearer than this no posts are laid out. */
    private static final Length LEAST = SpacingLimit.SHORTEST;

    /** Farther apart no rail reaches. */
    private static final Length ASKED = Length.feet(20);

    private final Map<String, Engineered> runs = new LinkedHashMap<>();
    private final Map<String, Engineered> all = new LinkedHashMap<>();
    private final Map<Bears, Moment> allowables = new LinkedHashMap<>();
    private final Map<Place, Length> longest = new LinkedHashMap<>();
    private final Job job;
    private final Catalogue catalogue;
    private final DisplayUnits display;

    /**
     * @param run as asked for
     * @param pick what its posts are of, side by side
     * @param stands how high
     */
    private record Engineered(RunWind wind, Run run, PickedRun pick, FenceStyle style, StandsHigh stands) {}

    /**
     * Before anything is laid out every fence stands as high as its run asks.
     *
     * @param winds on the runs of the job, in their order
     */
    static WindSpacing asAsked(Job job, Catalogue catalogue, Picks picks, List<RunWind> winds) {
        return new WindSpacing(job, catalogue, picks, winds, StandsHigh::asAsked);
    }

    /** @param built as the yard was laid out, for how high its fences stand */
    static WindSpacing asBuilt(Job job, Catalogue catalogue, Picks picks, List<RunWind> winds, Layout built) {
        return new WindSpacing(job, catalogue, picks, winds, run -> StandsHigh.of(run, built.run(run.id())));
    }

    private WindSpacing(
            Job job, Catalogue catalogue, Picks picks, List<RunWind> winds, Function<Run, StandsHigh> heights) {
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
            Engineered one = new Engineered(wind, run, picks.of(run), style.get(), heights.apply(run));
            all.put(run.id(), one);
            if (engineered) runs.put(run.id(), one);
        }
    }

    /** Whether the posts of every engineered fence stand close enough for what is known of its height. */
    boolean holds(Layout layout) {
        return runs.values().stream()
                .filter(one -> !one.stands().isAsAsked())
                .flatMap(one -> layout.run(one.run().id()).bays().stream())
                .allMatch(bay -> bay.level().inches()
                        <= longestFrom(bay.run(), bay.start()).inches() + ROUNDING_IN);
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
        String bays = side.maxBay()
                .value()
                .map(most -> ", its posts " + display.length(most) + " apart at most")
                .orElse("");
        return Checked.note(
                "post.side",
                Severity.PASS,
                run.id(),
                run.id() + " from station " + display.length(side.from()) + " to " + display.length(side.to()) + " is "
                        + basis.key() + posts + bays + "; the rest of the run is "
                        + (job.site().forcesEngineered() ? basis : job.basisOf(run)).key() + ".",
                Basis.job("sides of a run"));
    }

    private Finding solved(String run, Engineered one) {
        Length nearEnd = ASKED;
        Length inside = Length.ZERO;
        for (int wall = 0; wall < one.wind().designOfWalls().size() && wall < MOST_WALLS; wall++) {
            Length length = one.wind().wallLength(wall);
            Length first = spacing(one, wall, length, Length.ZERO);
            Length middle = spacing(one, wall, length, length.times(0.5));
            if (first.compareTo(nearEnd) < 0) nearEnd = first;
            if (middle.compareTo(inside) > 0) inside = middle;
            if (first.compareTo(inside) > 0) inside = first;
        }
        String words = inside.compareTo(LEAST) < 0
                ? "By the wind the posts of " + run + " are too weak however close they stand: no nearer than "
                        + display.length(LEAST) + " apart is laid out, and heavier posts are wanted"
                : apart(run, inside, nearEnd);
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

    private String apart(String run, Length inside, Length nearEnd) {
        boolean varies = inside.inches() - nearEnd.inches() > 1;
        String apart = display.length(new Length(Math.floor(inside.inches())));
        if (inside.compareTo(ASKED) >= 0 && !varies)
            return "The wind on the posts of " + run + " sets no limit to their spacing below " + display.length(ASKED);
        String all = "By the wind the posts of " + run + " may stand " + apart + " apart";
        if (!varies) return all;
        return nearEnd.compareTo(LEAST) < 0
                ? all
                        + " inside; near a free end or corner, where it is stronger, they are too weak however close they stand"
                : all + " inside, " + display.length(new Length(Math.floor(nearEnd.inches())))
                        + " near a free end or corner, where it is stronger";
    }

    private Length spacing(Engineered one, int wall, Length length, Length from) {
        return PostSpacing.longestFrom(standing(one, wall), length, from, ASKED);
    }

    private PostSpacing.Standing standing(Engineered one, int wall) {
        return (fromIn, toIn) -> {
            double firstIn = stationOn(one, wall, fromIn);
            double lastIn = stationOn(one, wall, toIn);
            AsBuilt built = one.stands().between(Math.min(firstIn, lastIn), lastIn);
            return new PostSpacing.Met(one.wind().standing(wall, built), allowable(one, lastIn, built));
        };
    }

    private static double stationOn(Engineered one, int wall, double alongIn) {
        return one.wind().stationOn(wall, new Length(alongIn)).inches();
    }

    /** A place on a run: a yard is laid out several times over, and asks of the same ones again. */
    private record Place(String run, double stationIn) {}

    /** What a post of a run bears, where the fence stands so high. */
    private record Bears(String run, String post, AsBuilt built) {}

    private Moment allowable(Engineered one, double stationIn, AsBuilt built) {
        PostStock post = one.pick().postAt(stationIn + ON);
        return allowables.computeIfAbsent(
                new Bears(one.run().id(), post.id(), built), asked -> allowable(one, post, built));
    }

    private Moment allowable(Engineered one, PostStock post, AsBuilt built) {
        double down = post.weightOf(built.top()).pounds()
                + BayWeight.atMost(one.run().maxBay(), built.surface(), one.style(), catalogue)
                        .pounds();
        PostStrength strength = PostStrength.of(post);
        return strength.allowableInWind().times(strength.roomBeside(Force.pounds(down), built.top()));
    }

    @Override
    public Length longestFrom(String run, Offset from) {
        Engineered one = runs.get(run);
        if (one == null) return NONE.longestFrom(run, from);
        Place place = new Place(run, from.inches());
        Length known = longest.get(place);
        if (known != null) return known;
        Length found = longestFrom(one, from);
        longest.put(place, found);
        return found;
    }

    private Length longestFrom(Engineered one, Offset from) {
        if (!isEngineered(one.run(), from.inches())) return beforeEngineered(one.run(), from);
        int wall = one.wind().wallAt(from);
        return PostSpacing.longestFrom(
                standing(one, wall),
                one.wind().wallLength(wall),
                one.wind().alongWall(wall, from),
                one.run().maxBay());
    }

    /** One look at the bay that is asked about, where {@link #longestFrom} looks at a dozen for the longest. */
    @Override
    public boolean spans(String run, Offset from, Offset to) {
        Engineered one = runs.get(run);
        if (one == null || !isEngineered(one.run(), from.inches()))
            return to.minus(from).inches() <= longestFrom(run, from).inches();
        Length bay = Length.inches(to.minus(from).inches());
        if (bay.compareTo(one.run().maxBay()) > 0) return false;
        int wall = one.wind().wallAt(from);
        return PostSpacing.spans(
                standing(one, wall), one.wind().wallLength(wall), one.wind().alongWall(wall, from), bay);
    }

    /**
     * A bay may reach from a customary stretch into an engineered one, but no farther than a bay that begins with it: so a post farther on never reaches less far, which
     * the search of posts builds on.
     */
    private Length beforeEngineered(Run run, Offset from) {
        double nextIn = Double.POSITIVE_INFINITY;
        for (RunSide side : run.sides())
            for (Length edge : List.of(side.from(), side.to()))
                if (edge.inches() > from.inches() && edge.inches() < nextIn && isEngineered(run, edge.inches()))
                    nextIn = edge.inches();
        Length free = NONE.longestFrom(run.id(), from);
        if (nextIn == Double.POSITIVE_INFINITY) return free;
        Length bound = longestFrom(run.id(), Offset.inches(nextIn)).plus(Length.inches(nextIn - from.inches()));
        return bound.compareTo(free) < 0 ? bound : free;
    }

    private boolean isEngineered(Run run, double stationIn) {
        return job.basisAt(run, stationIn + ON) == DesignBasis.ENGINEERED;
    }
}
