package plumbleaf.cli;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.LengthText;

/** Cut plans for a terminal: each bar with its pieces in sawing order, and the proof beside the cost. */
final class CutText {
    private static final double NM_PER_INCH = 25_400_000.0;

    private CutText() {}

    static List<String> lines(CutPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(plan.stock() + ": " + plan.bars().size() + (plan.bars().size() == 1 ? " bar, " : " bars, ")
                + plan.cost().text()
                + (plan.proven()
                        ? ", proven least"
                        : ", at least " + plan.lowerBound().text() + " whatever the plan"));
        lines.add("  kerf " + inches(plan.saw().kerfNm()) + ", end trim "
                + inches(plan.saw().endTrimNm()));
        for (CutBar bar : plan.bars()) lines.addAll(bar(bar));
        return lines;
    }

    private static List<String> bar(CutBar bar) {
        List<String> lines = new ArrayList<>();
        lines.add("  " + feet(bar.lengthNm()) + (bar.fromOffcut() ? " offcut" : " bar") + ", "
                + (bar.offcutNm() == 0
                        ? "used up"
                        : inches(bar.offcutNm()) + (bar.offcutUsable() ? " left to keep" : " scrap")));
        Columns cuts = new Columns("rrl");
        for (Cut cut : bar.cuts())
            cuts.row(
                    feet(cut.longPointNm()),
                    inches(cut.longPointNm()),
                    cut.piece() + (cut.flip() ? ", turned end for end" : ""));
        lines.addAll(cuts.lines(4));
        return lines;
    }

    private static String inches(long nanometres) {
        return LengthText.inchesOnly(nanometres / NM_PER_INCH);
    }

    private static String feet(long nanometres) {
        return LengthText.feetAndInches(nanometres / NM_PER_INCH);
    }
}
