package plumbleaf.web.room;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.Papers;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.letterhead.HouseLetterhead;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** A job as it stands beside an earlier revision of it: what was accepted beside what is to be. */
@Controller
class SinceDoor {
    private final JobStore store;
    private final Bench bench;
    private final Pages pages;
    private final HouseLetterhead letterhead;

    SinceDoor(JobStore store, Bench bench, Pages pages, HouseLetterhead letterhead) {
        this.letterhead = letterhead;
        this.store = store;
        this.bench = bench;
        this.pages = pages;
    }

    @GetMapping("/jobs/{id}/since/{revision}")
    ResponseEntity<String> since(HttpServletRequest request, @PathVariable String id, @PathVariable long revision) {
        StoredJob job = open(id);
        Design then = designThen(job, revision);
        Design now = designNow(job);
        Difference difference = Difference.of(then, now);
        return pages.html(
                HttpStatus.OK,
                "since.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Since revision " + revision + " \u00b7 " + job.title()),
                        "job",
                        id,
                        "title",
                        job.title(),
                        "since",
                        Long.toString(revision),
                        "pictures",
                        pictures(job, now, Breadth.of(request)).since(pictures(job, then, Breadth.of(request))),
                        "panel",
                        Panel.of("", "").withTables(tables(difference)),
                        "price",
                        difference.price().signedText(),
                        "days",
                        DecimalText.upTo(difference.siteDays(), 1),
                        "version",
                        Long.toString(job.version())));
    }

    @GetMapping("/jobs/{id}/since/{revision}/change-order.pdf")
    ResponseEntity<byte[]> paper(
            @PathVariable String id,
            @PathVariable long revision,
            @RequestParam(defaultValue = "As drawn in the papers of the changed job.") String what) {
        StoredJob job = open(id);
        Design then = designThen(job, revision);
        Design now = designNow(job);
        Money accepted = Statement.of(
                        then.quote().price(),
                        then.job().log().changes(),
                        then.job().money().billing())
                .contract();
        PaperFile paper = Papers.changeOrder(
                now,
                Difference.of(then, now),
                what,
                accepted,
                letterhead.options(id).issued(Long.toString(job.revision())));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + paper.name() + "\"")
                .body(paper.bytes());
    }

    private static Pictures pictures(StoredJob job, Design design, Breadth breadth) {
        return new Pictures(
                design, new Subjects(design), new Handles(DocumentText.of(job.document()), design), breadth);
    }

    private static List<Table> tables(Difference difference) {
        List<Table> tables = new ArrayList<>();
        if (!difference.parts().isEmpty())
            tables.add(new Table(
                    "Posts and gates",
                    List.of("Part", ""),
                    difference.parts().stream()
                            .map(part -> new Table.Line(
                                    part.part(), List.of(part.part(), part.way().key())))
                            .toList()));
        if (!difference.lines().isEmpty())
            tables.add(new Table(
                    "Direct cost",
                    List.of("Item", "Before", "After", "Unit", "Adds"),
                    difference.lines().stream().map(SinceDoor::line).toList()));
        return tables;
    }

    private static Table.Line line(Difference.LineChange line) {
        return new Table.Line(
                "",
                List.of(
                        line.name(),
                        DecimalText.upTo(line.before(), 2),
                        DecimalText.upTo(line.after(), 2),
                        line.unit(),
                        line.amount().signedText()));
    }

    private StoredJob open(String id) {
        if (!JobId.isOne(id)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return store.open(new JobId(id)).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private Design designNow(StoredJob job) {
        return designed(job);
    }

    private Design designThen(StoredJob job, long revision) {
        Optional<String> document = store.document(job.id(), revision);
        if (document.isEmpty()) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        return designed(
                new StoredJob(job.id(), job.title(), job.version(), revision, document.get(), job.undo(), job.redo()));
    }

    /** One of the two may be a file that cannot be read; then there is nothing to compare. */
    private Design designed(StoredJob job) {
        return bench.open(job, Typed.NOTHING)
                .design()
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.CONFLICT, "A revision that cannot be read"));
    }
}
