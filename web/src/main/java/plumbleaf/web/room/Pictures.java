package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.packet.SiteParts;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.view.AsItWas;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.documents.view.ClearanceCurve;
import plumbleaf.documents.view.CutBars;
import plumbleaf.documents.view.DeflectedLeaf;
import plumbleaf.documents.view.GateElevation;
import plumbleaf.documents.view.GateInSpace;
import plumbleaf.documents.view.GatePlanDetail;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PairElevation;
import plumbleaf.documents.view.PairSwing;
import plumbleaf.documents.view.PlacedGate;
import plumbleaf.documents.view.RatioBars;
import plumbleaf.documents.view.RunProfile;
import plumbleaf.documents.view.SagBar;
import plumbleaf.documents.view.Site;
import plumbleaf.documents.view.SitePlan;
import plumbleaf.documents.view.SlideElevation;
import plumbleaf.documents.view.SlideOnProfile;
import plumbleaf.documents.view.SlideSection;
import plumbleaf.documents.view.SlideSubject;
import plumbleaf.documents.view.SlideWay;
import plumbleaf.documents.view.SpaceScene;
import plumbleaf.documents.view.StationNote;
import plumbleaf.documents.view.StripEnds;
import plumbleaf.documents.view.SwingPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Picture;

/** The drawings of a design, sized so that their lettering reads well on a screen. */
final class Pictures {
    private static final double HIGH_IN = 6;

    /** The fence itself on a narrow screen's plan; its names and sizes take the rest. */
    private static final double OVERVIEW_IN = 2.4;

    /** What a narrow screen shows of the site at once, names and all. */
    private static final double PIECE_IN = 540;

    /** A site of more pieces is for a wider screen. */
    private static final int MOST_PIECES = 12;

    private final Design design;
    private final Subjects subjects;
    private final Handles handles;
    private final DisplayUnits units;
    private final Breadth breadth;

    /** A drawing that takes the whole width, in paper inches. */
    private final double wideIn;

    /** One that stands beside another, or on a narrow screen above it. */
    private final double halfIn;

    /** A sag budget's bar: the words under its ends reach past it. */
    private final double barIn;

    /** The most of a run that is drawn in one strip, 44 ft or 12 1/2, and how wide that is on paper beside the words of its band. */
    private final double stripIn;

    private final double stripPaperIn;

    Pictures(Design design, Subjects subjects, Handles handles, Breadth breadth) {
        this.breadth = breadth;
        this.wideIn = breadth == Breadth.WIDE ? 9 : 3.9;
        this.halfIn = breadth == Breadth.WIDE ? 4.6 : 3.8;
        this.barIn = breadth == Breadth.WIDE ? 4.6 : 3.3;
        this.stripIn = breadth == Breadth.WIDE ? 528 : 150;
        this.stripPaperIn = breadth == Breadth.WIDE ? 7.4 : 2.1;
        this.design = design;
        this.handles = handles;
        this.subjects = subjects;
        this.units = design.job().display();
    }

    Picture site() {
        Site site = siteOf();
        return picture(siteDrawing(site, parts(site)), true).with(handles.onPlan());
    }

    /** The site; a narrow screen shows shots and the names of posts in pieces along the fence. */
    List<Picture> sites() {
        Site site = siteOf();
        List<SiteParts.Part> parts = parts(site);
        List<Picture.Handle> held = handles.onPlan();
        List<Picture> pictures = new ArrayList<>();
        pictures.add(picture(siteDrawing(site, parts), true).with(held));
        for (SiteParts.Part part : parts)
            pictures.add(new Picture("Site plan, " + part.words(), SvgPlot.inPage(part.drawing()), true, held));
        return pictures;
    }

    /** The pieces that a narrow screen needs; none on a wide one. */
    private List<SiteParts.Part> parts(Site site) {
        if (breadth == Breadth.WIDE) return List.of();
        List<SiteParts.Part> parts = SiteParts.of(site, Scale.ratio(PIECE_IN / 4), new Box(0, 0, 4, HIGH_IN));
        return parts.size() > MOST_PIECES ? List.of() : parts;
    }

    private Drawing siteDrawing(Site site, List<SiteParts.Part> parts) {
        Box extents = site.extents();
        if (breadth == Breadth.NARROW)
            return SitePlan.overview(
                    site,
                    fitting(extents.width() * 1.15, extents.height() * 1.3, OVERVIEW_IN, HIGH_IN),
                    parts.stream().map(SiteParts.Part::window).toList());
        return SitePlan.of(site, fitting(extents.width() * 1.15, extents.height() * 1.3, wideIn, HIGH_IN));
    }

