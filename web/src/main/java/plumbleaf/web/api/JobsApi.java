package plumbleaf.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.web.people.WhoIsThere;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Saving;
import plumbleaf.web.store.StoredJob;

/** Jobs for programs. A change names the version it was made on, and is refused with both versions where somebody was first. */
@Controller
@RequestMapping("/api/v1/jobs")
class JobsApi {
    private final JobStore store;
    private final JobAnswers answers;
    private final WhoIsThere who;

    JobsApi(JobStore store, JobAnswers answers, WhoIsThere who) {
        this.store = store;
        this.answers = answers;
        this.who = who;
    }

    @GetMapping
    ResponseEntity<String> list() {
        return Answers.json(
                HttpStatus.OK,
                Json.object()
                        .put(
                                "jobs",
                                store.list(),
                                line -> Json.object()
                                        .put("id", line.id().text())
                                        .put("title", line.title())
                                        .put("version", Json.count(line.version()))
                                        .put("changedAt", line.changedAt().toString())
                                        .build()));
    }

    @PostMapping
    ResponseEntity<String> create(HttpServletRequest request) throws IOException {
        Optional<String> text = Answers.body(request);
        if (text.isEmpty()) return tooLarge();
        List<InputError> errors = answers.errors("job", text.get().getBytes(StandardCharsets.UTF_8));
        if (!errors.isEmpty()) return Answers.errors(HttpStatus.UNPROCESSABLE_CONTENT, errors);
        StoredJob job = store.create(Rooms.titleOf(text.get()), text.get(), me(request));
        return ResponseEntity.status(HttpStatus.CREATED)
                .location(URI.create("/api/v1/jobs/" + job.id()))
                .headers(saved(HttpStatus.CREATED, job).getHeaders())
                .body(saved(HttpStatus.CREATED, job).getBody());
    }

    @GetMapping("/{id}")
    ResponseEntity<String> job(HttpServletRequest request, @PathVariable String id) {
        return open(id).map(job -> Answers.versioned(HttpStatus.OK, job, answers.document(job, sight(request))))
                .orElseGet(Answers::noSuchJob);
    }

    @PutMapping("/{id}")
    ResponseEntity<String> replace(HttpServletRequest request, @PathVariable String id) throws IOException {
        Optional<StoredJob> job = open(id);
        if (job.isEmpty()) return Answers.noSuchJob();
        Optional<Long> seen = Answers.seen(request);
        if (seen.isEmpty()) return sayWhich();
        Optional<String> text = Answers.body(request);
        if (text.isEmpty()) return tooLarge();
        List<InputError> errors = answers.errors("job", text.get().getBytes(StandardCharsets.UTF_8));
        if (!errors.isEmpty()) return Answers.errors(HttpStatus.UNPROCESSABLE_CONTENT, errors);
        return kept(request, job.get().id(), seen.get(), text.get(), "replaced the job by a program");
    }

    @DeleteMapping("/{id}")
    ResponseEntity<String> throwAway(HttpServletRequest request, @PathVariable String id) {
        boolean gone =
                Answers.id(id).map(job -> store.throwAway(job, me(request))).orElse(false);
        return gone ? ResponseEntity.noContent().build() : Answers.noSuchJob();
    }

    @GetMapping("/{id}/shots")
    ResponseEntity<String> shots(@PathVariable String id) {
        return open(id).map(job -> Answers.versioned(
                        HttpStatus.OK,
                        job,
                        JsonWriter.write(Json.object()
                                .put("shots", Shots.of(job.document()), shot -> shot)
                                .build())))
                .orElseGet(Answers::noSuchJob);
    }

    /** One more shot, as a job file holds it. */
    @PostMapping("/{id}/shots")
    ResponseEntity<String> addShot(HttpServletRequest request, @PathVariable String id) throws IOException {
        Optional<StoredJob> job = open(id);
        if (job.isEmpty()) return Answers.noSuchJob();
        Optional<Long> seen = Answers.seen(request);
        if (seen.isEmpty()) return sayWhich();
        Optional<String> shot = Answers.body(request)
                .flatMap(
                        text -> JsonReader.read(text).match(tree -> tree.root().asObject(), broken -> Optional.empty()))
                .map(JsonWriter::compact);
        if (shot.isEmpty())
            return Answers.error(
                    HttpStatus.BAD_REQUEST, "this is not a shot", "send one JSON object as a job file has it");
        String text = answers.withShot(job.get(), shot.get());
        List<InputError> errors = answers.errors("job", text.getBytes(StandardCharsets.UTF_8));
        if (!errors.isEmpty()) return Answers.errors(HttpStatus.UNPROCESSABLE_CONTENT, errors);
        return kept(request, job.get().id(), seen.get(), text, "a shot by a program");
    }

    private ResponseEntity<String> kept(HttpServletRequest request, JobId id, long seen, String text, String what) {
        return store.edit(id, seen, Rooms.titleOf(text), text, what, me(request))
                .match(saved -> saved(HttpStatus.OK, saved.now()), stale -> conflict(stale, text));
    }

    private static ResponseEntity<String> saved(HttpStatus status, StoredJob job) {
        return Answers.versioned(
                status,
                job,
                JsonWriter.write(Json.object()
                        .put("id", job.id().text())
                        .put("version", Json.count(job.version()))
                        .build()));
    }

    private static ResponseEntity<String> conflict(Saving.Stale stale, String mine) {
        return Answers.json(
                HttpStatus.CONFLICT,
                Json.object()
                        .put(
                                "errors",
                                List.of(InputError.ofFile(
                                        "job",
                                        "somebody changed this job first",
                                        "put your change into the present version and send it with that version")),
                                InputError::json)
                        .put("who", stale.who())
                        .put("what", stale.what())
                        .put("version", Json.count(stale.now().version()))
                        .put("now", stale.now().document())
                        .put("yours", mine));
    }

    private static ResponseEntity<String> sayWhich() {
        return Answers.error(
                HttpStatus.PRECONDITION_REQUIRED,
                "it is not said which version this changes",
                "send If-Match with the ETag you got");
    }

    private static ResponseEntity<String> tooLarge() {
        return Answers.error(HttpStatus.CONTENT_TOO_LARGE, "this is larger than 32 MiB or not UTF-8", "send less");
    }

    private Optional<StoredJob> open(String id) {
        return Answers.id(id).flatMap(store::open);
    }

    private Sight sight(HttpServletRequest request) {
        return Sight.of(who.person(request.getUserPrincipal()).role());
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }
}
