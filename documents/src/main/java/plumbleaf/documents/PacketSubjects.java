package plumbleaf.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.packet.GatePaper;
import plumbleaf.documents.packet.PacketSubject;
import plumbleaf.documents.packet.SlidePaper;
import plumbleaf.documents.paper.Said;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.SagBar;
import plumbleaf.documents.view.SlideSubject;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HingeUse;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.TradeNames;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Volume;
import plumbleaf.engine.strength.RatedGust;

/** A design turned into what drawings and papers are made from. The one place that knows both shapes. */
public final class PacketSubjects {
    private PacketSubjects() {}

    public static PacketSubject of(Job job, Design design, PaperOptions options) {
        return new PacketSubject(
                job,
                design.ground(),
                design.layout(),
                posts(design),
                design.posts(),
                gates(job, design),
                slides(job, design),
                List.of(design.quote().takeoff()),
                List.of(design.quote().load()),
                List.of(design.quote().labour()),
                design.quote().schedule(),
                List.of(design.quote().price()),
                gusts(job, design),
                design.findings(),
                new Said(job.display(), TradeNames.metric(design)),
                options);
    }

    /** Every post of the layout; a wall is drawn without a hole. */
    public static List<PostDetail> posts(Design design) {
        List<PostDetail> posts = new ArrayList<>();
        for (Post post : design.layout().posts()) {
            Optional<PostDesign> designed = post.role() == PostRole.WALL ? Optional.empty() : design.post(post.id());
            posts.add(designed.map(is -> new PostDetail(
                            post,
                            is.hole(),
                            is.depth(),
                            is.length(),
                            is.section().name(),
                            is.concrete().volume(),
                            is.depthBy()))
                    .orElseGet(() -> new PostDetail(
                            post, Length.ZERO, Length.ZERO, post.outOfGround(), "", Volume.ZERO, "the wall")));
        }
        return List.copyOf(posts);
    }

    /** The gates that have a leaf to draw, in the order of the job. */
    public static List<GatePaper> gates(Job job, Design design) {
        List<GatePaper> gates = new ArrayList<>();
        for (GateDesign gate : design.gates()) {
            if (gate.plan().hangs().isEmpty()) continue;
            gates.add(new GatePaper(
                    gate.asked(),
                    subjects(job, design, gate),
                    gate.hung().stream()
                            .map(hung -> hangs(hung, gate.loadPath()))
                            .toList(),
                    gate.pair(),
                    gate.rated().map(RatedGust::parts).orElse(List.of())));
        }
        return List.copyOf(gates);
    }

    /** The gates whose leaf slides, in the order of the job. */
    public static List<SlidePaper> slides(Job job, Design design) {
        List<SlidePaper> slides = new ArrayList<>();
        for (GateDesign gate : design.gates())
            slide(job, design, gate)
                    .ifPresent(subject -> slides.add(new SlidePaper(
                            gate.asked(), gate.plan().sentence(), subject, gate.slide(), gate.loadPath())));
        return List.copyOf(slides);
    }

    /** What the drawings of a slide gate need; empty for another. */
    public static Optional<SlideSubject> slide(Job job, Design design, GateDesign gate) {
        return gate.plan()
                .slide()
                .map(plan -> new SlideSubject(
                        plan,
                        gate.parts(),
                        post(design, gate.hingePost()),
                        post(design, gate.latchPost()),
                        gate.slide().map(is -> post(design, is.rearPost())),
                        job.display()));
    }

    private static Post post(Design design, String id) {
        return design.layout().posts().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No post " + id));
    }

    /** The leaves of a gate, each from its own pin and with its own post first. */
    public static List<GateSubject> subjects(Job job, Design design, GateDesign gate) {
        List<GateSubject> subjects = new ArrayList<>();
        for (int at = 0; at < gate.plan().hangs().size(); at++) {
            Offset pin = gate.plan().hangs().get(at).pinElevation();
            String hinge = at == 0 ? gate.hingePost() : gate.latchPost();
            String latch = at == 0 ? gate.latchPost() : gate.hingePost();
            subjects.add(new GateSubject(
                    gate.plan(),
                    at,
                    at == 0 ? gate.parts() : gate.parts().turned(),
                    hinge,
                    latch,
                    top(design, hinge).minus(pin),
                    top(design, latch).minus(pin),
                    gate.asked().latch().height(),
                    job.display()));
        }
        return List.copyOf(subjects);
    }

    private static Offset top(Design design, String post) {
        return design.layout().posts().stream()
                .filter(each -> each.id().equals(post))
                .map(Post::top)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No post " + post));
    }

    private static GatePaper.Hangs hangs(HungLeaf hung, List<LinkUse> loadPath) {
        List<SagBar.Limit> limits = List.of(
                new SagBar.Limit("the eye sees", hung.limits().eye()),
                new SagBar.Limit("the latch takes", hung.limits().latch()));
        List<GatePaper.HingePull> pulls = new ArrayList<>();
        for (HingeUse use : hung.hinges())
            pulls.add(new GatePaper.HingePull(
                    use.id(),
                    use.z(),
                    use.horizontal(),
                    use.capacity(),
                    use.worst().combination().key() + ", leaf "
                            + use.worst().state().key()));
        return new GatePaper.Hangs(hung.sag(), limits, hung.cases(), pulls, loadPath, hung.workings());
    }

    /** What the build is rated for, in one sentence, never hidden. */
    private static List<String> gusts(Job job, Design design) {
        List<String> sentences = new ArrayList<>();
        boolean engineered =
                job.site().basis() == DesignBasis.ENGINEERED || job.site().forcesEngineered();
        String basis = engineered
                ? "Built to the engineered basis for a "
                        + mph(job.site().wind().speed().mph()) + " mph design gust"
                : "Built to the custom of the trade, not to the code's "
                        + mph(job.site().wind().speed().mph()) + " mph design gust";
        sentences.add(design.rated()
                .map(gust -> basis + "; the weakest part, " + gust.allowableLink() + ", reaches its allowable at "
                        + mph(gust.allowable().mph()) + " mph, and the first is expected to give at "
                        + mph(gust.ultimate().mph()) + " mph (" + gust.ultimateLink() + ").")
                .orElse(basis
                        + (isGroundUnknown(design)
                                ? "; which gust it stands is not told, since nobody has judged the ground that its footings stand in."
                                : ".")));
        return sentences;
    }

    private static boolean isGroundUnknown(Design design) {
        return design.findings().stream().anyMatch(finding -> finding.id().equals("footing.soil"));
    }

    private static String mph(double value) {
        return DecimalText.whole(value);
    }
}
