package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/** Looks a plan over without knowing how it was found: each piece once, no bar overfull, no more bars than there are, cost added again. */
final class PlanAudit {
    private PlanAudit() {}

    static void of(CutTask task, CutPlan plan) {
        List<String> cut = new ArrayList<>();
        TreeMap<String, Integer> used = new TreeMap<>();
        Money cost = Money.ZERO;
        for (CutBar bar : plan.bars()) {
            StockBar stock = task.bars().stream()
                    .filter(each -> each.id().equals(bar.bar()))
                    .findFirst()
                    .orElseThrow();
            used.merge(stock.id(), 1, Integer::sum);
            cost = cost.plus(stock.price());
            assertThat(bar.cuts()).isNotEmpty();
            walk(task, stock, bar);
            for (Cut each : bar.cuts()) cut.add(each.piece());
        }
        for (StockBar stock : task.bars()) {
            int most = stock.supply().match(asMany -> Integer.MAX_VALUE, Supply.AtMost::bars);
            assertThat(used.getOrDefault(stock.id(), 0)).isLessThanOrEqualTo(most);
        }
        assertThat(cut)
                .containsExactlyInAnyOrderElementsOf(
                        task.pieces().stream().map(Piece::id).toList());
        assertThat(plan.cost()).isEqualTo(cost);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(plan.cost());
        assertThat(plan.proven()).isEqualTo(plan.lowerBound().equals(plan.cost()));
    }

    /**
     * Walks the saw along the bar. Where a piece laps, the shared slanted cut is laid out anew: along every line of the section, near edge to far, the kerf has to
     * lie between the two pieces.
     */
    private static void walk(CutTask task, StockBar stock, CutBar bar) {
        long kerf = task.saw().kerfNm();
        long at = bar.trimNm() == 0 ? 0 : bar.trimNm() + kerf;
        long before = Long.MAX_VALUE;
        boolean lapped = bar.cuts().stream().anyMatch(cut -> cut.lapNm() > 0);
        for (int i = 0; i < bar.cuts().size(); i++) {
            Cut cut = bar.cuts().get(i);
            Piece piece = task.pieces().stream()
                    .filter(each -> each.id().equals(cut.piece()))
                    .findFirst()
                    .orElseThrow();
            assertThat(cut.longPointNm()).isEqualTo(piece.longPointNm());
            if (!lapped) assertThat(cut.longPointNm()).isLessThanOrEqualTo(before);
            before = cut.longPointNm();
            if (i > 0) at += kerf;
            if (cut.lapNm() > 0) sharesACut(piece, at - kerf, at - cut.lapNm(), kerf, cut.lapNm());
            at += cut.longPointNm() - cut.lapNm();
            assertThat(at).isLessThanOrEqualTo(stock.lengthNm());
        }
        assertThat(bar.offcutNm()).isEqualTo(Math.max(0, stock.lengthNm() - at - kerf));
    }

    /** One end of the piece leans so that, a kerf's width square to the cut, it meets an end that leans alike. */
    private static void sharesACut(Piece piece, long endOfLast, long start, long kerf, long lap) {
        assertThat(piece.acrossNm()).isPositive();
        boolean either = false;
        for (double degrees :
                new double[] {piece.first().inDegrees(), piece.second().inDegrees()}) {
            double angle = Math.toRadians(degrees);
            double slope = piece.acrossNm() * Math.tan(angle);
            // at the far edge of the section the last piece ends a slope sooner, and this one starts at its long point
            double gapAlong = start - (endOfLast - slope);
            either |= Math.abs(gapAlong * Math.cos(angle) - kerf) < 2;
        }
        assertThat(either).as("lap " + lap + " of " + piece.id()).isTrue();
    }
}
