package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.BasePlateHold;
import plumbleaf.engine.strength.ExistingHold;
import plumbleaf.engine.strength.SocketHold;
import plumbleaf.engine.strength.WallHinges;
import plumbleaf.engine.support.Support;

/** What a leaf hangs on, as its frame feels it: a footing in its soil, a plate, a socket, a wall, a post that stood before. */
final class GateFoot {
    /** Less of a footing than this below the loose top holds nothing. Judgement. */
    private static final Length LEAST_IN_SOUND_SOIL = Length.inches(1);

    /** Give of plates, sockets and blocking is guessed within half and twice. Judgement. */
    private static final double HALF = 0.5;

    private static final double TWICE = 2;

    /** A slab that holds a post at grade does not give way beside soil. Judgement. */
    private static final double SLAB_LB_PER_IN = 1e8;

    private GateFoot() {}

    /** The soil of the site, as a pull on its first post showed it or as it is presumed; empty where nothing is presumed for it. */
    static Optional<SoilBand> band(Job job, Catalogue catalogue, Standards standards) {
        return SoilBand.of(job.site().soil(), standards.soil())
                .map(presumed -> SitePulls.of(job, catalogue, presumed).band().orElse(presumed));
    }

    /** Empty where nothing holds it that has numbers: soil without any, a hole that ends in the loose top, a base under a wood post. */
    static Optional<PierSprings> of(GateSite site, Post post, PostStock stock, HoleSize hole) {
        Optional<SoilBand> soil = band(site.job(), site.catalogue(), site.standards());
        Length loose = site.job().soilAt(post.run(), post.station().inches()).deadTop();
        return post.support()
                .match(
                        footing -> dug(soil, hole, loose).map(springs -> atGrade(springs, footing)),
                        driven -> dug(soil, new HoleSize(stock.depth(), driven.depth()), loose),
                        plate -> stock.match(
                                steel -> Optional.of(PierSprings.undug(
                                        BasePlateHold.spring(steel, plate, HALF),
                                        BasePlateHold.spring(steel, plate, 1),
                                        BasePlateHold.spring(steel, plate, TWICE))),
                                wood -> Optional.empty()),
                        socket -> Optional.of(PierSprings.undug(
                                SocketHold.spring(stock, socket, HALF),
                                SocketHold.spring(stock, socket, 1),
                                SocketHold.spring(stock, socket, TWICE))),
                        wall -> Optional.of(PierSprings.undug(
                                WallHinges.spring(wall.of(), HALF),
                                WallHinges.spring(wall.of(), 1),
                                WallHinges.spring(wall.of(), TWICE))),
                        existing -> ExistingHold.of(existing, stock, soil)
                                .map(held -> PierSprings.undug(held.soft(), held.likely(), held.stiff())));
    }

    /**
     * What a spring of a hole or a driven post comes from; empty where another thing holds it, or a slab at grade beside the soil.
     *
     * @param of soft, likely or stiff
     */
    static List<WorkedLine> lines(
            GateSite site, Post post, PostStock stock, HoleSize hole, Function<SoilBand, SoilStiffness> of) {
        Optional<SoilBand> soil = band(site.job(), site.catalogue(), site.standards());
        Length loose = site.job().soilAt(post.run(), post.station().inches()).deadTop();
        Optional<HoleSize> held = post.support()
                .match(
                        footing -> footing.slabAtGrade() ? Optional.empty() : Optional.of(hole),
                        driven -> Optional.of(new HoleSize(stock.depth(), driven.depth())),
                        plate -> Optional.empty(),
                        socket -> Optional.empty(),
                        wall -> Optional.empty(),
                        existing -> Optional.empty());
        return held.filter(is -> reachesSoundSoil(is, loose))
                .flatMap(is -> soil.map(band -> of.apply(band).lines(is, loose)))
                .orElse(List.of());
    }

    /** The hole of the latch post, of a pair of the right one: alike unless the job tells its own. */
    static HoleSize secondHole(GateSite site, HoleSize first) {
        GateBuild pinned = site.job().builds().of(site.gate());
        return new HoleSize(
                pinned.latchHole().or(first.diameter()), pinned.latchDepth().or(first.depth()));
    }

    /** The hole of the post that a leaf hangs on. */
    static HoleSize holeOf(GateSite site, HoleSize first, Side hinge, boolean single) {
        return single || hinge == Side.LEFT ? first : secondHole(site, first);
    }

    /** Whether a hole goes below the loose top, where alone soil holds it. */
    static boolean reachesSoundSoil(HoleSize hole, Length loose) {
        return hole.depth().compareTo(loose.plus(LEAST_IN_SOUND_SOIL)) >= 0;
    }

    private static Optional<PierSprings> dug(Optional<SoilBand> soil, HoleSize hole, Length loose) {
        if (!reachesSoundSoil(hole, loose)) return Optional.empty();
        return soil.map(band -> PierSprings.of(band, hole, loose));
    }

    private static PierSprings atGrade(PierSprings springs, Support.NewFooting footing) {
        if (!footing.slabAtGrade()) return springs;
        return new PierSprings(
                held(springs.soft()),
                held(springs.likely()),
                held(springs.stiff()),
                springs.sixDeeper().map(GateFoot::held));
    }

    private static BaseSpring held(BaseSpring open) {
        return open.match(
                pier -> new PierSpring(
                        pier.lateralLbPerIn() + SLAB_LB_PER_IN, pier.couplingLb(), pier.rotationalLbIn()),
                planes -> planes,
                wall -> wall);
    }
}