    private Site siteOf() {
        List<SlidePlan> slides = design.gates().stream()
                .flatMap(gate -> gate.plan().slide().stream())
                .toList();
        return new Site(design.job(), design.layout(), design.ground(), placed(gate -> true), slides);
    }

    /** What changed since another state of the job, drawn over each other: the plan, each run in its strips, each leaf's frame. */
    List<Picture> since(Pictures before) {
        List<Picture> pictures = new ArrayList<>();
        if (!design.layout().runs().isEmpty() && !before.design.layout().runs().isEmpty()) {
            Site now = siteOf();
            Site then = before.siteOf();
            over("Site plan", siteDrawing(now, parts(now)), before.siteDrawing(then, before.parts(then)), true)
                    .ifPresent(pictures::add);
        }
        for (RunLayout run : design.layout().runs())
            before.design.layout().runs().stream()
                    .filter(old -> old.run().equals(run.run()))
                    .forEach(old -> pictures.addAll(strips(run, old, before)));
        Map<String, Drawing> frames = before.frames();
        frames().forEach((mark, now) -> Optional.ofNullable(frames.get(mark))
                .flatMap(then -> over("Frame of " + mark, now, then, false))
                .ifPresent(pictures::add));
        return pictures;
    }

    private static Optional<Picture> over(String name, Drawing now, Drawing then, boolean wide) {
        return AsItWas.over(now, then).map(both -> new Picture(name, SvgPlot.inPage(both), wide, List.of()));
    }

    /** The strips of a run as it is, each over the same stretch as it was. */
    private List<Picture> strips(RunLayout run, RunLayout old, Pictures before) {
        List<Picture> pictures = new ArrayList<>();
        List<Double> ends = StripEnds.of(run, stripIn);
        double oldLength = old.line().line().length().inches();
        for (int i = 1; i < ends.size(); i++) {
            double from = ends.get(i - 1);
            double to = i == ends.size() - 1 ? oldLength : Math.min(ends.get(i), oldLength);
            if (to - from < 1) continue;
            over(
                            stripName(run, from, ends.get(i)),
                            profileDrawing(run, from, ends.get(i)),
                            before.profileDrawing(old, from, to),
                            true)
                    .ifPresent(pictures::add);
        }
        return pictures;
    }

    private Map<String, Drawing> frames() {
        Map<String, Drawing> frames = new LinkedHashMap<>();
        for (GateDesign gate : design.gates())
            for (GateSubject leaf : subjects.of(gate)) frames.put(leaf.mark(), frame(leaf));
        return frames;
    }

    /** Each run unrolled; a long one in strips that end at posts, so that their lettering reads well. */
    List<Picture> profiles() {
        List<Picture> pictures = new ArrayList<>();
        for (RunLayout run : design.layout().runs()) {
            List<Double> ends = StripEnds.of(run, stripIn);
            for (int i = 1; i < ends.size(); i++) pictures.add(profile(run, ends.get(i - 1), ends.get(i)));
        }
        return pictures;
    }

    private Picture profile(RunLayout run, double from, double to) {
        Drawing drawing = profileDrawing(run, from, to);
        return new Picture(stripName(run, from, to), SvgPlot.inPage(drawing), true, handles.onProfile(run));
    }

    private String stripName(RunLayout run, double from, double to) {
        return "Run " + run.run() + " from outside, station " + units.length(from) + " to " + units.length(to);
    }

    private Drawing profileDrawing(RunLayout run, double from, double to) {
        RunProfile.Strip strip = new RunProfile.Strip(
                run,
                design.ground().profile(run.run()),
                subjects.posts(run),
                placed(gate -> gate.asked().run().equals(run.run())),
                design.gates().stream()
                        .filter(gate -> gate.asked().run().equals(run.run()))
                        .flatMap(gate -> PacketSubjects.slide(design.job(), design, gate).stream())
                        .map(SlideOnProfile::new)
                        .toList(),
                StationNote.of(
                        design.job(), design.layout(), run, design.ground().profile(run.run())),
                Offset.inches(from),
                Offset.inches(to));
        return RunProfile.of(strip, units, fitting(to - from, 1, stripPaperIn, HIGH_IN));
    }

