package plumbleaf.engine.catalogue;

import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * How a kind of fence is made. A style is data and a few rules, so that a user can add one.
 *
 * @param id {@code wood-side-by-side}
 * @param words what a customer reads of it: {@code cedar boards, side by side}
 * @param source where its sizes come from
 */
public record FenceStyle(
        String id,
        String name,
        String words,
        FenceInfill infill,
        FenceRails rails,
        FencePosts posts,
        FenceTrim trim,
        String source) {
    /** Boards as near as this count as closed: wet, they swell shut. Judgement. */
    private static final double CLOSED_GAP_IN = 0.25;

    /** Its upright boards on wood rails; empty for any other kind. */
    public Optional<Boarding> boarding() {
        return rails.match(
                none -> Optional.empty(),
                wood -> infill.match(
                        up -> Optional.of(
                                new Boarding(up.board(), up.spacing(), up.top(), false, wood.rail(), up.fasteners())),
                        both -> Optional.of(new Boarding(
                                both.board(), both.spacing(), both.top(), true, wood.rail(), both.fasteners())),
                        lying -> Optional.empty(),
                        panel -> Optional.empty(),
                        fabric -> Optional.empty(),
                        mesh -> Optional.empty()),
                steel -> Optional.empty());
    }

    /** Whether it comes in panels, which rack to a limit. */
    public boolean isPanel() {
        return infill.match(up -> false, both -> false, lying -> false, panel -> true, fabric -> false, mesh -> false);
    }

    /** How a gate's leaf is boarded to carry this fence on: as its bays are, or, where their boards lie from post to post, with the same boards on nailers. */
    public Optional<Boarding> leafBoarding() {
        return boarding()
                .or(() -> infill.match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        lying -> Optional.of(new Boarding(
                                lying.board(),
                                lying.spacing(),
                                BoardTop.FLAT,
                                false,
                                nailerFor(lying.board()),
                                lying.fasteners(),
                                true)),
                        panel -> Optional.empty(),
                        fabric -> Optional.empty(),
                        mesh -> Optional.empty()));
    }

    /** A 2x4 of the boards' own wood, whose ends the boards are screwed to. Common practice, no source. */
    private static Board nailerFor(Board board) {
        String wood = board.species().startsWith("southern_pine") ? "southern_pine_2x4" : board.species();
        return new Board(Length.inches(3.5), Length.inches(1.5), wood);
    }

    /** How many rails an infill of this height takes. */
    public int railsFor(Length infill) {
        return rails.count(infill);
    }

    /** Share of a row of boards that stops the wind: all of it where gaps are 1/4 in. or less, else {@code w / (w + g)}. */
    static double solidOf(Board board, Spacing spacing) {
        double gap = spacing.gap().inches();
        if (gap <= CLOSED_GAP_IN) return 1;
        return board.width().inches() / (board.width().inches() + gap);
    }
}
