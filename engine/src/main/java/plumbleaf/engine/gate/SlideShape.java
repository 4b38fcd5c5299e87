package plumbleaf.engine.gate;

import java.util.Optional;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;

/**
 * The sizes of a slide leaf along its way, r from the opening's face at the front roller post towards the receiver.
 *
 * @param opening clear between the two faces
 * @param tail behind the face, closed
 * @param overlap past the other face
 * @param front from the face back to the front rollers
 * @param spacing from the front rollers back to the rear ones
 * @param across n of the leaf's middle plane from the line of its posts
 */
public record SlideShape(Length opening, Length tail, Length overlap, Length front, Length spacing, Offset across) {
    /** Closer together than this, two sets of rollers hold nothing level: judgement. */
    private static final Length LEAST_SPACING = Length.inches(18);

    static SlideShape of(Gate gate, SlideSpec spec, Length opening, PostStock post, RollerModel rollers) {
        Length front = post.depth().times(0.5);
        double off = post.width().inches() / 2 + rollers.standoff().inches();
        return new SlideShape(
                opening,
                spec.tail(),
                spec.overlap(),
                front,
                spec.spacingOn(post.depth()),
                Offset.inches(spec.beside() == SwingWay.OUT ? off : -off));
    }

    /** Why it cannot be made so, where it cannot. */
    Optional<String> trouble() {
        if (spacing.compareTo(LEAST_SPACING) < 0)
            return Optional.of("its roller posts stand less than 18 in. apart; give it a longer tail");
        double left = tail.inches() - front.inches() - spacing.inches();
        return left < SlideSpec.BEHIND_ROLLERS.inches() - 1e-9
                ? Optional.of("its tail ends less than 6 in. behind the rear rollers, and would leave them; give it a"
                        + " longer tail or set the rollers closer")
                : Optional.empty();
    }

    /** r of the nose. */
    public Offset nose() {
        return opening.plus(overlap).asOffset();
    }

    /** r of the end of the tail. */
    public Offset tailEnd() {
        return Offset.inches(-tail.inches());
    }

    /** How far it travels until its nose stands level with the opening's face. */
    public Length travel() {
        return opening.plus(overlap);
    }

    public Length length() {
        return tail.plus(opening).plus(overlap);
    }

    public Offset frontRollers() {
        return Offset.inches(-front.inches());
    }

    public Offset rearRollers() {
        return Offset.inches(-front.inches() - spacing.inches());
    }

    /** r of the end of the tail when it stands open: as far as the run-back must be clear. */
    public Offset openEnd() {
        return Offset.inches(-tail.inches() - travel().inches());
    }
}
