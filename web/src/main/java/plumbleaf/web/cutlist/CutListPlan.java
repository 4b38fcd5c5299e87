package plumbleaf.web.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.documents.view.CutBars;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Table;

/**
 * A plan as the page shows it.
 *
 * @param head   how many bars, and what is proven
 * @param detail how it is sawn, and what is lost
 * @param bars   what to buy and what to fetch
 * @param svg    the bars with their pieces, made by our own drawing code
 */
public record CutListPlan(String head, String detail, Table bars, String svg) {
    private static final double NM_PER_INCH = 25_400_000.0;
    private static final double WIDE_IN = 9;
    private static final double NARROW_IN = 3.9;

    static CutListPlan of(CutPlan plan, Breadth breadth) {
        double wideIn = breadth == Breadth.WIDE ? WIDE_IN : NARROW_IN;
        return new CutListPlan(
                head(plan), detail(plan), bars(plan), SvgPlot.inPage(CutBars.of(plan, wideIn, DisplayUnits.US)));
    }

    private static String head(CutPlan plan) {
        String bars = plan.bars().size()
                + (plan.bars().size() == 1 ? " bar, " : " bars, ")
                + plan.cost().text();
        return bars
                + (plan.proven()
                        ? ": proven least"
                        : ": not proven, at most " + plan.gap().text() + " could be saved");
    }

    private static String detail(CutPlan plan) {
        return DecimalText.upTo(plan.piecesPct(), 1) + "% of them in pieces, " + DecimalText.upTo(plan.keptPct(), 1)
                + "% kept, " + DecimalText.upTo(plan.wastePct(), 1) + "% kerf, trim and scrap; " + plan.setUps()
                + (plan.setUps() == 1 ? " saw set-up." : " saw set-ups.");
    }

    private static Table bars(CutPlan plan) {
        Map<String, List<CutBar>> kinds = new LinkedHashMap<>();
        for (CutBar bar : plan.bars())
            kinds.computeIfAbsent(bar.bar(), kind -> new ArrayList<>()).add(bar);
        List<Table.Line> lines = new ArrayList<>();
        kinds.forEach((kind, bars) -> {
            CutBar one = bars.get(0);
            lines.add(new Table.Line(
                    "",
                    List.of(
                            Integer.toString(bars.size()),
                            DisplayUnits.US.length(one.lengthNm() / NM_PER_INCH) + (one.fromOffcut() ? " offcut" : ""),
                            kind,
                            one.price().isZero() ? "" : one.price().text())));
        });
        return new Table("Bars to lay out", List.of("Count", "Length", "What", "Each"), lines);
    }
}
