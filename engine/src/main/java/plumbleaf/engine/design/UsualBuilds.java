package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunBuild;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.BayFilling;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/**
 * Where a search begins, and what a customary fence gets when nothing is pinned: the sizes most yards would take. Common practice, no source.
 */
final class UsualBuilds {
    private static final String LINE_POST = "F1083-REG-2";
    private static final String FRAME = "TUBE-2x2x0.083";

    /** What a gate hangs on where nothing is said. */
    static final String GATE_POST = "F1083-REG-2.5";

    private static final Length LINE_HOLE = Length.inches(10);
    private static final Length COVER = Length.inches(2.5);
    private static final Length GATE_HOLE = Length.inches(12);
    private static final Length GATE_DEPTH = Length.inches(36);

    private final Catalogue catalogue;

    UsualBuilds(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    PickedRun of(Run run, RunBuild pinned) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        String line = style.map(is -> is.posts().lineFor(run.infill())).orElse(LINE_POST);
        String ends = style.map(is -> is.posts().terminalFor(run.infill())).orElse(LINE_POST);
        PostStock post = post(pinned.post().or(line));
        PostStock terminal = post(pinned.post().or(ends));
        Length hole = pinned.hole().or(hole(style, terminal));
        Optional<Length> panel = style.flatMap(BayFilling::panelRoom);
        List<PickedRun.OfSide> sides = new ArrayList<>();
        for (RunSide side : run.sides()) {
            Stated<PostStock> own =
                    side.post().value().map(this::post).map(Stated::of).orElseGet(Stated::open);
            Length bored =
                    pinned.hole().or(own.value().map(is -> hole(style, is)).orElse(hole));
            Stated<Length> deep = side.depth().isSaid() ? side.depth() : pinned.depth();
            sides.add(new PickedRun.OfSide(
                    side.from(), side.to(), own, side.hole().or(bored), deep));
        }
        return new PickedRun(run.id(), post, terminal, panel, hole, pinned.depth(), sides);
    }

    /**
     * Ten inches for most; for woven fabric four times the widest post (ASTM F567, from memory), and room for 2-1/2 in. of concrete round the corners of a
     * wood post (judgement), both up to the next auger.
     */
    private Length hole(Optional<FenceStyle> style, PostStock widest) {
        boolean woven = style.isPresent()
                && style.get()
                        .infill()
                        .match(
                                up -> false,
                                both -> false,
                                lying -> false,
                                panel -> false,
                                fabric -> true,
                                mesh -> false);
        double wanted = widest.match(
                steel -> woven ? 4 * steel.depth().inches() : LINE_HOLE.inches(),
                wood -> wood.across().inches() + 2 * COVER.inches());
        for (Length auger : catalogue.augers()) {
            if (auger.inches() >= wanted - 1e-9) return auger;
        }
        return Length.inches(wanted);
    }

    private PostStock post(String id) {
        return catalogue
                .post(id)
                .orElseThrow(() -> new IllegalArgumentException("No post " + id + " in the catalogue"));
    }

    PickedGate of(Gate gate, GateBuild pinned) {
        PostStock hinge = pinned.hingePost()
                .value()
                .map(this::post)
                .or(() -> StandingPost.of(gate.hingePost().support(), catalogue))
                .orElseGet(() -> section(GATE_POST));
        PostStock latch = pinned.latchPost()
                .value()
                .map(this::post)
                .or(() -> StandingPost.of(gate.latchPost().support(), catalogue))
                .orElse(hinge);
        return new PickedGate(
                frame(pinned),
                pinned.bracing().or(Bracing.tubes(1)),
                pinned.joint().or(Joint.MITERED),
                pinned.bracket(),
                hinge,
                latch,
                new HoleSize(pinned.hole().or(GATE_HOLE), pinned.depth().or(GATE_DEPTH)),
                Optional.empty());
    }

    private Section frame(GateBuild pinned) {
        Section tube = section(pinned.frame().or(FRAME));
        return pinned.flat() ? tube.turned() : tube;
    }

    private Section section(String id) {
        return catalogue
                .section(id)
                .orElseThrow(() -> new IllegalArgumentException("No section " + id + " in the catalogue"));
    }
}
