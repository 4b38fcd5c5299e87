package plumbleaf.web.room;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.web.store.StoredJob;

/** Where a job's text becomes a job: reads it with the catalogue that comes with the program. */
@Component
class Bench {
    private final Catalogue catalogue = StandardCatalogue.load();

    Opened open(StoredJob stored, Typed typed) {
        DocumentText text = DocumentText.of(stored.document());
        return new Opened(stored, text, read(text.text()), catalogue, typed);
    }

    /** The text with an edit, or why it cannot be. */
    Edited apply(StoredJob stored, Edit edit) {
        DocumentText before = DocumentText.of(stored.document());
        DocumentText after;
        String place;
        try {
            after = edit.on(before);
            place = before.numbered(edit.path());
        } catch (IllegalArgumentException notThere) {
            return new Edited.Refused(edit.path(), "This place is not in the job; load the page again.");
        }
        List<InputError> errors = read(after.text()).errors();
        if (!errors.isEmpty()) return new Edited.Refused(place, problem(errors, place));
        String title = after.value("title").orElse(stored.title());
        return new Edited.Fine(title, after.text(), what(before.value(edit.path()), place, edit));
    }

    /** What is wrong with the field itself first; else with the job as a whole. */
    private static String problem(List<InputError> errors, String place) {
        List<InputError> own =
                errors.stream().filter(error -> error.field().equals(place)).toList();
        InputError first = own.isEmpty() ? errors.get(0) : own.get(0);
        String where = own.isEmpty() && !first.field().isEmpty() ? first.field() + ": " : "";
        return where + first.problem() + (first.cure().isEmpty() ? "." : "; " + first.cure() + ".");
    }

    private static String what(Optional<String> before, String place, Edit edit) {
        String now = edit.value().isBlank() ? "not said" : edit.unit().complete(edit.value());
        return place + ": " + before.orElse("not said") + " \u2192 " + now;
    }

    /** A job file from outside. */
    JobReading read(String file, byte[] bytes) {
        return JobFile.read(file, bytes, catalogue);
    }

    private JobReading read(String text) {
        return JobFile.read("the job", text, catalogue);
    }
}
