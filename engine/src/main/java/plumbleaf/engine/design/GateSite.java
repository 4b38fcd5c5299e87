package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Trimming;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LeafFill;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.job.RightLeaf;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.wind.TributaryWind;

/**
 * A gate and all about it that its build does not change.
 *
 * @param line where its run lies
 * @param first the gate post nearer the run's start
 * @param second the one further on
 * @param roller the rear roller post of a slide gate
 * @param beside bays of the fence next to the two posts, the first post's first
 * @param bays of the whole run
 */
record GateSite(
        Job job,
        Run run,
        Gate gate,
        RunLine line,
        GroundUnder ground,
        Post first,
        Post second,
        Optional<Post> roller,
        List<List<Bay>> beside,
        List<Bay> bays,
        RunWind wind,
        Catalogue catalogue,
        Standards standards) {
    GateSite {
        beside = List.copyOf(beside);
        bays = List.copyOf(bays);
    }

    /** The same place with the gate hung otherwise. */
    GateSite with(Gate changed) {
        return new GateSite(
                HangingAsked.with(job, changed),
                run,
                changed,
                line,
                ground,
                first,
                second,
                roller,
                beside,
                bays,
                wind,
                catalogue,
                standards);
    }

    Post post(String id) {
        if (roller.isPresent() && roller.get().id().equals(id)) return roller.get();
        return first.id().equals(id) ? first : second;
    }

    /** What half a bay beside one of its posts meets, as high as it was built. */
    Optional<TributaryWind> windBeside(Post post, Bay bay) {
        Offset middle = bay.start().plus(bay.level().asOffset().times(0.5));
        AsBuilt built = AsBuilt.besidePost(run, bay, post);
        RunWind.Piece half = bay.from().equals(post.id())
                ? new RunWind.Piece(bay.start(), middle, built)
                : new RunWind.Piece(middle, bay.end(), built);
        return wind.on(List.of(half));
    }

    /** A gate in a pool's barrier closes by itself and is never held open. Source: ISPSC 305.3, from memory; local code governs. */
    boolean mustShut() {
        return job.site().uses().contains(Use.POOL) && job.rules().pool().has(gate);
    }

    DesignBasis basis() {
        return job.basisAt(run, gate.station().inches());
    }

    Optional<FenceStyle> style() {
        return catalogue.style(run.style());
    }

    /** Whether the fence beside the gate stands on wood. */
    boolean hasWoodPosts() {
        String id = job.builds()
                .of(run)
                .post()
                .value()
                .or(() -> style().map(is -> is.posts().lineFor(run.infill())))
                .orElse("");
        return catalogue
                .post(id)
                .map(post -> post.match(steel -> false, wood -> true))
                .orElse(false);
    }

    HingeModel hinge() {
        return hinge(gate.hinges().model());
    }

    private HingeModel hinge(String id) {
        return catalogue.hinge(id).orElseThrow(() -> new IllegalArgumentException("No hinge " + id));
    }

    /** What a leaf is filled with: the right one of a pair may have its own. */
    LeafFill fill(Leaf leaf) {
        LeafFill own = gate.leaf().fill();
        return isRight(leaf.hand()) ? job.builds().of(gate).rightLeaf().fill().or(own) : own;
    }

    boolean isRight(Hand hand) {
        return hand.hinge() == Side.RIGHT
                && gate.kind().match(swing -> false, pair -> true, slide -> false, flagged -> false);
    }

    /** What the right leaf of a pair is made of, where the job says that it is not as the left one. */
    Optional<GateParts.LeafParts> rightLeaf(PickedGate build) {
        RightLeaf own = job.builds().of(gate).rightLeaf();
        boolean pair = gate.kind().match(swing -> false, is -> true, slide -> false, flagged -> false);
        if (!pair || own.isAlike()) return Optional.empty();
        return Optional.of(new GateParts.LeafParts(
                own.frame()
                        .value()
                        .flatMap(catalogue::section)
                        .map(tube -> own.flat() ? tube.turned() : tube)
                        .orElse(build.frame()),
                own.bracing().or(build.bracing()),
                own.joint().or(build.joint()),
                hinge(own.hinge().or(gate.hinges().model())),
                cladding(own.fill().or(gate.leaf().fill()))));
    }

    LatchModel latch() {
        return catalogue
                .latch(gate.latch().model())
                .orElseThrow(() ->
                        new IllegalArgumentException("No latch " + gate.latch().model()));
    }

    /** The rod whose weight hangs on a leaf: the pinned one; while it is open, one of middle size, some pounds more or less. */
    RodModel rodToHang() {
        return RodPick.pinned(gate).flatMap(catalogue::rod).orElseGet(() -> RodPick.middle(catalogue));
    }

    /** The style that the leaf is boarded in: its own, or the fence's; none where it is filled otherwise. */
    Optional<FenceStyle> leafStyle() {
        return leafStyle(gate.leaf().fill());
    }

    Optional<FenceStyle> leafStyle(LeafFill fill) {
        return fill.match(
                asFence -> style(),
                bare -> Optional.empty(),
                other -> catalogue.style(other.id()),
                pickets -> Optional.empty(),
                mesh -> Optional.empty(),
                sheet -> Optional.empty());
    }

    /** What fills the leaf: what was asked for, else the fence's own boards, or nothing where the fence has none. */
    Cladding cladding() {
        return cladding(gate.leaf().fill());
    }

    Cladding cladding(LeafFill fill) {
        return fill.match(
                asFence -> boards(fill),
                bare -> new Cladding.Open(),
                other -> boards(fill),
                pickets -> new Cladding.Pickets(
                        catalogue
                                .section(pickets.section())
                                .orElseThrow(() -> new IllegalArgumentException("No section " + pickets.section())),
                        pickets.gap(),
                        pickets.punched()),
                mesh -> new Cladding.Mesh(mesh.woven(), mesh.wire(), mesh.pitch(), mesh.edge()),
                sheet -> new Cladding.Sheet(sheet.thickness(), sheet.edge()));
    }

    /** The steel of a style without upright boards: pickets through punched rails, fabric tied, mesh stitched to an angle. */
    private Cladding steel(LeafFill fill) {
        Cladding bare = new Cladding.Open();
        return leafStyle(fill)
                .map(style -> style.infill()
                        .match(
                                upright -> bare,
                                bothSides -> bare,
                                lying -> bare,
                                panel -> catalogue
                                        .section(panel.picket())
                                        .<Cladding>map(picket -> new Cladding.Pickets(picket, panel.gap(), true))
                                        .orElse(bare),
                                fabric -> new Cladding.Mesh(
                                        true, fabric.wire(), fabric.mesh().plus(fabric.wire()), MeshEdge.DIRECT),
                                mesh -> new Cladding.Mesh(
                                        false, mesh.wire(), mesh.across(), mesh.upright(), MeshEdge.ANGLE)))
                .orElse(bare);
    }

    private Cladding boards(LeafFill fill) {
        return leafStyle(fill)
                .flatMap(FenceStyle::leafBoarding)
                .<Cladding>map(boards -> new Cladding.Wood(
                        boards,
                        wood(boards.species()),
                        wood(boards.railSpecies()),
                        run.finishedFace(),
                        boards.lying() ? Trimming.NONE : trimming(fill)))
                .orElseGet(() -> steel(fill));
    }

    /** The trim of the style; nothing straight lies on a curved top. */
    private Trimming trimming(LeafFill fill) {
        FenceTrim trim = leafStyle(fill).map(FenceStyle::trim).orElse(FenceTrim.NONE);
        boolean straight = gate.leaf().top().curve().isZero();
        return new Trimming(
                trim.cap().filter(board -> straight).map(this::ofWood),
                trim.fascia().filter(board -> straight).map(this::ofWood),
                trim.kick().map(this::ofWood));
    }

    private Trimming.Of ofWood(Board board) {
        return new Trimming.Of(board, wood(board.species()));
    }

    private WoodSpecies wood(String id) {
        return catalogue.species(id).orElseThrow(() -> new IllegalArgumentException("No wood " + id));
    }
}
