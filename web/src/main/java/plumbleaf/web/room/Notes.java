package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Note;

/** Findings as a page shows them, in their own order: worst first. */
final class Notes {
    private Notes() {}

    /** All that ask for something or cannot be said about any of these parts. */
    static List<Note> about(List<Finding> findings, List<String> parts) {
        List<Note> notes = new ArrayList<>();
        for (Finding finding : findings)
            if (finding.severity() != Severity.PASS && parts.contains(finding.part())) notes.add(of(finding));
        return notes;
    }

    /** Those that stop the job: must fix, cannot say. */
    static List<Note> pressing(List<Note> notes) {
        return notes.stream().filter(note -> !note.severity().equals("caution")).toList();
    }

    static List<Note> cautions(List<Note> notes) {
        return notes.stream().filter(note -> note.severity().equals("caution")).toList();
    }

    /** All that ask for something, whose id begins with one of these areas. */
    static List<Note> inAreas(List<Finding> findings, List<String> areas) {
        List<Note> notes = new ArrayList<>();
        for (Finding finding : findings) {
            String area = finding.id().substring(0, Math.max(0, finding.id().indexOf('.')));
            if (finding.severity() != Severity.PASS && areas.contains(area)) notes.add(of(finding));
        }
        return notes;
    }

    /** All that ask for something. */
    static List<Note> asking(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.PASS)
                .map(Notes::of)
                .toList();
    }

    static Note of(Finding finding) {
        return new Note(
                finding.severity().key(),
                finding.severity().words(),
                finding.part(),
                finding.message(),
                finding.basis().words(),
                finding.measure().flatMap(Notes::ratio).orElse(""),
                finding.remedies().stream().map(Notes::press).toList());
    }

    private static Optional<String> ratio(Measure measure) {
        return measure.ratio().isPresent() ? Optional.of(measure.ratioText()) : Optional.empty();
    }

    private static Note.Press press(Remedy remedy) {
        List<String> gain = new ArrayList<>();
        remedy.ratio().ifPresent(ratio -> gain.add("then " + DecimalText.fixed(ratio, 2) + " of the limit"));
        if (remedy.priceChange().isPresent()) gain.add(remedy.priceWords());
        return new Note.Press(
                remedy.words(), String.join(", ", gain), remedy.edit().orElse(""));
    }
}
