package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.job.GateLoads;
import plumbleaf.engine.job.LeafFill;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.wind.LeafWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.TributaryWind;

/** Wind on a gate's leaf, strength level: as the standard designs for, and in a plain gust without its floor. */
final class LeafBlows {
    /** The map of gusts beside ice runs from 30 to 60 mph; the middle of it and a little more. Source: ASCE 7-16 Figure 10.4-2, from memory; the pick is judgement. */
    private static final Speed GUST_ON_ICE = Speed.mph(50);

    private final GateSite site;
    private final Length width;
    private final Length surface;
    private final Length top;
    private final Screen screen;
    private final boolean asFence;
    private final int wall;
    private final Span span;

    /** A leaf that closes the opening between two distances from the face nearer the run's start. */
    private LeafBlows(GateSite site, Leaf leaf, Offset fromFace, Offset toFace) {
        this.site = site;
        LeafFill fill = site.fill(leaf);
        this.width =
                leaf.pins().isEmpty() ? Length.inches(leaf.outline().latchEdge().inches()) : leaf.width();
        this.surface = surface(site.gate().leaf(), leaf);
        this.top = surface.plus(site.gate().leaf().bottomGap());
        this.screen = LeafScreen.of(leaf, site.cladding(fill), site.leafStyle(fill), site.catalogue());
        this.asFence =
                fill.match(is -> true, bare -> false, style -> false, pickets -> false, mesh -> false, sheet -> false);
        Offset from = site.gate().station().asOffset();
        this.wall = site.wind().wallAt(from);
        this.span =
                site.wind().onWall(wall, from.plus(fromFace), from.plus(toFace)).orElseThrow();
    }

    /** The only leaf closes the whole opening, a leaf of a pair its own end of it. */
    static LeafBlows on(GateSite site, GatePlan plan, LeafHang hang) {
        Offset clear = site.gate().opening().asOffset();
        if (plan.hangs().size() == 1) return new LeafBlows(site, hang.leaf(), Offset.ZERO, clear);
        Offset reach = site.gate()
                .leaf()
                .hingeGap()
                .asOffset()
                .plus(hang.leaf().width().asOffset());
        return plan.opening().hingeAtStart(hang.leaf().hand().hinge())
                ? new LeafBlows(site, hang.leaf(), Offset.ZERO, reach)
                : new LeafBlows(site, hang.leaf(), clear.minus(reach), clear);
    }

    /** A slide leaf closes the whole opening with what of it is clad. */
    static LeafBlows sliding(GateSite site, Leaf leaf) {
        return new LeafBlows(site, leaf, Offset.ZERO, site.gate().opening().asOffset());
    }

    /** Its height; under a curved top the even one of the same area. */
    private static Length surface(LeafSpec asked, Leaf leaf) {
        if (!leaf.outline().crest().isCurved()) return asked.infill();
        return Length.inches(leaf.outline().face().squareInches() / leaf.width().inches());
    }

    /** Of the leaf above ground. */
    Length top() {
        return top;
    }

    /** A leaf filled as its fence shares the fence's wind; one filled otherwise is taken as a wall of its own, with its own solidity. */
    LeafWind shut() {
        if (!asFence) return open();
        return LeafWind.shut(site.wind().design(wall), span);
    }

    LeafWind shutIn(Speed gust) {
        if (!asFence) return openIn(gust);
        return LeafWind.shut(site.wind().gust(wall, gust), span);
    }

    LeafWind open() {
        return LeafWind.alone(
                site.job().site().wind(),
                width,
                surface,
                top,
                screen,
                site.standards().wind());
    }

    LeafWind openIn(Speed gust) {
        return LeafWind.aloneInGust(
                site.job().site().wind(),
                gust,
                width,
                surface,
                top,
                screen,
                site.standards().wind());
    }

    /** Wind on the iced leaf, frozen shut: a wall of its own in the gust that may blow on ice. */
    LeafWind onIce() {
        return LeafWind.aloneInGust(
                site.job().site().wind(),
                gustOnIce(),
                width,
                surface,
                top,
                Screen.flat(1),
                site.standards().wind());
    }

    /** Pressure goes with the square of the speed. */
    double fenceOnIce() {
        double share = gustOnIce().mph() / site.job().site().wind().speed().mph();
        return Math.min(1, share * share);
    }

    private Speed gustOnIce() {
        return gustOnIce(site.gate().loads());
    }

    /** The gust beside ice, or the service gust where that is more. */
    static Speed gustOnIce(GateLoads loads) {
        return loads.serviceGust().mph() > GUST_ON_ICE.mph() ? loads.serviceGust() : GUST_ON_ICE;
    }

    /**
     * What part of the design wind a plain gust of the design speed is, the standard's floor left out: 1 where the floor does not govern. Of leaf and fence beside
     * it the larger part, which is on the safe side.
     */
    double gustPart(LeafState state) {
        Speed speed = site.job().site().wind().speed();
        double fence = fencePart();
        return switch (state) {
            case CLOSED ->
                Math.max(
                        fence,
                        shutIn(speed).pressure().psf() / shut().pressure().psf());
            case WORST -> fence;
            case OPEN ->
                Math.max(
                        fence,
                        openIn(speed).pressure().psf() / open().pressure().psf());
        };
    }

    private double fencePart() {
        double most = 0;
        for (List<Bay> beside : site.beside())
            for (Bay bay : beside) {
                Optional<TributaryWind> design = site.wind().on(bay.start(), bay.end());
                Optional<TributaryWind> gust = site.wind().gustOn(bay.start(), bay.end());
                if (design.isPresent() && gust.isPresent())
                    most = Math.max(
                            most,
                            gust.get().force().pounds() / design.get().force().pounds());
            }
        return most;
    }
}
