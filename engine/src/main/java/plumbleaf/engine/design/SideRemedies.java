package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.DepthCause;
import plumbleaf.engine.footing.FootingRules;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.PostStrength;

/**
 * What cures posts of a run that bend too much, or stand too shallow: bigger posts or deeper holes where they fail and nowhere else, and the same all along to hold
 * its price against. The run is laid out and its posts are checked again with each before it is offered. Check: SideRemediesTest.
 */
final class SideRemedies {
    private static final Set<String> BENDS = ordered("post.wind", "post.strength");
    private static final Set<String> SHALLOW = ordered("footing.depth", "footing.frost", "footing.loose-top");

    /** Sizes of post that are laid out and checked for one place. Judgement: the next two or three sizes are what a yard would think of. */
    private static final int MOST_SIZES = 3;

    /** A run that fails in more places than this is built in whole sides. Judgement: nobody marks more kinds of post on a plan. */
    private static final int MOST_STRETCHES = 3;

    private final Job job;
    private final Catalogue catalogue;
    private final PriceBook book;
    private final FootingRules rules;
    private final Layout layout;
    private final List<PostDesign> posts;

    /** New posts of runs, each by its own name and by that of its footing. */
    private final Map<String, PostDesign> byPart = new LinkedHashMap<>();

    private final Function<Job, List<PostDesign>> again;
    private final Map<String, List<Remedy>> offers = new LinkedHashMap<>();
    private int trials;

    /** @param again lays a changed job out and designs its posts; none where it finds no place for a gate */
    SideRemedies(
            Job job,
            Catalogue catalogue,
            PriceBook book,
            FootingRules rules,
            Layout layout,
            List<PostDesign> posts,
            Function<Job, List<PostDesign>> again) {
        this.job = job;
        this.catalogue = catalogue;
        this.book = book;
        this.rules = rules;
        this.layout = layout;
        this.posts = posts;
        this.again = again;
        for (PostDesign post : posts) {
            if (!isOwn(post)) continue;
            byPart.put(post.id(), post);
            byPart.put(post.footingId(), post);
        }
        this.trials = RemedyPrices.MOST_POSTS / Math.max(1, posts.size());
    }

    private static Set<String> ordered(String... ids) {
        return new LinkedHashSet<>(List.of(ids));
    }

    /** The findings, those on posts of a run with what cures them. */
    List<Finding> offered(List<Finding> findings) {
        List<Finding> said = new ArrayList<>();
        for (Finding finding : findings) {
            boolean mine = finding instanceof Checked
                    && finding.severity() == Severity.MUST_FIX
                    && (BENDS.contains(finding.id()) || SHALLOW.contains(finding.id()));
            Optional<PostDesign> post = mine ? Optional.ofNullable(byPart.get(finding.part())) : Optional.empty();
            said.add(post.isPresent() ? cured((Checked) finding, post.get()) : finding);
        }
        return said;
    }

    /** Of a run, and new. */
    private static boolean isOwn(PostDesign post) {
        return post.post().gate().isEmpty()
                && post.post()
                        .support()
                        .match(
                                dug -> true,
                                driven -> false,
                                plate -> true,
                                socket -> true,
                                wall -> false,
                                old -> false);
    }

    private Checked cured(Checked finding, PostDesign post) {
        String run = post.post().run();
        boolean bends = BENDS.contains(finding.id());
        List<Remedy> cures = offers.computeIfAbsent(run + " " + bends, key -> bends ? bigger(run) : deeper(run));
        return cures.isEmpty() ? finding : finding.withRemedies(cures);
    }

    private List<PostDesign> ofRun(List<PostDesign> all, String run) {
        return all.stream()
                .filter(post -> isOwn(post) && post.post().run().equals(run))
                .toList();
    }

    private static Set<String> failing(List<PostDesign> posts, Set<String> checks) {
        Set<String> failing = new LinkedHashSet<>();
        for (PostDesign post : posts)
            if (post.findings().stream()
                    .anyMatch(one -> one.severity() == Severity.MUST_FIX && checks.contains(one.id())))
                failing.add(post.id());
        return failing;
    }

    /** A change to posts, on a side alone or on the whole run. */
    private record Change(String id, String words, Function<RunSide, RunSide> onSide, String onRun) {}

    private List<Remedy> bigger(String run) {
        List<PostDesign> own = ofRun(posts, run);
        Set<String> failing = failing(own, BENDS);
        List<Change> changes = new ArrayList<>();
        for (PostStock post :
                stronger(own.stream().filter(one -> failing.contains(one.id())).toList()))
            changes.add(new Change(
                    "bigger-post",
                    "on " + post.name(),
                    side -> side.withPost(post.id()),
                    "builds." + run + ".post=" + post.id()));
        return offers(run, own, failing, changes, BENDS);
    }

    /** The next sizes of their kind, the lightest first, that bear what the posts bear now. */
    private List<PostStock> stronger(List<PostDesign> weak) {
        if (weak.isEmpty()) return List.of();
        PostStock now = weak.get(0).section();
        List<PostStock> kind = now.match(
                steel -> catalogue.sections().stream()
                        .filter(other -> other.family().equals(steel.family()) && other.shape() == steel.shape())
                        .map(other -> (PostStock) other)
                        .toList(),
                wood -> List.<PostStock>copyOf(catalogue.woodPosts()));
        List<PostStock> sold =
                kind.stream().filter(post -> !book.of(post.id()).isEmpty()).toList();
        return (sold.isEmpty() ? kind : sold)
                .stream()
                        .filter(post -> weak.stream().allMatch(each -> bears(post, each)))
                        .sorted(Comparator.comparingDouble((PostStock post) ->
                                        post.weightOf(Length.feet(1)).pounds())
                                .thenComparing(PostStock::id))
                        .limit(MOST_SIZES)
                        .toList();
    }

