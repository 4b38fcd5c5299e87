package plumbleaf.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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

    /** The plan's own part. */
    private static final String SITE = "site";

    /** The most of a run that is drawn in one strip: 24 ft. */
    private static final double STRIP_IN = 288;

    private final Design design;
    private final List<String> known;
    private final List<Node> drawn = new ArrayList<>();

    private PageDrawings(Design design, List<String> known) {
        this.design = design;
        this.known = known;
    }

    /**
     * Each with whose it is, a key that is the same where it is, and, where that key is not known, its name and its SVG.
     *
     * @param parts whose are asked for: {@code site}, runs and gates by their ids; none for all of them
     * @param known keys of those that the page shows already
     */
    static List<Node> of(Design design, List<String> parts, List<String> known) {
        PageDrawings drawings = new PageDrawings(design, known);
        if (isAsked(parts, SITE) && !design.layout().runs().isEmpty()) drawings.site();
        for (RunLayout run : design.layout().runs())
            if (isAsked(parts, run.run())) for (RunProfile.Strip strip : drawings.strips(run)) drawings.put(strip);
        for (GateDesign gate : design.gates()) if (isAsked(parts, gate.id())) drawings.gate(gate);
        return List.copyOf(drawings.drawn);
    }

    private static boolean isAsked(List<String> parts, String part) {
        return parts.isEmpty() || parts.contains(part);
    }

    /** The same where a strip shows the same ground, posts, bays, gates and words, in the same style, units and sense: told before it is drawn, since most strips of a run stay as they are. */
    private String key(RunProfile.Strip strip) {
        int key = Objects.hash(
                strip.profile().points(),
                design.job().display(),
                design.job().run(strip.run().run()).style(),
                strip.run().line().insideIsLeft());
        for (PostDetail post : strip.posts()) if (strip.shows(post.post().station())) key = 31 * key + post.hashCode();
        for (Bay bay : strip.run().bays())
            if (strip.shows(bay.start()) || strip.shows(bay.end())) key = 31 * key + bay.hashCode();
        for (PlacedGate gate : strip.gates())
            key = 31 * key
                    + Objects.hash(
                            gate.gate().plan().opening(),
                            gate.gate().leaf(),
                            gate.gate().parts(),
                            gate.gate().plan().pinElevation());
        return keyOf(
                strip.run().run(),
                31 * key + strip.notes().hashCode() + strip.from().hashCode());
    }

    private static String keyOf(String part, int number) {
        return part.replace(' ', '_') + "/" + Integer.toHexString(number);
    }

    private void site() {
        List<SlidePlan> slides = design.gates().stream()
                .flatMap(gate -> gate.plan().slide().stream())
                .toList();
        Site site = new Site(design.job(), design.layout(), design.ground(), placed(design.gates()), slides);
        Box extents = site.extents();
        put(SITE, SitePlan.of(site, fitting(extents.width() * 1.15, extents.height() * 1.3)));
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
            put(gate.id(), GateElevation.frame(leaf, fitting(wide, high)));
            double reach = leaf.leaf().outline().latchEdge().inches();
            put(
                    gate.id(),
                    SwingPlan.of(
                            leaf.mark(),
                            leaf.swing(),
                            reach,
                            design.job().display(),
                            fitting(reach * 2.2, reach * 2.2)));
        }
        PacketSubjects.slide(design.job(), design, gate).ifPresent(slide -> slide(gate.id(), slide));
    }

    private void slide(String gate, SlideSubject slide) {
        double wide = slide.plan().shape().length().inches()
                + slide.plan().shape().travel().inches();
        double high = slide.plan().leaf().outline().topAtPin().inches();
        put(gate, SlideElevation.picture(slide, fitting(wide * 1.1, high * 1.6)));
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

    private void put(RunProfile.Strip strip) {
        String part = strip.run().run();
        String key = key(strip);
        if (!strip.slides().isEmpty()) put(part, drawn(strip));
        else if (known.contains(key)) drawn.add(one(part, key).build());
        else {
            Drawing drawing = drawn(strip);
            drawn.add(shown(part, key, drawing, SvgPlot.inPage(drawing)));
        }
    }

    private void put(String part, Drawing drawing) {
        String svg = SvgPlot.inPage(drawing);
        String key = keyOf(part, svg.hashCode());
        drawn.add(known.contains(key) ? one(part, key).build() : shown(part, key, drawing, svg));
    }

    private static Json.Members one(String part, String key) {
        return Json.object().put("of", part).put("key", key);
    }

    private static Node shown(String part, String key, Drawing drawing, String svg) {
        return one(part, key).put("name", drawing.name()).put("svg", svg).build();
    }

    /** On a screen a drawing fills its place; its scale needs no usual name. */
    private static Scale fitting(double realWide, double realHigh) {
        return Scale.ratio(Math.max(realWide / WIDE_IN, realHigh / HIGH_IN));
    }
}
