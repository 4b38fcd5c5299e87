package plumbleaf.web.room;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;
import plumbleaf.web.store.StoredJob;

/**
 * A job that a room shows.
 *
 * @param text      its file, with the place of every value
 * @param reading   what the file says, or what is wrong with it
 * @param design    everything worked out; nothing where the file is wrong
 * @param catalogue what can be bought
 * @param typed     what was typed last and could not be kept
 * @param key       names the text and the price book it was designed with
 */
record Opened(
        StoredJob stored,
        DocumentText text,
        JobReading reading,
        Optional<Design> design,
        Catalogue catalogue,
        Typed typed,
        String key) {
    Optional<Job> job() {
        return reading.job();
    }

    /** How the yard knows it. */
    Taker taker() {
        return Bench.taker(stored);
    }

    Figures figures() {
        return new Figures(job().map(Job::display).orElse(DisplayUnits.US));
    }

    /** Everything there is to say about the job, worst first. */
    List<Finding> findings() {
        return design.map(Design::findings).orElse(List.of());
    }

    FieldMaker fields() {
        List<Assumption> assumed = job().map(Job::assumed).orElse(List.of());
        return new FieldMaker(text, assumed, typed);
    }

    Field field(String path, String label, Unit unit, String of) {
        return fields().text(path, label, unit, of);
    }

    Field choice(String path, String label, String of, List<Choice> choices) {
        return fields().choice(path, label, Unit.WORDS, of, choices);
    }

    /** Something the user may pin; left empty it is chosen. */
    Field pinned(String path, String label, String of, List<Choice> choices) {
        return fields().choice(path, label, Unit.WORDS, of, choices, "not pinned: it is chosen");
    }
}
