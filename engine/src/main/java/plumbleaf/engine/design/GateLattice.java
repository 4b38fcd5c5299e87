package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.PostSpec;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.WoodPost;

/**
 * Every build of a gate that a yard would think of: what the job pinned stays, the rest runs over what is stocked, auger sizes and depth steps; a post that stands already is what it is. Both posts are alike
 * unless one is pinned: one detail a gate.
 */
final class GateLattice {
    private static final Length NARROWEST_FRAME = Length.inches(1.5);
    private static final Length WIDEST_FRAME = Length.inches(3);
    private static final Length NARROWEST_PIPE = Length.inches(1.315);
    private static final Length WIDEST_PIPE = Length.inches(2.375);
    private static final Length NARROWEST_POST = Length.inches(2.375);
    private static final Length WIDEST_POST = Length.inches(4.5);

    /** Thinner is not welded in an ordinary shop; 14 gauge, common practice, no source. */
    private static final Length THINNEST_FRAME = Length.inches(0.083);

    /** Without, with one tube, two, two that cross, and a rod that the leaf's own weight pulls. */
    private static final List<Bracing> BRACINGS =
            List.of(Bracing.tubes(0), Bracing.tubes(1), Bracing.tubes(2), new Bracing.Cross(), Bracing.usualRod());

    /** A slide leaf has a diagonal in every panel over its opening, or none. */
    private static final List<Bracing> SLIDE_BRACINGS = List.of(Bracing.tubes(0), Bracing.tubes(1));

    private static final Length SHALLOWEST = Length.inches(30);
    private static final Length DEEPEST = Length.inches(72);

    /** A hole is at least three times as wide as its post; common practice, no source. */
    private static final double HOLE_OVER_POST = 3;

    private static final Length NARROWEST_HOLE = Length.inches(8);
    private static final Length WIDEST_HOLE = Length.inches(24);

    private static final Length WIDEST_WOOD = Length.inches(7.5);

    /** Concrete beyond the corners of a wood post. Judgement. */
    private static final Length COVER = Length.inches(2.5);

    private final Catalogue catalogue;
    private final GateBuild pinned;
    private final Gate gate;
    private final PriceBook book;
    private final boolean onWood;
    private final boolean ontoSteel;
    private final boolean ontoWood;

    /** @param book what it does not sell is not stocked */
    GateLattice(GateSite site, PriceBook book) {
        this.catalogue = site.catalogue();
        this.pinned = site.job().builds().of(site.gate());
        this.gate = site.gate();
        this.book = book;
        this.onWood =
                site.cladding().match(open -> false, wood -> true, pickets -> false, mesh -> false, sheet -> false);
        Fastening hinged = site.hinge().fixing().toPost();
        this.ontoSteel = hinged.match(welded -> true, bolted -> true, lagged -> false);
        this.ontoWood = site.hasWoodPosts() && hinged.match(welded -> false, bolted -> true, lagged -> true);
    }

    /** Every leaf that would be welded. */
    List<LeafPick> leaves() {
        if (slides()) return slideLeaves();
        List<LeafPick> leaves = new ArrayList<>();
        for (Section frame : frames())
            for (Bracing bracing : pinned.bracing().value().map(List::of).orElse(BRACINGS))
                for (Joint joint : pinned.joint().value().map(List::of).orElseGet(() -> joints(frame)))
                    leaves.add(LeafPick.of(pinned.flat() ? frame.turned() : frame, bracing, joint, pinned.bracket()));
        return leaves;
    }

    private boolean slides() {
        return gate.kind().match(swing -> false, pair -> false, slide -> true, flagged -> false);
    }

    /** Tubes that the rollers asked for take, or some; with diagonals over the opening and without; always welded with rails that run through. */
    private List<LeafPick> slideLeaves() {
        Optional<String> named = gate.kind()
                .match(
                        swing -> Optional.empty(),
                        pair -> Optional.empty(),
                        slide -> slide.spec().rollers().value(),
                        flagged -> Optional.empty());
        List<Section> taken = pinned.frame()
                .value()
                .flatMap(catalogue::section)
                .map(List::of)
                .orElseGet(() -> stocked(tube -> (tube.family().equals("pipe")
                                ? !onWood
                                : tube.shape() == Shape.SQUARE && tube.id().startsWith("TUBE"))
                        && tube.nominalWall().compareTo(THINNEST_FRAME) >= 0
                        && catalogue.rollers().stream()
                                .filter(each -> named.isEmpty() || named.get().equals(each.id()))
                                .anyMatch(each -> each.suits(tube))));
        List<LeafPick> leaves = new ArrayList<>();
        for (Section frame : taken)
            for (Bracing bracing : pinned.bracing().value().map(List::of).orElse(SLIDE_BRACINGS))
                leaves.add(LeafPick.of(frame, bracing, pinned.joint().or(Joint.BUTTED_RAILS), pinned.bracket()));
        return leaves;
    }

    /** Round ends are coped or mitered, square ones mitered or butted. */
    private static List<Joint> joints(Section frame) {
        return frame.isRound() ? List.of(Joint.COPED, Joint.MITERED) : List.of(Joint.MITERED, Joint.BUTTED);
    }

    /** Every post in every hole. */
    List<FootPick> feet() {
        List<FootPick> feet = new ArrayList<>();
        for (PostStock post : posts())
            for (HoleSize hole : holes(post)) {
                PostStock latch = pinned.latchPost()
                        .value()
                        .flatMap(catalogue::post)
                        .or(() -> StandingPost.taken(gate.latchPost().support(), catalogue))
                        .orElse(post);
                feet.add(new FootPick(post, latch, hole));
            }
        return feet;
    }

