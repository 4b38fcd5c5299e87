package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.job.TopEdge;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Section;

/** Works a cantilever slide gate out: the leaf with its tail, its way over the ground, what is to be said of both. */
final class SlideGates {
    private final GateAsk ask;
    private final Opening opening;
    private final GateKind.Slide kind;

    private SlideGates(GateAsk ask, Opening opening, GateKind.Slide kind) {
        this.ask = ask;
        this.opening = opening;
        this.kind = kind;
    }

    static GatePlan plan(GateAsk ask, Opening opening, GateKind.Slide kind, boolean cures) {
        return new SlideGates(ask, opening, kind).plan(cures);
    }

    /** The rollers asked for; else the first that takes the frame's tube, grooved ones on a round tube alone. */
    private Optional<RollerModel> rollers() {
        Optional<String> named = kind.spec().rollers().value();
        return ask.rollersToTry().stream()
                .filter(each -> named.isPresent() ? named.get().equals(each.id()) : suits(each))
                .findFirst();
    }

    private boolean suits(RollerModel rollers) {
        return rollers.suits(ask.parts().frame());
    }

    /** The tube of its leaf, where a set of rollers takes it; else the first of those to try that one does. */
    static Optional<Section> frameOnRollers(GateAsk ask) {
        Section own = ask.parts().frame();
        if (taken(ask, own)) return Optional.of(own);
        return ask.framesToTry().stream().filter(each -> taken(ask, each)).findFirst();
    }

    private static boolean taken(GateAsk ask, Section frame) {
        return ask.rollersToTry().stream().anyMatch(each -> each.suits(frame));
    }

    private GatePlan plan(boolean cures) {
        Optional<RollerModel> rollers = rollers();
        if (rollers.isEmpty())
            return Gates.cannotBeMade(
                    ask,
                    opening,
                    "no set of rollers takes a frame of " + ask.parts().frame().name()
                            + "; pick another tube, or enter the rollers of your maker");
        SlideShape shape = shape(rollers.get());
        Optional<String> trouble = shape.trouble();
        LeafSpec leaf = ask.gate().leaf();
        if (trouble.isEmpty()
                && leaf.frameHeight().inches() < 3 * ask.parts().frame().depth().inches())
            trouble = Optional.of("its frame is too low for two rails and what stands between them");
        if (trouble.isPresent()) return Gates.cannotBeMade(ask, opening, trouble.get());
        SlidePlan slide = at(kind, shape, rollers.get());
        List<Finding> findings = new ArrayList<>(Gates.common(ask));
        findings.addAll(new SlideFindings(ask, slide).all(cures ? remedies(slide) : List.of()));
        findings.addAll(GateFindings.leaf(slide.leaf(), ask.parts(), ask.display()));
        findings.addAll(doubts(slide));
        return Gates.plan(
                        ask,
                        opening,
                        List.of(hand()),
                        sentence(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        findings)
                .sliding(slide)
                .regraded(SlideRemedies.asked(ask, slide).map(List::of).orElse(List.of()));
    }

    private SlideShape shape(RollerModel rollers) {
        return SlideShape.of(
                ask.gate(), kind.spec(), opening.clear(), ask.parts().hingePost(), rollers);
    }

    /** Its front roller post stands where a leaf hung on that side would have its hinges. */
    private Hand hand() {
        return new Hand(kind.opensTo(), SwingWay.IN);
    }

    private String sentence() {
        return "Seen from outside: slides to the " + kind.opensTo().key() + ", "
                + (kind.spec().beside() == SwingWay.IN ? "inside" : "outside") + " its posts";
    }

    private SlidePlan at(GateKind.Slide how, SlideShape shape, RollerModel rollers) {
        Direction along = opening.hingeAtStart(how.opensTo())
                ? opening.along()
                : opening.along().reversed();
        Direction outward = how.opensTo() == Side.LEFT ? along.right() : along.left();
        PlanPoint face = opening.faceAt(how.opensTo());
        Offset zero = ask.ground().elevation(face);
        LeafSpec spec = ask.gate().leaf();
        Outline outline = outline(shape, spec, ask.parts().cladding().capThickness());
        double latchGround =
                ask.ground().elevation(opening.faceAt(how.opensTo().other())).inches();
        Offset latchZ = Offset.inches(
                latchGround - zero.inches() + ask.gate().latch().height().inches());
        Leaf leaf = SlideLeafMaker.make(
                ask.gate().id() + "a",
                new Hand(how.opensTo(), SwingWay.IN),
                outline,
                ask.parts(),
                how.spec().uprights(),
                latchZ);
        return new SlidePlan(
                how, leaf, rollers, shape, face, along, outward, zero, travel(shape, spec, face, along, outward, zero));
    }

    private static Outline outline(SlideShape shape, LeafSpec spec, Length cap) {
        double bottom = spec.bottomGap().inches() + spec.infillBelowFrame().inches();
        return new Outline(
                shape.tailEnd(),
                shape.nose(),
                Offset.inches(bottom),
                Offset.inches(bottom + spec.frameHeight().inches() - cap.inches()),
                Slope.ZERO,
                Slope.ZERO,
                spec.infillBelowFrame(),
                new Crest(cap, new TopEdge.Straight()));
    }

    private SlideTravel travel(
            SlideShape shape, LeafSpec spec, PlanPoint face, Direction along, Direction outward, Offset zero) {
        PlanPoint from = face.moved(along, shape.openEnd()).moved(outward, shape.across());
        PlanPoint to = face.moved(along, shape.nose()).moved(outward, shape.across());
        Length rise = ask.ground().laterRise(face.moved(along, shape.openEnd()), face.moved(along, shape.nose()));
        Length asked = ask.gate().loads().laterRise();
        return SlideTravel.of(
                ask.ground().along(from, to),
                shape,
                zero,
                spec.bottomGap().asOffset(),
                ask.drop(),
                rise.compareTo(asked) > 0 ? rise : asked);
    }

    private List<Remedy> remedies(SlidePlan slide) {
        GateKind.Slide other = new GateKind.Slide(kind.opensTo().other(), kind.spec());
        SlideGates turned = new SlideGates(ask, opening, other);
        return SlideRemedies.of(ask, slide, turned.at(other, slide.shape(), slide.rollers()));
    }

    /** What was assumed of the ground along the way. */
    private List<Finding> doubts(SlidePlan slide) {
        SlideShape shape = slide.shape();
        List<PlanPoint> used = new ArrayList<>();
        double from = shape.openEnd().inches();
        double whole = shape.nose().inches() - from;
        for (int eighth = 0; eighth <= 8; eighth++)
            used.add(slide.at(Offset.inches(from + whole * eighth / 8), Offset.ZERO));
        return ask.ground()
                .doubts(
                        ask.gate().id(),
                        slide.at(Offset.inches(from + whole / 2), Offset.ZERO),
                        Length.inches(whole / 2),
                        used);
    }
}
