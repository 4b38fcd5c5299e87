package plumbleaf.engine.footing;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;

/** A hole that rock refuses before its depth: how deep a core in the rock takes its place. */
final class RockSocket {
    /** Sedimentary and foliated rock, the weaker of the table's two. */
    private static final int WEAKER_ROCK = 2;

    /** Less of a core holds no post by its grout. Judgement. */
    private static final Length LEAST = Length.inches(6);

    private RockSocket() {}

    /**
     * The code's formula below the rock's face, with nothing of the soil over it and that much more arm.
     * Source: IBC 2021 1807.3.2.1 with Table 1806.2, class 2; judgement to leave the soil out. Check: HoldsTest.
     */
    static Length needed(List<CombinedAction> actions, Length rockAt, Length core, SoilTables tables) {
        Pressure lateral = tables.presumed(WEAKER_ROCK).lateralPerFoot();
        Length most = LEAST;
        for (CombinedAction one : actions) {
            Moment moment = Moment.poundInches(
                    one.action().size().poundInches() + one.action().push().pounds() * rockAt.inches());
            if (moment.isZero()) continue;
            Length deep = PoleDepth.nonconstrained(one.action().push(), moment, lateral, core);
            if (deep.compareTo(most) > 0) most = deep;
        }
        return most;
    }

    /** Said where the hole would go deeper than the rock lets it. */
    static Optional<Finding> finding(
            String part, Length depth, Length rockAt, Length core, List<CombinedAction> actions, SoilTables tables) {
        if (rockAt.isZero() || depth.compareTo(rockAt) <= 0) return Optional.empty();
        Length into = needed(actions, rockAt, core, tables);
        return Optional.of(Checked.note(
                "footing.rock",
                Severity.CAUTION,
                part,
                "Footing " + part + ": rock refuses its hole at " + LengthText.feetAndInches(rockAt.inches()) + ", "
                        + LengthText.feetAndInches(depth.inches()) + " were meant. Core "
                        + LengthText.feetAndInches(Math.ceil(into.inches()))
                        + " into the rock over the same width instead, or move the post;"
                        + " a pinned plate on sound rock is an engineer's. Rock holes are priced apart.",
                Basis.clause("IBC 2021 1807.3.2.1, Table 1806.2 class 2")));
    }
}