    /** Square and rectangular tube; where no nailer is bolted on, round pipe too. */
    private List<Section> frames() {
        return pinned.frame().value().flatMap(catalogue::section).map(List::of).orElseGet(() -> stocked(this::isFrame));
    }

    private boolean isFrame(Section section) {
        boolean square = isTube(section)
                && within(section.depth(), NARROWEST_FRAME, WIDEST_FRAME)
                && within(section.width(), NARROWEST_FRAME, WIDEST_FRAME);
        boolean round =
                section.family().equals("pipe") && !onWood && within(section.depth(), NARROWEST_PIPE, WIDEST_PIPE);
        return (square || round) && section.nominalWall().compareTo(THINNEST_FRAME) >= 0;
    }

    /** Square, or rectangular on edge: its larger side in the plane of the leaf, unless the job lays it flat. */
    private static boolean isTube(Section section) {
        return section.family().equals("tube") && section.id().startsWith("TUBE") && section.shape() != Shape.ROUND;
    }

    private static boolean isPost(Section section) {
        boolean pipe = section.family().equals("pipe");
        boolean square = isTube(section)
                && section.shape() == Shape.SQUARE
                && section.nominalWall().compareTo(THINNEST_FRAME) >= 0;
        return (pipe || square) && within(section.depth(), NARROWEST_POST, WIDEST_POST);
    }

    /** What the price book sells; all of it where the book sells none. */
    private List<Section> stocked(Predicate<Section> wanted) {
        List<Section> all = catalogue.sections().stream().filter(wanted).toList();
        List<Section> sold =
                all.stream().filter(section -> !book.of(section.id()).isEmpty()).toList();
        return sold.isEmpty() ? all : sold;
    }

    private List<PostStock> posts() {
        return pinned.hingePost()
                .value()
                .flatMap(catalogue::post)
                .or(() -> StandingPost.taken(gate.hingePost().support(), catalogue))
                .map(List::of)
                .orElseGet(this::stockedPosts);
    }

    /** Pipe and square tube of the yard; where the fence's own posts are of wood, and the hinge can be fixed to it, wood posts too. */
    private List<PostStock> stockedPosts() {
        List<PostStock> posts = new ArrayList<>();
        if (ontoSteel || slides()) posts.addAll(stocked(GateLattice::isPost));
        if (ontoWood && !slides())
            for (WoodPost post : catalogue.woodPosts())
                if (!book.of(post.id()).isEmpty() && post.depth().compareTo(WIDEST_WOOD) <= 0) posts.add(post);
        return posts;
    }

    /** Where neither post is dug there is one size, which nobody digs. */
    private List<HoleSize> holes(PostStock post) {
        if (!digs(gate.hingePost()) && !digs(gate.latchPost()))
            return List.of(new HoleSize(
                    pinned.hole().or(NARROWEST_HOLE), pinned.depth().or(SHALLOWEST)));
        List<HoleSize> holes = new ArrayList<>();
        List<Length> diameters = pinned.hole()
                .value()
                .map(List::of)
                .orElseGet(() -> catalogue.augers().stream()
                        .filter(auger ->
                                within(auger, NARROWEST_HOLE, WIDEST_HOLE) && auger.inches() >= leastHole(post))
                        .toList());
        for (Length diameter : diameters) for (Length depth : depths()) holes.add(new HoleSize(diameter, depth));
        return holes;
    }

    /** Three times as wide as a pipe; round a wood post room for 2-1/2 in. of concrete at its corners, as the fence's own have it. */
    private static double leastHole(PostStock post) {
        return post.match(
                steel -> HOLE_OVER_POST * steel.depth().inches(),
                wood -> wood.across().inches() + 2 * COVER.inches());
    }

    /** The same posts in the widest and deepest hole of all. */
    FootPick bestFoot(FootPick foot) {
        HoleSize best = foot.hole();
        for (HoleSize hole : holes(foot.hingePost()))
            best = new HoleSize(
                    hole.diameter().compareTo(best.diameter()) > 0 ? hole.diameter() : best.diameter(),
                    hole.depth().compareTo(best.depth()) > 0 ? hole.depth() : best.depth());
        return new FootPick(foot.hingePost(), foot.latchPost(), best);
    }

    private List<Length> depths() {
        if (pinned.depth().isSaid()) return List.of(pinned.depth().or(SHALLOWEST));
        List<Length> depths = new ArrayList<>();
        for (Length depth = SHALLOWEST; depth.compareTo(DEEPEST) <= 0; depth = depth.plus(catalogue.depthStep()))
            depths.add(depth);
        return depths;
    }

    /** The widest and deepest hole that is tried for any post. */
    HoleSize widestAndDeepest() {
        List<FootPick> all = feet();
        HoleSize widest = all.get(0).hole();
        for (FootPick foot : all) if (foot.hole().diameter().compareTo(widest.diameter()) > 0) widest = foot.hole();
        return deepest(widest);
    }

    /** A hole as wide, as deep as any that is tried. */
    HoleSize deepest(HoleSize hole) {
        List<Length> depths = depths();
        return new HoleSize(hole.diameter(), depths.get(depths.size() - 1));
    }

    private static boolean digs(PostSpec post) {
        return post.support()
                .match(footing -> true, driven -> false, plate -> false, socket -> false, wall -> false, old -> false);
    }

    private static boolean within(Length size, Length least, Length most) {
        return size.compareTo(least) >= 0 && size.compareTo(most) <= 0;
    }
}
