package plumbleaf.browser;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.view.GateElevation;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PlacedGate;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.RunPosts;
import plumbleaf.documents.view.RunProfile;
import plumbleaf.documents.view.Site;
import plumbleaf.documents.view.SitePlan;
import plumbleaf.documents.view.SlideElevation;
import plumbleaf.documents.view.SlideOnProfile;
import plumbleaf.documents.view.SlideSubject;
import plumbleaf.documents.view.StationNote;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** The drawings that one wants in the yard, sized so that their lettering reads well across a phone: the plan, each run, each gate and its swing. */
final class PageDrawings {
    /** Across a phone a drawing is taken to be this wide, in paper inches: a smaller one would print no larger letters. */
    private static final double WIDE_IN = 5;

    private static final double HIGH_IN = 5;

    /** The most of a run that is drawn in one strip: 24 ft. */
    private static final double STRIP_IN = 288;

    private final Design design;
    private final List<Node> drawn = new ArrayList<>();

    private PageDrawings(Design design) {
        this.design = design;
    }

    /** Each with its name and its SVG. */
    static List<Node> of(Design design) {
        PageDrawings drawings = new PageDrawings(design);
        if (!design.layout().runs().isEmpty()) drawings.site();
        for (RunLayout run : design.layout().runs())
            for (RunProfile.Strip strip : drawings.strips(run)) drawings.put(drawings.drawn(strip));
        for (GateDesign gate : design.gates()) drawings.gate(gate);
        return List.copyOf(drawings.drawn);
    }

    /** The strips of one run, those drawn that are not known. */
    static Node strips(Design design, String run, List<String> known) {
        PageDrawings drawings = new PageDrawings(design);
        RunLayout laid = design.layout().run(run);
        return Json.list(drawings.strips(laid), strip -> {
            String key = key(strip);
            Json.Members one = Json.object().put("key", key);
            if (!known.contains(key)) one.put("svg", SvgPlot.inPage(drawings.drawn(strip)));
            return one.build();
        });
    }

    /** The same where a strip shows the same posts and bays. */
    private static String key(RunProfile.Strip strip) {
        int key = 0;
        for (PostDetail post : strip.posts()) if (strip.shows(post.post().station())) key = 31 * key + post.hashCode();
        for (Bay bay : strip.run().bays())
            if (strip.shows(bay.start()) || strip.shows(bay.end())) key = 31 * key + bay.hashCode();
        return strip.from().hashCode() + "/" + key;
    }

    private void site() {
        List<SlidePlan> slides = design.gates().stream()
                .flatMap(gate -> gate.plan().slide().stream())
                .toList();
        Site site = new Site(design.job(), design.layout(), design.ground(), placed(design.gates()), slides);
        Box extents = site.extents();
        put(SitePlan.of(site, fitting(extents.width() * 1.15, extents.height() * 1.3)));
    }

    /** Unrolled, a long one in strips alike. */
    private List<RunProfile.Strip> strips(RunLayout run) {
        double length = run.line().line().length().inches();
        int count = (int) Math.max(1, Math.ceil(length / STRIP_IN));
        List<GateDesign> own = design.gates().stream()
                .filter(gate -> gate.asked().run().equals(run.run()))
                .toList();
        Profile profile = design.ground().profile(run.run());
        List<PostDetail> posts = RunPosts.on(run, PacketSubjects.posts(design));
        List<SlideOnProfile> slides = own.stream()
                .flatMap(gate -> PacketSubjects.slide(design.job(), design, gate).stream())
                .map(SlideOnProfile::new)
                .toList();
        List<StationNote> notes = StationNote.of(design.job(), design.layout(), run, profile);
        List<RunProfile.Strip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++)
            strips.add(new RunProfile.Strip(
                    run,
                    profile,
                    posts,
                    placed(own),
                    slides,
                    notes,
                    Offset.inches(length * i / count),
                    Offset.inches(length * (i + 1) / count)));
        return strips;
    }

    private Drawing drawn(RunProfile.Strip strip) {
        double length = strip.to().inches() - strip.from().inches();
        return RunProfile.of(strip, design.job().display(), fitting(length, 1));
    }

    private void gate(GateDesign gate) {
        for (GateSubject leaf : leaves(gate)) {
            double wide = leaf.leaf().width().inches() * 1.5;
            double high = leaf.leaf().outline().topAtPin().inches() * 1.3;
            put(GateElevation.frame(leaf, fitting(wide, high)));
            double reach = leaf.leaf().outline().latchEdge().inches();
            put(SwingPlan.of(
                    leaf.mark(), leaf.swing(), reach, design.job().display(), fitting(reach * 2.2, reach * 2.2)));
        }
        PacketSubjects.slide(design.job(), design, gate).ifPresent(this::slide);
    }

    private void slide(SlideSubject slide) {
        double wide = slide.plan().shape().length().inches()
                + slide.plan().shape().travel().inches();
        double high = slide.plan().leaf().outline().topAtPin().inches();
        put(SlideElevation.picture(slide, fitting(wide * 1.1, high * 1.6)));
    }

    private List<PlacedGate> placed(List<GateDesign> gates) {
        return gates.stream()
                .flatMap(gate -> leaves(gate).stream())
                .map(PlacedGate::new)
                .toList();
    }

    /** The leaves of a gate that was worked out. */
    private List<GateSubject> leaves(GateDesign gate) {
        boolean stands = !gate.plan().hangs().isEmpty() && isPost(gate.hingePost()) && isPost(gate.latchPost());
        return stands ? PacketSubjects.subjects(design.job(), design, gate) : List.of();
    }

    private boolean isPost(String id) {
        return design.layout().posts().stream().anyMatch(post -> post.id().equals(id));
    }

    private void put(Drawing drawing) {
        drawn.add(Json.object()
                .put("name", drawing.name())
                .put("svg", SvgPlot.inPage(drawing))
                .build());
    }

    /** On a screen a drawing fills its place; its scale needs no usual name. */
    private static Scale fitting(double realWide, double realHigh) {
        return Scale.ratio(Math.max(realWide / WIDE_IN, realHigh / HIGH_IN));
    }
}
