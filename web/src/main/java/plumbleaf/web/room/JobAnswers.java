package plumbleaf.web.room;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.packet.CrewSheet;
import plumbleaf.documents.typeset.HtmlPaper;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.result.ResultFile;
import plumbleaf.web.store.StoredJob;

/** What can be asked of a job without a page: its design, its papers and their pages, each as much of it as somebody may see. */
@Component
public class JobAnswers {
    private final Bench bench;
    private final PaperShelf shelf;

    JobAnswers(Bench bench, PaperShelf shelf) {
        this.bench = bench;
        this.shelf = shelf;
    }

    public List<InputError> errors(String file, byte[] bytes) {
        return bench.read(file, bytes).errors();
    }

    /** Everything worked out, as {@code design --json} gives it; nothing where the file is wrong. */
    public Optional<String> design(StoredJob job, Sight sight) {
        return bench.open(job, Typed.NOTHING)
                .design()
                .map(ResultFile::write)
                .map(text -> sight == Sight.EVERYTHING ? text : Veil.json(text));
    }

    /** The options of a job to tick, and what those of these ids come to together. */
    public Ticked ticked(StoredJob job, List<String> ids) {
        return bench.ticked(bench.open(job, Typed.NOTHING), ids);
    }

    /** What must still be put right in a job before anybody is asked to accept it, in words; nothing where nothing must. */
    public List<String> mustFix(StoredJob job) {
        return bench.open(job, Typed.NOTHING).findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .map(Finding::message)
                .toList();
    }

    public String document(StoredJob job, Sight sight) {
        return sight == Sight.EVERYTHING ? job.document() : Veil.json(job.document());
    }

    public List<PaperFile> papers(StoredJob job, Sight sight) {
        return shelf.papers(bench.open(job, Typed.NOTHING), sight);
    }

    public Optional<PaperFile> paper(StoredJob job, String name, Sight sight) {
        return shelf.paper(bench.open(job, Typed.NOTHING), name, sight);
    }

    /** How many pages a paper has. */
    public int pages(PaperFile paper) {
        return PaperShelf.pages(paper).size();
    }

    /** The crew sheet as a piece of HTML, with no price in it; empty where the file is wrong. */
    public String crewSheet(StoredJob job) {
        return bench.open(job, Typed.NOTHING)
                .design()
                .map(design -> Veil.words(
                        HtmlPaper.of(CrewSheet.of(PacketSubjects.of(design.job(), design, PaperOptions.usual())))))
                .orElse("");
    }

    /** A page of a paper, from 1, as a PNG picture. */
    public Optional<byte[]> page(PaperFile paper, int number) {
        return PaperShelf.page(paper, number);
    }

    /** The job's text with one more shot; whether it is a good one, reading the text will tell. */
    public String withShot(StoredJob job, String shotJson) {
        return DocumentText.of(job.document())
                .appended("ground.shots", shotJson)
                .text();
    }
}
