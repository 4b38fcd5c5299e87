package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;

/** The cheapest build of a gate, asked for by a press: what may be looked through, how far it is, and what it found with its proof. */
final class SearchPanel {
    private SearchPanel() {}

    static Panel of(Opened opened, Gate gate, GateSearches searches) {
        String id = gate.id();
        Panel panel = Panel.of("Cheapest build of " + id + " that passes", id);
        Optional<GateSearching> asked = searches.of(opened, id);
        if (asked.isPresent() && asked.get().isRunning())
            return panel.withWaiting(
                            asked.get().how().words() + ". " + asked.get().words())
                    .withPresses(List.of(new Panel.Press("Give this search up", "give-up-search?gate=" + id)));
        List<Panel.Press> presses = presses(opened, gate);
        Optional<FoundBuilds> found = asked.flatMap(GateSearching::found);
        if (found.isEmpty()) {
            boolean failed = asked.map(GateSearching::isFailed).orElse(false);
            return panel.withPresses(presses)
                    .withNotes(
                            failed
                                    ? List.of(note(id, "cannot-say", "Cannot say", "The search broke off. Ask again."))
                                    : List.of());
        }
        PickedWords words = words(opened);
        return panel.withNotes(notes(found.get(), asked.get().how(), words))
                .withRows(ChoicePanel.rows(found.get()))
                .withTables(ChoicePanel.proof(found.get(), words))
                .withPresses(presses);
    }

    private static PickedWords words(Opened opened) {
        return new PickedWords(
                opened.catalogue(), opened.job().map(Job::display).orElse(DisplayUnits.US));
    }

    private static List<Panel.Press> presses(Opened opened, Gate gate) {
        List<SearchHow> hows = new ArrayList<>();
        boolean open = opened.job().map(job -> job.builds().of(gate).isOpen()).orElse(false);
        if (open) hows.add(SearchHow.OPEN);
        hows.add(SearchHow.BUILD);
        hows.addAll(gate.kind()
                .match(
                        swing -> List.of(SearchHow.HINGES, SearchHow.SIDES),
                        pair -> List.of(SearchHow.HINGES),
                        slide -> List.of(SearchHow.TAILS),
                        flagged -> List.of()));
        List<Panel.Press> presses = new ArrayList<>();
        for (SearchHow how : hows)
            presses.add(new Panel.Press(
                    "Search: " + how.words().substring(0, 1).toLowerCase(Locale.ROOT)
                            + how.words().substring(1),
                    "search?gate=" + gate.id() + "&how=" + how.key()));
        return presses;
    }

    private static List<Note> notes(FoundBuilds found, SearchHow how, PickedWords words) {
        String id = found.gate().id();
        if (found.passing().isEmpty())
            return List.of(note(
                    id,
                    "must-fix",
                    "Must fix",
                    how.words() + ": none passes. Shorten the leaf, lighten it, or give the posts better ground."));
        // What a free search found stands without what was pinned before: an own hole of the latch post, a right leaf
        // of its own.
        String first = how.keepsPinned() ? "" : "builds." + id + "=; ";
        List<Note> notes = new ArrayList<>();
        notes.add(new Note(
                "pass",
                "Cheapest",
                id,
                how.words() + ": the first passes, and every cheaper one fails a check, in soft soil.",
                "search over what is stocked, judged in soft soil",
                "",
                ChoicePanel.takes(found, first, words)));
        if (!found.finer().isEmpty()) notes.add(lessDrop(found, first, words));
        return notes;
    }

    /** What each further 1/16 in. less costs. */
    private static Note lessDrop(FoundBuilds found, String first, PickedWords words) {
        Money chosen = found.passing().get(0).price();
        List<Note.Press> presses = new ArrayList<>();
        for (Finer<PickedGate> each : found.finer())
            presses.add(new Note.Press(
                    "Take: " + words.of(each.candidate().build()),
                    LengthText.inchesOnly(each.limit()) + " and less, +"
                            + each.candidate().price().minus(chosen).text(),
                    first + ChoicePanel.edit(found.gate(), each.candidate())));
        return new Note(
                "pass",
                "Less drop",
                found.gate().id(),
                found.slides()
                        ? "What each further 1/16\" less costs that its nose comes low to the receiver."
                        : "What each further 1/16\" less of drop after hanging in soft soil costs.",
                "the cheapest build that passes and drops no more",
                "",
                presses);
    }

    private static Note note(String gate, String severity, String words, String message) {
        return new Note(
                severity, words, gate, message, "search over what is stocked, judged in soft soil", "", List.of());
    }
}