    /** The leaf, its swing, how it gives, and where it meets the post; of a pair both leaves first, then each. */
    List<Picture> gate(GateDesign gate) {
        List<Picture> pictures = new ArrayList<>();
        List<GateSubject> leaves = subjects.of(gate);
        if (leaves.size() == 2) pair(gate, leaves.get(0), leaves.get(1), pictures);
        for (GateSubject leaf : leaves) leaf(gate, leaf, pictures);
        PacketSubjects.slide(design.job(), design, gate).ifPresent(slide -> slide(slide, pictures));
        if (!leaves.isEmpty()) pictures.add(1, inSpace(gate, leaves));
        return pictures;
    }

    /** The whole leaf with its tail, its way from above, a section at its rollers. */
    private void slide(SlideSubject slide, List<Picture> pictures) {
        double wide = slide.plan().shape().length().inches()
                + slide.plan().shape().travel().inches();
        double high = slide.plan().leaf().outline().topAtPin().inches();
        pictures.add(picture(SlideElevation.picture(slide, fitting(wide * 1.1, high * 1.6, wideIn, HIGH_IN)), true));
        pictures.add(picture(SlideWay.of(slide, fitting(wide * 1.1, high, wideIn, HIGH_IN)), true));
        pictures.add(picture(SlideSection.of(slide, fitting(high * 0.7, high * 1.3, halfIn, 1.8 * halfIn)), false));
    }

    private void pair(GateDesign gate, GateSubject a, GateSubject b, List<Picture> pictures) {
        double wide = gate.plan().opening().clear().inches() * 1.35;
        double high = Math.max(
                        a.leaf().outline().topAtPin().inches(),
                        b.leaf().outline().topAtPin().inches())
                * 1.5;
        Side active = gate.asked()
                .kind()
                .match(swing -> Side.LEFT, pair -> pair.active(), slide -> Side.LEFT, flagged -> Side.LEFT);
        Scale scale = fitting(wide, high, wideIn, HIGH_IN);
        pictures.add(picture(PairElevation.frames(a, b, active, scale), true));
        double reach = Math.max(
                a.leaf().outline().latchEdge().inches(),
                b.leaf().outline().latchEdge().inches());
        pictures.add(picture(PairSwing.of(a, b, fitting(wide + reach * 0.6, reach * 1.6, wideIn, HIGH_IN)), true)
                .with(handles.onPairSwing(gate, a, b)));
    }

    private Picture inSpace(GateDesign gate, List<GateSubject> leaves) {
        GateSubject first = leaves.get(0);
        boolean hungLeft = first.leaf().hand().hinge() == Side.LEFT;
        GateInSpace.Footing own = footing(first.hingePost());
        GateInSpace.Footing far = footing(leaves.size() == 2 ? leaves.get(1).hingePost() : first.latchPost());
        SpaceScene scene = GateInSpace.of(leaves, hungLeft ? own : far, hungLeft ? far : own);
        return Picture.inSpace("Gate " + gate.id() + " on its ground, to be turned", SpaceText.of(scene));
    }

    private GateInSpace.Footing footing(String post) {
        return design.post(post)
                .map(is ->
                        new GateInSpace.Footing(is.hole().inches(), is.depth().inches()))
                .orElse(GateInSpace.Footing.NONE);
    }

    private void leaf(GateDesign gate, GateSubject subject, List<Picture> pictures) {
        Leaf leaf = subject.leaf();
        String mark = subject.mark();
        double wide = leaf.width().inches() * 1.5;
        double high = leaf.outline().topAtPin().inches() * 1.3;
        Scale scale = fitting(wide, high, halfIn, HIGH_IN);
        pictures.add(picture(GateElevation.frame(subject, scale), false).with(handles.onFrame(gate, subject)));
        double reach = leaf.outline().latchEdge().inches();
        Scale small = fitting(reach * 2.2, reach * 2.2, halfIn, HIGH_IN);
        if (!subject.isPair())
            pictures.add(picture(SwingPlan.of(mark, subject.swing(), reach, units, small), false)
                    .with(handles.onSwing(gate, subject)));
        pictures.add(picture(ClearanceCurve.of(mark, subject.swing(), halfIn, units), false));
        for (HungLeaf hung : gate.hung())
            if (hung.id().equals(leaf.id()))
                pictures.add(
                        picture(DeflectedLeaf.of(mark, hung.sag(), leaf.hand().hinge(), scale), false));
        pictures.add(picture(GatePlanDetail.of(subject, fitting(wide, wide / 3, halfIn, HIGH_IN)), false));
    }

