package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.offer.FitPrices;
import plumbleaf.jobfile.offer.WayWords;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;

/** What a run would cost racked, stepped and level top, which of them is cheapest and why. */
final class FitPanel {
    private FitPanel() {}

    static Panel of(Optional<FitPrices> prices) {
        Panel panel = Panel.of("What the fit costs", "");
        if (prices.isEmpty())
            return panel.withPresses(List.of(new Panel.Press(
                    "Price each run racked, stepped and level top, and with its posts nearer together", "price-fits")));
        List<Note> notes = new ArrayList<>();
        List<Table.Line> lines = new ArrayList<>();
        for (FitPrices.OfRun run : prices.get().runs()) {
            run.cheapest().ifPresent(best -> notes.add(note(run, best)));
            for (FitPrices.Way way : run.ways())
                lines.add(new Table.Line(
                        run.run(),
                        List.of(
                                run.run(),
                                words(way.fit()) + (way.fit() == run.now() ? ", as it is" : ""),
                                way.total().text(),
                                WayWords.signed(way.change().price()),
                                way.mustFix() == 0 ? Verdicts.words(way.verdict()) : way.mustFix() + " to fix")));
        }
        return panel.withNotes(notes)
                .withTables(List.of(new Table(
                        "Price of the whole job, each designed and checked anew",
                        List.of("Run", "Fit", "Total", "Adds", "Checks"),
                        lines)));
    }

    private static Note note(FitPrices.OfRun run, FitPrices.Way best) {
        boolean stays = best.fit() == run.now();
        String message = stays ? stays(run, best) : changes(run, best);
        List<Note.Press> presses = stays
                ? List.of()
                : List.of(new Note.Press(
                        "Make run " + run.run() + " " + words(best.fit()),
                        Money.ZERO.minus(best.change().price()).text() + " less",
                        FitPrices.edit(run.run(), best.fit())));
        return new Note("pass", "Cheapest fit", run.run(), message, "priced from the price book", "", presses);
    }

    private static String stays(FitPrices.OfRun run, FitPrices.Way best) {
        Optional<FitPrices.Way> next = run.ways().stream()
                .filter(way -> way.fit() != best.fit() && way.mustFix() <= best.mustFix())
                .min(Comparator.comparing(FitPrices.Way::total));
        String first = "Run " + run.run() + " costs least as it is, " + words(best.fit()) + ".";
        return next.map(way -> first + " " + capital(words(way.fit())) + " adds "
                        + way.change().price().text() + WayWords.reason(way.change()) + ".")
                .orElse(first + " Neither other way passes as many checks.");
    }

    private static String changes(FitPrices.OfRun run, FitPrices.Way best) {
        return "Run " + run.run() + " costs least " + words(best.fit()) + ": "
                + Money.ZERO.minus(best.change().price()).text() + " less than " + words(run.now())
                + WayWords.reason(best.change()) + ".";
    }

    private static String words(Fit fit) {
        return fit.key().replace('-', ' ');
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
