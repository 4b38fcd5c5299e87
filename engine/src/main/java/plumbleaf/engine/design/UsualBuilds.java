package plumbleaf.engine.design;

import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunBuild;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * Where a search begins, and what a customary fence gets when nothing is pinned: the sizes most yards would take. Common practice, no source.
 */
final class UsualBuilds {
    private static final String LINE_POST = "F1083-REG-2";
    private static final String FRAME = "TUBE-2x2x0.083";
    private static final String GATE_POST = "F1083-REG-2.5";
    private static final Length LINE_HOLE = Length.inches(10);
    private static final Length GATE_HOLE = Length.inches(12);
    private static final Length GATE_DEPTH = Length.inches(36);

    private final Catalogue catalogue;

    UsualBuilds(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    PickedRun of(Run run, RunBuild pinned) {
        String usual = catalogue
                .style(run.style())
                .map(style -> style.posts().lineFor(run.infill()))
                .orElse(LINE_POST);
        return new PickedRun(
                run.id(), section(pinned.post().or(usual)), pinned.hole().or(LINE_HOLE), pinned.depth());
    }

    PickedGate of(Gate gate, GateBuild pinned) {
        Section hinge = pinned.hingePost()
                .value()
                .map(this::section)
                .or(() -> StandingPost.of(gate.hingePost().support(), catalogue))
                .orElseGet(() -> section(GATE_POST));
        Section latch = pinned.latchPost()
                .value()
                .map(this::section)
                .or(() -> StandingPost.of(gate.latchPost().support(), catalogue))
                .orElse(hinge);
        return new PickedGate(
                section(pinned.frame().or(FRAME)),
                pinned.braces().or(1),
                pinned.joint().or(Joint.MITERED),
                hinge,
                latch,
                new HoleSize(pinned.hole().or(GATE_HOLE), pinned.depth().or(GATE_DEPTH)));
    }

    private Section section(String id) {
        return catalogue
                .section(id)
                .orElseThrow(() -> new IllegalArgumentException("No section " + id + " in the catalogue"));
    }
}