    /** Every post's worst check, the gates' load paths, and the sag budgets. */
    List<Picture> strength() {
        List<Picture> pictures = new ArrayList<>();
        List<RatioBars.Link> posts = design.posts().stream()
                .map(post -> new RatioBars.Link(post.id(), post.utilisation(), post.id()))
                .toList();
        if (!posts.isEmpty()) pictures.add(picture(RatioBars.of("Posts, worst check of each", posts, halfIn), false));
        pictures.addAll(0, holes());
        for (GateDesign gate : design.gates()) {
            if (!gate.loadPath().isEmpty())
                pictures.add(picture(ChainPicture.of(gate.id(), LoadChain.of(gate.loadPath()), halfIn, true), false));
            for (HungLeaf hung : gate.hung())
                pictures.add(picture(
                        SagBar.of(
                                gate.hung().size() == 1 ? gate.id() : hung.id(),
                                hung.sag(),
                                List.of(
                                        new SagBar.Limit(
                                                "good hang", hung.limits().release()),
                                        new SagBar.Limit("latch", hung.limits().latch())),
                                barIn,
                                design.job().display()),
                        false));
        }
        return pictures;
    }

    /** What is dug, run by run, each footing to be drawn deeper. */
    private List<Picture> holes() {
        List<Picture> pictures = new ArrayList<>();
        for (RunLayout run : design.layout().runs()) {
            List<PostDesign> dug = design.posts().stream()
                    .filter(post -> !post.hole().isZero() && run.posts().contains(post.post()))
                    .toList();
            int most = HolePicture.most(dug, units, wideIn);
            int strips = (dug.size() + most - 1) / most;
            for (int i = 0; i < strips; i++) {
                List<PostDesign> some = dug.subList(dug.size() * i / strips, dug.size() * (i + 1) / strips);
                HolePicture holes = new HolePicture(
                        run.run(), some, design.job().site().frost().depth(), units, wideIn);
                pictures.add(picture(holes.drawing(), true).with(handles.onHoles(some)));
            }
        }
        return pictures;
    }

    /** Where everything goes, then the bars: what is pointed at in one is ringed in the others. */
    List<Picture> stock() {
        List<Picture> pictures = new ArrayList<>();
        if (!design.layout().runs().isEmpty()) pictures.add(site());
        for (GateDesign gate : design.gates()) {
            for (GateSubject leaf : subjects.of(gate))
                pictures.add(picture(frame(leaf), false).with(handles.onFrame(gate, leaf)));
        }
        pictures.addAll(bars());
        return pictures;
    }

    private Drawing frame(GateSubject subject) {
        double wide = subject.leaf().width().inches() * 1.5;
        double high = subject.leaf().outline().topAtPin().inches() * 1.3;
        return GateElevation.frame(subject, fitting(wide, high, halfIn, HIGH_IN));
    }

    /** Bars as bars. */
    private List<Picture> bars() {
        Takeoff takeoff = design.quote().takeoff();
        return takeoff.cutPlans().stream()
                .filter(plan -> !plan.bars().isEmpty())
                .map(plan -> picture(CutBars.of(plan, takeoff.nameOf(plan), wideIn, units), true))
                .toList();
    }

    Picture waterfall() {
        Price price = design.quote().price();
        Waterfall waterfall = Waterfall.of(price, wideIn);
        PriceHandles held = new PriceHandles(design.job().money(), price);
        return picture(waterfall.drawing(held.steps()), true).with(held.along(waterfall.perCent()));
    }

    private List<PlacedGate> placed(Predicate<GateDesign> wanted) {
        return design.gates().stream()
                .filter(wanted)
                .flatMap(gate -> subjects.of(gate).stream())
                .map(PlacedGate::new)
                .toList();
    }

    /** On a screen a drawing fills its place; its scale needs no usual name. */
    private static Scale fitting(double realWide, double realHigh, double wide, double high) {
        return Scale.ratio(Math.max(realWide / wide, realHigh / high));
    }

    private static Picture picture(Drawing drawing, boolean wide) {
        return new Picture(drawing.name(), SvgPlot.inPage(drawing), wide, List.of());
    }
}
