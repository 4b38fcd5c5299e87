package plumbleaf.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
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
import plumbleaf.documents.view.StripEnds;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.ground.Profile;
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
    private final Shown shown;
    private final List<Node> drawn = new ArrayList<>();

    /** Whose is being drawn, and how many of its drawings there are so far. */
    private String part = "";

    private int count;

    private PageDrawings(Design design, Shown shown) {
        this.design = design;
        this.shown = shown;
    }

    /**
     * What a page shows already, by the keys it was given with.
     *
     * @param known are not drawn again where they are as they were
     * @param later of them are not on the screen: they stay as they are, whatever became of what they show, until they are asked for without this
     */
    record Shown(List<String> known, List<String> later) {
        static final Shown NOTHING = new Shown(List.of(), List.of());

        Shown {
            known = List.copyOf(known);
            later = List.copyOf(later);
        }

        private Optional<String> left(String place) {
            return later.stream().filter(key -> key.startsWith(place)).findFirst();
        }
    }

    /**
     * Each with whose it is, a key that is the same where it is, and, where that key is not known, its name and its SVG.
     *
     * @param parts whose are asked for: {@code site}, runs and gates by their ids; none for all of them
     */
    static List<Node> of(Design design, List<String> parts, Shown shown) {
        PageDrawings drawings = new PageDrawings(design, shown);
        if (isAsked(parts, SITE) && !design.layout().runs().isEmpty()) drawings.site();
        for (RunLayout run : design.layout().runs()) if (isAsked(parts, run.run())) drawings.run(run);
        for (GateDesign gate : design.gates()) if (isAsked(parts, gate.id())) drawings.gate(gate);
        return List.copyOf(drawings.drawn);
    }

    private static boolean isAsked(List<String> parts, String part) {
        return parts.isEmpty() || parts.contains(part);
    }

    private void begin(String next) {
        part = next;
        count = 0;
    }

    /** What of a key says which drawing of its part it is, and not what that shows. */
    private String place() {
        return part.replace(' ', '_') + "." + count + "/";
    }

    /** The same where a strip shows the same ground, posts, bays, gates and words, in the same style, units and sense: told before it is drawn, since most strips of a run stay as they are. */
    private int shownBy(RunProfile.Strip strip) {
        int key = Objects.hash(
                strip.ground(),
                strip.shownPosts(),
                strip.shownBays(),
                strip.shownNotes(),
                strip.from(),
                strip.to(),
                design.job().display(),
                design.job().run(strip.run().run()).style(),
                strip.run().line().insideIsLeft(),
                strip.run().line().line().length());
        for (PlacedGate gate : strip.shownGates())
            key = 31 * key
                    + Objects.hash(
                            gate.gate().plan().opening(),
                            gate.gate().leaf(),
                            gate.gate().parts(),
                            gate.gate().plan().pinElevation());
        return key;
    }

    private void site() {
        List<SlidePlan> slides = design.gates().stream()
                .flatMap(gate -> gate.plan().slide().stream())
                .toList();
        Site site = new Site(design.job(), design.layout(), design.ground(), placed(design.gates()), slides);
        Box extents = site.extents();
        begin(SITE);
        put(() -> SitePlan.of(site, fitting(extents.width() * 1.15, extents.height() * 1.3)));
    }

    /** Unrolled, a long one in strips about alike that are cut at posts. */
    private void run(RunLayout run) {
        begin(run.run());
        for (RunProfile.Strip strip : strips(run)) put(strip);
    }

    private List<RunProfile.Strip> strips(RunLayout run) {
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
        List<Double> ends = StripEnds.of(run, STRIP_IN);
        List<RunProfile.Strip> strips = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++)
            strips.add(new RunProfile.Strip(
                    run,
                    profile,
                    posts,
                    placed(own),
                    slides,
                    notes,
                    Offset.inches(ends.get(i - 1)),
                    Offset.inches(ends.get(i))));
        return strips;
    }

    private Drawing drawn(RunProfile.Strip strip) {
        double length = strip.to().inches() - strip.from().inches();
        return RunProfile.of(strip, design.job().display(), fitting(length, 1));
    }

    private void gate(GateDesign gate) {
        begin(gate.id());
        for (GateSubject leaf : leaves(gate)) {
            double wide = leaf.leaf().width().inches() * 1.5;
            double high = leaf.leaf().outline().topAtPin().inches() * 1.3;
            put(() -> GateElevation.frame(leaf, fitting(wide, high)));
            double reach = leaf.leaf().outline().latchEdge().inches();
            put(() -> SwingPlan.of(
                    leaf.mark(), leaf.swing(), reach, design.job().display(), fitting(reach * 2.2, reach * 2.2)));
        }
        PacketSubjects.slide(design.job(), design, gate).ifPresent(this::slide);
    }

    private void slide(SlideSubject slide) {
        double wide = slide.plan().shape().length().inches()
                + slide.plan().shape().travel().inches();
        double high = slide.plan().leaf().outline().topAtPin().inches();
        put(() -> SlideElevation.picture(slide, fitting(wide * 1.1, high * 1.6)));
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
        // What a leaf that slides shows is told by its drawing alone.
        if (!strip.shownSlides().isEmpty()) put(() -> drawn(strip));
        else if (!isLeft()) {
            String key = place() + Integer.toHexString(shownBy(strip));
            if (shown.known().contains(key)) add(one(key));
            else {
                Drawing drawing = drawn(strip);
                add(fresh(key, drawing, SvgPlot.inPage(drawing)));
            }
        }
    }

    private void put(Supplier<Drawing> draws) {
        if (isLeft()) return;
        Drawing drawing = draws.get();
        String svg = SvgPlot.inPage(drawing);
        String key = place() + Integer.toHexString(svg.hashCode());
        add(shown.known().contains(key) ? one(key) : fresh(key, drawing, svg));
    }

    /** Whether it stays as it is for now; it is told so then. */
    private boolean isLeft() {
        Optional<String> left = shown.left(place());
        left.ifPresent(key -> add(one(key)));
        return left.isPresent();
    }

    private void add(Json.Members drawing) {
        drawn.add(drawing.build());
        count++;
    }

    private Json.Members one(String key) {
        return Json.object().put("of", part).put("key", key);
    }

    private Json.Members fresh(String key, Drawing drawing, String svg) {
        return one(key).put("name", drawing.name()).put("svg", svg);
    }

    /** On a screen a drawing fills its place; its scale needs no usual name. */
    private static Scale fitting(double realWide, double realHigh) {
        return Scale.ratio(Math.max(realWide / WIDE_IN, realHigh / HIGH_IN));
    }
}
