package plumbleaf.jobfile.cutlist;

import java.util.List;
import java.util.stream.Collectors;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.quantity.Parsed;

/**
 * What is to be cut, and what from.
 *
 * @param name of the list, which stands over its plan
 */
public record CutList(String name, List<Piece> pieces, List<StockBar> bars) {
    private static final char NUMBER_FOLLOWS = '#';

    public CutList {
        pieces = List.copyOf(pieces);
        bars = List.copyOf(bars);
    }

    /** A plan whose pieces go by their marks, or why there is none and what to change. */
    public Parsed<CutPlan> planned(CutPlanner planner, SawRules saw, long steps) {
        return planner.plan(new CutTask(name, pieces, bars, saw, steps))
                .match(
                        planned -> new Parsed.Read<>(byMark(planned.plan())),
                        tooLong -> new Parsed.Refused<>(
                                "no bar is long enough for "
                                        + tooLong.pieces().stream()
                                                .map(CutList::markOf)
                                                .distinct()
                                                .collect(Collectors.joining(", ")),
                                "add a longer bar, or splice them"),
                        tooFew -> new Parsed.Refused<>(
                                tooFew.proven()
                                        ? "all its bars together do not hold the pieces"
                                        : "no way was found to lay the pieces in these bars",
                                "allow more bars, or leave a count empty to buy as needed"));
    }

    /** One of the pieces that share a mark: while it is planned, each has a name of its own. */
    static String piece(String mark, int number) {
        return mark + NUMBER_FOLLOWS + number;
    }

    private static String markOf(String piece) {
        return piece.substring(0, piece.lastIndexOf(NUMBER_FOLLOWS));
    }

    private static CutPlan byMark(CutPlan plan) {
        return new CutPlan(
                plan.stock(),
                plan.saw(),
                plan.bars().stream().map(CutList::byMark).toList(),
                plan.cost(),
                plan.lowerBound(),
                plan.proven(),
                plan.steps(),
                plan.leastSetUps());
    }

    private static CutBar byMark(CutBar bar) {
        List<Cut> cuts = bar.cuts().stream()
                .map(cut -> new Cut(markOf(cut.piece()), cut.group(), cut.longPointNm(), cut.flip(), cut.lapNm()))
                .toList();
        return new CutBar(
                bar.bar(),
                bar.lengthNm(),
                bar.price(),
                bar.fromOffcut(),
                bar.trimNm(),
                cuts,
                bar.offcutNm(),
                bar.offcutUsable());
    }
}
