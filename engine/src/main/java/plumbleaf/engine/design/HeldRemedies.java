package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PostStretch;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.SocketHold;
import plumbleaf.engine.support.Support;

/**
 * What cures posts that concrete which is there does not hold: a socket no deeper than its concrete, where that holds them; of a run's posts holes in the ground, laid
 * out and checked again before they are offered. Check: HeldRemediesTest.
 */
final class HeldRemedies {
    private static final List<String> AREAS = List.of("socket.", "plate.", "anchor.", "slab.");

    private final Job job;
    private final List<PostDesign> posts;
    private final Set<String> before;
    private final Function<Job, Optional<YardWork>> again;
    private final Map<String, PostDesign> byId = new LinkedHashMap<>();
    private final Map<String, String> places = new LinkedHashMap<>();
    private final Map<String, List<Remedy>> offers = new LinkedHashMap<>();
    private int trials;

    /**
     * @param yard as it stands
     * @param posts designed in it
     * @param gates which know their posts
     * @param again lays a changed job out; empty where one of its gates finds no place
     */
    HeldRemedies(
            Job job,
            YardWork yard,
            List<PostDesign> posts,
            List<GateDesign> gates,
            Function<Job, Optional<YardWork>> again) {
        this.job = job;
        this.posts = posts;
        this.again = again;
        this.before = mustFix(yard, posts);
        for (PostDesign post : posts) {
            byId.put(post.id(), post);
            if (post.post().gate().isEmpty()) places.put(post.id(), placeOnRun(post));
        }
        for (GateDesign gate : gates) {
            places.put(gate.hingePost(), "gates[" + gate.id() + "].hingePost.support");
            places.put(gate.latchPost(), "gates[" + gate.id() + "].latchPost.support");
            gate.slide()
                    .ifPresent(
                            slide -> places.put(slide.rearPost(), "gates[" + gate.id() + "].slide.rearPost.support"));
        }
        this.trials = RemedyPrices.MOST_POSTS / Math.max(1, posts.size());
    }

    /** Where the job says what holds a post of a run. */
    private String placeOnRun(PostDesign post) {
        Run run = job.run(post.post().run());
        List<PostStretch> parts = run.otherPosts();
        for (int i = 0; i < parts.size(); i++)
            if (parts.get(i).holds(post.post().station().inches()))
                return "runs[" + run.id() + "].otherPosts[" + i + "].support";
        return "runs[" + run.id() + "].posts.support";
    }

    /** The findings, those on what holds a post with what cures them. */
    List<Finding> offered(List<Finding> findings) {
        List<Finding> said = new ArrayList<>();
        for (Finding finding : findings) {
            boolean mine = finding instanceof Checked
                    && finding.severity() == Severity.MUST_FIX
                    && finding.remedies().isEmpty()
                    && AREAS.stream().anyMatch(finding.id()::startsWith);
            Optional<PostDesign> post = mine ? Optional.ofNullable(byId.get(finding.part())) : Optional.empty();
            List<Remedy> cures = post.map(this::cures).orElse(List.of());
            said.add(cures.isEmpty() ? finding : ((Checked) finding).withRemedies(cures));
        }
        return said;
    }

    private List<Remedy> cures(PostDesign post) {
        String place = places.getOrDefault(post.id(), "");
        return place.isEmpty() ? List.of() : offers.computeIfAbsent(place, key -> cures(post, key));
    }

    private List<Remedy> cures(PostDesign post, String place) {
        List<Remedy> cures = new ArrayList<>();
        throughTheConcrete(post, place).ifPresent(cures::add);
        if (post.post().gate().isEmpty()) inTheGround(place).ifPresent(cures::add);
        return cures;
    }

    /** A socket that was to be deeper than its concrete, as deep as that, where it then holds every post that stands in one like it. */
    private Optional<Remedy> throughTheConcrete(PostDesign post, String place) {
        Optional<Support.CoreSocket> socket = post.post()
                .support()
                .match(dug -> none(), driven -> none(), plate -> none(), Optional::of, wall -> none(), old -> none());
        if (socket.isEmpty()) return Optional.empty();
        Length thick = socket.get().slab().thickness();
        if (socket.get().depth().compareTo(thick) <= 0) return Optional.empty();
        Support.CoreSocket shallow = new Support.CoreSocket(thick, socket.get().slab());
        double most = 0;
        for (PostDesign each : posts) {
            if (!place.equals(places.get(each.id())) || each.actions().isEmpty()) continue;
            HeldPost held = SocketHold.held(
                    each.id(),
                    each.section(),
                    shallow,
                    each.actions(),
                    job.basisAt(
                            job.run(each.post().run()), each.post().station().inches()));
            if (!mustFix(held.findings()).isEmpty()) return Optional.empty();
            most = Math.max(most, held.utilisation());
        }
        return Optional.of(cure(
                "socket-depth",
                "core no deeper than the concrete is thick, " + job.display().length(thick),
                most,
                place + ".depth=" + LengthText.exact(thick.inches())));
    }

    private static Optional<Support.CoreSocket> none() {
        return Optional.empty();
    }

    private Optional<Remedy> inTheGround(String place) {
        if (trials-- <= 0) return Optional.empty();
        String edit = place + "=new-footing";
        Optional<YardWork> yard = RemedyEdit.on(job, edit).flatMap(again);
        if (yard.isEmpty()) return Optional.empty();
        List<PostDesign> then = yard.get().posts(yard.get().unhungGates());
        if (!before.containsAll(mustFix(yard.get(), then))) return Optional.empty();
        double most = 0;
        for (PostDesign post : then)
            if (post.post().gate().isEmpty()
                    && place.startsWith("runs[" + post.post().run() + "]"))
                most = Math.max(most, worst(post.findings()));
        if (most > 1) return Optional.empty();
        return Optional.of(
                cure("dig-instead", "dig holes there instead and set the posts in new concrete", most, edit));
    }

    /** What the customary basis only tells as a caution is not what this cures. */
    private static double worst(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.CAUTION)
                .flatMap(finding -> finding.measure().stream())
                .flatMapToDouble(measure -> measure.ratio().stream())
                .max()
                .orElse(0);
    }

    private static Remedy cure(String id, String words, double ratio, String edit) {
        return new Remedy(
                id,
                words + ": then " + DecimalText.fixed(ratio, 2),
                OptionalDouble.of(ratio),
                Optional.empty(),
                Optional.of(edit));
    }

    /** What has to be mended in a line and in the posts of its runs. */
    private static Set<String> mustFix(YardWork yard, List<PostDesign> designed) {
        List<Finding> all = new ArrayList<>(yard.layout().findings());
        for (PostDesign post : designed) if (post.post().gate().isEmpty()) all.addAll(post.findings());
        return mustFix(all);
    }

    private static Set<String> mustFix(List<Finding> findings) {
        Set<String> ids = new LinkedHashSet<>();
        for (Finding finding : findings) if (finding.severity() == Severity.MUST_FIX) ids.add(finding.id());
        return ids;
    }
}
