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

    /** Walks the saw along the bar. */
    private static void walk(CutTask task, StockBar stock, CutBar bar) {
        long kerf = task.saw().kerfNm();
        long at = bar.trimNm() == 0 ? 0 : bar.trimNm() + kerf;
        long before = Long.MAX_VALUE;
        for (int i = 0; i < bar.cuts().size(); i++) {
            Cut cut = bar.cuts().get(i);
            Piece piece = task.pieces().stream()
                    .filter(each -> each.id().equals(cut.piece()))
                    .findFirst()
                    .orElseThrow();
            assertThat(cut.longPointNm()).isEqualTo(piece.longPointNm()).isLessThanOrEqualTo(before);
            before = cut.longPointNm();
            if (i > 0) at += kerf;
            at += cut.longPointNm();
            assertThat(at).isLessThanOrEqualTo(stock.lengthNm());
        }
        assertThat(bar.offcutNm()).isEqualTo(Math.max(0, stock.lengthNm() - at - kerf));
    }
}
