package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.offer.SpacingPrices;
import plumbleaf.jobfile.offer.WayWords;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;

/** What a run would cost with its posts nearer together, and whether the fewest bays are the cheapest. */
final class SpacingPanel {
    private SpacingPanel() {}

    static Panel of(SpacingPrices prices, DisplayUnits display) {
        List<Note> notes = new ArrayList<>();
        List<Table.Line> lines = new ArrayList<>();
        for (SpacingPrices.OfRun run : prices.runs()) {
            notes.add(note(run, display));
            for (SpacingPrices.Way way : run.ways())
                lines.add(new Table.Line(
                        run.run(),
                        List.of(
                                run.run(),
                                display.length(way.maxBay()) + (way.equals(run.asItIs()) ? ", as it is" : ""),
                                way.bays() + " of " + display.length(way.longest()),
                                way.total().text(),
                                WayWords.signed(way.change().price()),
                                way.mustFix() == 0 ? Verdicts.words(way.verdict()) : way.mustFix() + " to fix")));
        }
        return Panel.of("What the spacing costs", "")
                .withNotes(notes)
                .withTables(List.of(new Table(
                        "Price of the whole job, each laid out, checked and cut anew",
                        List.of("Run", "Largest bay", "Bays", "Total", "Adds", "Checks"),
                        lines)));
    }

    private static Note note(SpacingPrices.OfRun run, DisplayUnits display) {
        SpacingPrices.Way best = run.cheapest();
        List<Note.Press> presses = best.equals(run.asItIs())
                ? List.of()
                : List.of(new Note.Press(
                        "Set the posts of " + run.run() + " at most " + display.length(best.maxBay()) + " apart",
                        Money.ZERO.minus(best.change().price()).text() + " less",
                        SpacingPrices.edit(run.run(), best.maxBay())));
        return new Note(
                "pass", "Cheapest spacing", run.run(), run.words(display), "priced from the price book", "", presses);
    }
}