    private static boolean bears(PostStock stock, PostDesign post) {
        PostStrength strength = PostStrength.of(stock);
        Length height = post.post().outOfGround();
        return post.actions().stream().allMatch(one -> strength.ratio(one, height) <= 1);
    }

    private List<Remedy> deeper(String run) {
        List<PostDesign> own = ofRun(posts, run);
        Set<String> failing = failing(own, SHALLOW);
        Length needed = Length.ZERO;
        for (PostDesign post : own) {
            if (!failing.contains(post.id()) || post.footing().isEmpty()) continue;
            if (post.footing().get().governedBy() != DepthCause.GIVEN) return List.of();
            Length depth = post.footing().get().depthNeeded();
            if (depth.compareTo(needed) > 0) needed = depth;
        }
        Length deep = rules.rounded(needed);
        Change change = new Change(
                "deeper-hole",
                job.display().length(deep) + " deep",
                side -> side.withDepth(deep),
                "builds." + run + ".depth=" + LengthText.exact(deep.inches()));
        return offers(run, own, failing, List.of(change), SHALLOW);
    }

    private List<Remedy> offers(
            String id, List<PostDesign> own, Set<String> failing, List<Change> changes, Set<String> checks) {
        if (failing.isEmpty()) return List.of();
        Run run = job.run(id);
        List<FailingStretches.Stretch> tight =
                FailingStretches.of(layout.run(id).line().line(), own, failing);
        List<FailingStretches.Stretch> sides =
                FailingStretches.sides(layout.run(id).line().line(), own, failing);
        List<Remedy> found = new ArrayList<>();
        if (failing.size() < own.size()) {
            Optional<Remedy> here = tight.size() > MOST_STRETCHES
                    ? Optional.empty()
                    : first(changes, change -> onSides(run, tight, change, checks));
            here.or(() -> first(changes, change -> onSides(run, sides, change, checks)))
                    .ifPresent(found::add);
        }
        first(changes, change -> everywhere(id, change, checks)).ifPresent(found::add);
        return found;
    }

    private static Optional<Remedy> first(List<Change> changes, Function<Change, Optional<Remedy>> offer) {
        for (Change change : changes) {
            Optional<Remedy> holds = offer.apply(change);
            if (holds.isPresent()) return holds;
        }
        return Optional.empty();
    }

    private Optional<Remedy> onSides(
            Run run, List<FailingStretches.Stretch> stretches, Change change, Set<String> checks) {
        List<RunSide> sides = run.sides();
        List<String> where = new ArrayList<>();
        for (FailingStretches.Stretch stretch : stretches) {
            sides = RunSides.changed(sides, stretch.from(), stretch.to(), change.onSide()::apply);
            where.add(stretch.posts() + " (station " + job.display().length(stretch.from()) + " to "
                    + job.display().length(stretch.to()) + ")");
        }
        String edit = "runs[" + run.id() + "].sides=" + RunSides.text(sides);
        String words = "set " + String.join(" and ", where) + " " + change.words() + ", the rest as it is";
        return tried(run.id(), change.id() + "-there", words, edit, checks);
    }

    private Optional<Remedy> everywhere(String run, Change change, Set<String> checks) {
        // A side that pins its own goes along: what is said of the whole run does not reach it.
        List<RunSide> sides = job.run(run).sides().stream()
                .map(side -> side.post().isSaid() || side.depth().isSaid()
                        ? change.onSide().apply(side)
                        : side)
                .toList();
        String edit = change.onRun()
                + (sides.equals(job.run(run).sides())
                        ? ""
                        : Remedy.AND_THEN + "runs[" + run + "].sides=" + RunSides.text(sides));
        return tried(run, change.id(), "set every post of " + run + " " + change.words(), edit, checks);
    }

    /** Laid out and checked with the change; empty where posts of the run still fail, or fail otherwise than before. */
    private Optional<Remedy> tried(String run, String id, String words, String edit, Set<String> checks) {
        if (trials-- <= 0) return Optional.empty();
        List<PostDesign> then = RemedyEdit.on(job, edit).map(again).orElse(List.of());
        List<PostDesign> own = ofRun(then, run);
        if (own.isEmpty() || !failing(own, checks).isEmpty()) return Optional.empty();
        Set<String> before = mustFix(ofRun(posts, run));
        if (!before.containsAll(mustFix(own))) return Optional.empty();
        double ratio = own.stream()
                .flatMap(post -> post.findings().stream())
                // What the customary basis only tells as a caution is not what this cures.
                .filter(one -> checks.contains(one.id()) && one.severity() != Severity.CAUTION)
                .flatMap(one -> one.measure().stream())
                .flatMapToDouble(measure -> measure.ratio().stream())
                .max()
                .orElse(0);
        return Optional.of(new Remedy(
                id,
                words + ": then " + DecimalText.fixed(ratio, 2),
                OptionalDouble.of(ratio),
                Optional.empty(),
                Optional.of(edit)));
    }

    private static Set<String> mustFix(List<PostDesign> posts) {
        Set<String> ids = new LinkedHashSet<>();
        for (PostDesign post : posts)
            for (Finding finding : post.findings()) if (finding.severity() == Severity.MUST_FIX) ids.add(finding.id());
        return ids;
    }
}
