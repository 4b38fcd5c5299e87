package plumbleaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;

/** Cut plans for a terminal: each bar with its pieces in sawing order, and the proof beside the cost. */
final class CutText {
    private static final double NM_PER_INCH = 25_400_000.0;

    private CutText() {}

    static List<String> lines(String name, CutPlan plan, DisplayUnits units) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": " + plan.bars().size() + (plan.bars().size() == 1 ? " bar, " : " bars, ")
                + plan.cost().text()
                + (plan.proven()
                        ? ", proven least"
                        : ", not proven: no plan costs less than "
                                + plan.lowerBound().text() + ", so at most "
                                + plan.gap().text() + " could be saved"));
        lines.add("  kerf " + inches(units, plan.saw().kerfNm()) + ", end trim "
                + inches(units, plan.saw().endTrimNm())
                + ", " + setUps(plan));
        if (plan.barNm() > 0)
            lines.add("  " + percent(plan.piecesPct()) + " in pieces, " + percent(plan.keptPct()) + " kept, "
                    + percent(plan.wastePct()) + " kerf, trim and scrap");
        List<List<CutBar>> alike = new ArrayList<>();
        for (CutBar bar : plan.bars()) {
            List<CutBar> last = alike.isEmpty() ? List.of() : alike.get(alike.size() - 1);
            if (!last.isEmpty() && cutAlike(last.get(0), bar)) last.add(bar);
            else alike.add(new ArrayList<>(List.of(bar)));
        }
        for (List<CutBar> bars : alike) lines.addAll(bars(bars, units));
        return lines;
    }

    private static String percent(double pct) {
        return DecimalText.upTo(pct, 1) + "%";
    }

    /** What is proven of it, and no more. */
    private static String setUps(CutPlan plan) {
        String count = plan.setUps() + (plan.setUps() == 1 ? " saw set-up" : " saw set-ups");
        if (plan.setUps() <= 1) return count;
        return count
                + (plan.hasFewestSetUps()
                        ? ", the fewest for these bars"
                        : plan.leastSetUps() > 1 ? ", at least " + plan.leastSetUps() + " for these bars" : "");
    }

    private static boolean cutAlike(CutBar one, CutBar other) {
        return one.lengthNm() == other.lengthNm()
                && one.fromOffcut() == other.fromOffcut()
                && one.offcutNm() == other.offcutNm()
                && one.cuts().stream()
                        .map(Cut::longPointNm)
                        .toList()
                        .equals(other.cuts().stream().map(Cut::longPointNm).toList());
    }

    /** Bars that are cut alike, once, with the marks of all their pieces. */
    private static List<String> bars(List<CutBar> bars, DisplayUnits units) {
        CutBar first = bars.get(0);
        List<String> lines = new ArrayList<>();
        lines.add("  " + bars.size() + " x " + units.length(first.lengthNm() / NM_PER_INCH)
                + (first.fromOffcut() ? " offcut, " : ", ")
                + (first.offcutNm() == 0
                        ? "used up"
                        : inches(units, first.offcutNm()) + (first.offcutUsable() ? " left to keep" : " scrap")));
        List<List<String>> pieces = new ArrayList<>();
        for (int i = 0; i < first.cuts().size(); i++) {
            Set<String> marks = new LinkedHashSet<>();
            for (CutBar bar : bars) {
                Cut cut = bar.cuts().get(i);
                marks.add(cut.piece() + (cut.flip() ? " (turned)" : ""));
            }
            long longPoint = first.cuts().get(i).longPointNm();
            pieces.add(List.of(
                    units.length(longPoint / NM_PER_INCH),
                    units == DisplayUnits.US ? inches(units, longPoint) : "",
                    String.join(", ", marks)));
        }
        lines.addAll(table(pieces).lines(4));
        return lines;
    }

    /** Pieces in the order they are sawn in; those that follow one another and are called alike stand in one row, with their number. */
    private static Columns table(List<List<String>> pieces) {
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        int begin = 0;
        for (int i = 0; i < pieces.size(); i++) {
            if (!pieces.get(i).equals(pieces.get(begin))) begin = i;
            counts.merge(begin, 1, Integer::sum);
        }
        boolean anyAlike = counts.size() < pieces.size();
        Columns table = new Columns(anyAlike ? "rrrl" : "rrl");
        counts.forEach((row, count) -> {
            List<String> cells = new ArrayList<>(pieces.get(row));
            if (anyAlike) cells.add(0, count + " x");
            table.row(cells.toArray(String[]::new));
        });
        return table;
    }

    /** As saw stops are set: whole inches beside the feet, or millimeters. */
    private static String inches(DisplayUnits units, long nanometres) {
        double inches = nanometres / NM_PER_INCH;
        return units == DisplayUnits.US ? LengthText.inchesOnly(inches) : units.length(inches);
    }
}
