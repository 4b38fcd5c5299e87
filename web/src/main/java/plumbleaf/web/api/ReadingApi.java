package plumbleaf.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import plumbleaf.documents.PaperFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** What is worked out of a job, for programs: its design and its papers; and the price books. */
@Controller
@RequestMapping("/api/v1")
class ReadingApi {
    private final JobStore store;
    private final JobAnswers answers;
    private final HouseBooks books;
    private final WhoIsThere who;

    ReadingApi(JobStore store, JobAnswers answers, HouseBooks books, WhoIsThere who) {
        this.store = store;
        this.answers = answers;
        this.books = books;
        this.who = who;
    }

    @GetMapping("/openapi.json")
    ResponseEntity<String> description() throws IOException {
        try (InputStream file = ReadingApi.class.getResourceAsStream("/plumbleaf/web/openapi.json")) {
            if (file == null) throw new IllegalStateException("The description of the API is not in the jar");
            return Answers.json(HttpStatus.OK, new String(file.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @GetMapping("/jobs/{id}/design")
    ResponseEntity<String> design(HttpServletRequest request, @PathVariable String id) {
        Optional<StoredJob> job = open(id);
        if (job.isEmpty()) return Answers.noSuchJob();
        return answers.design(job.get(), sight(request))
                .map(text -> Answers.versioned(HttpStatus.OK, job.get(), text))
                .orElseGet(() -> Answers.error(
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "this job's file has errors",
                        "get the job and put it right"));
    }

    @GetMapping("/jobs/{id}/papers")
    ResponseEntity<String> papers(HttpServletRequest request, @PathVariable String id) {
        Optional<StoredJob> job = open(id);
        if (job.isEmpty()) return Answers.noSuchJob();
        List<PaperFile> papers = answers.papers(job.get(), sight(request));
        return Answers.json(
                HttpStatus.OK,
                Json.object()
                        .put(
                                "papers",
                                papers,
                                paper -> Json.object()
                                        .put("name", paper.name())
                                        .put("mediaType", paper.mediaType())
                                        .put("bytes", paper.bytes().length)
                                        .build()));
    }

    @GetMapping("/jobs/{id}/papers/{name}")
    ResponseEntity<byte[]> paper(HttpServletRequest request, @PathVariable String id, @PathVariable String name) {
        return open(id).flatMap(job -> answers.paper(job, name, sight(request)))
                .map(paper -> ResponseEntity.ok()
                        .contentType(MediaType.parseMediaType(paper.mediaType()))
                        .cacheControl(CacheControl.noStore())
                        .body(paper.bytes()))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    @GetMapping("/price-books")
    ResponseEntity<String> priceBooks() {
        return Answers.json(HttpStatus.OK, Json.object().put("priceBooks", Json.texts(books.names())));
    }

    @GetMapping("/price-books/{name}")
    ResponseEntity<String> priceBook(@PathVariable String name) {
        Map<String, String> tables = books.tables(name);
        if (tables.isEmpty())
            return Answers.error(HttpStatus.NOT_FOUND, "there is no such price book", "see /api/v1/price-books");
        return Answers.json(
                HttpStatus.OK,
                Json.object()
                        .put("id", name)
                        .put("ofTheHouse", books.isOfTheHouse(name))
                        .put(
                                "tables",
                                List.copyOf(tables.entrySet()),
                                table -> Json.object()
                                        .put("file", table.getKey())
                                        .put("text", table.getValue())
                                        .build()));
    }

    private Optional<StoredJob> open(String id) {
        return Answers.id(id).flatMap(store::open);
    }

    private Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }
}
