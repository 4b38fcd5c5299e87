package plumbleaf.documents.view;

import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Offset;

/** What fills a bay, in a few words: for tables on screens and papers. */
public final class FillWords {
    private FillWords() {}

    public static String of(Bay bay, DisplayUnits units) {
        return bay.fill()
                .match(
                        open -> "nothing",
                        pickets -> bay.pickets().count() + " boards, "
                                + between(pickets.row().gap(), units),
                        lying -> lying.boards().size() + " boards lying, " + between(lying.gap(), units),
                        panel -> panel(panel, units),
                        fabric -> "fabric " + units.length(fabric.length()),
                        mesh -> "mesh " + units.length(mesh.sheets().get(0))
                                + (mesh.sheets().size() == 1
                                        ? ""
                                        : " x " + mesh.sheets().size()));
    }

    private static String between(Offset gap, DisplayUnits units) {
        return gap.inches() < 0 ? "lapped " + units.length(gap.size()) : units.length(gap) + " apart";
    }

    private static String panel(BayFill.Panel panel, DisplayUnits units) {
        return (panel.cut() ? "panel cut to " + units.length(panel.length()) : "whole panel") + ", " + panel.pickets()
                + " pickets";
    }
}
