package plumbleaf.engine.line;

import java.util.Optional;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;

/**
 * What the steps of a stepped fence are whole multiples of: what the job says (a course of the wall's blocks), else a lying board with its gap, so that boards line
 * up from bay to bay, else an inch. Common practice, no source. Check: MixedFitCheck.
 */
final class StepSize {
    private StepSize() {}

    static Length of(Run run, Optional<FenceStyle> style) {
        Optional<Length> said = run.step().value();
        if (said.isPresent()) return said.get();
        return lying(style)
                .map(boards -> {
                    LyingRow row = LyingRow.up(run.infill(), boards.board(), boards.spacing());
                    return new Length(
                            boards.board().width().inches() + row.gap().inches());
                })
                .filter(pitch -> pitch.inches() >= Shaping.STEP.inches())
                .orElse(Shaping.STEP);
    }

    static String words(Run run, Optional<FenceStyle> style) {
        if (run.step().isSaid()) return "the job's own step";
        return lying(style).isPresent()
                ? "a board and its gap, so that boards line up"
                : "what a crew sets with a tape";
    }

    private static Optional<FenceInfill.Lying> lying(Optional<FenceStyle> style) {
        return style.flatMap(made -> made.infill()
                .match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        Optional::of,
                        panel -> Optional.empty(),
                        f -> Optional.empty(),
                        m -> Optional.empty()));
    }
}
