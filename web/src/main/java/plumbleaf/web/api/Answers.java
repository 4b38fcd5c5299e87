package plumbleaf.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.StoredJob;

/** What the doors for programs say alike: documents, errors, and the version of a job as its entity tag. */
final class Answers {
    /** As large as a job file may be. */
    private static final int LARGEST_BYTES = 32 * 1024 * 1024;

    private Answers() {}

    static ResponseEntity<String> json(HttpStatus status, String document) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .cacheControl(CacheControl.noStore())
                .body(document);
    }

    static ResponseEntity<String> json(HttpStatus status, Json.Members members) {
        return json(status, JsonWriter.write(members.build()));
    }

    /** A job's document, or what stands for it, with its version. */
    static ResponseEntity<String> versioned(HttpStatus status, StoredJob job, String document) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .cacheControl(CacheControl.noStore())
                .eTag("\"" + job.version() + "\"")
                .body(document);
    }

    static ResponseEntity<String> errors(HttpStatus status, List<InputError> errors) {
        return json(status, Json.object().put("errors", errors, InputError::json));
    }

    static ResponseEntity<String> error(HttpStatus status, String problem, String cure) {
        return errors(status, List.of(InputError.ofFile("request", problem, cure)));
    }

    static ResponseEntity<String> noSuchJob() {
        return error(HttpStatus.NOT_FOUND, "there is no such job", "see /api/v1/jobs");
    }

    static Optional<JobId> id(String text) {
        return JobId.isOne(text) ? Optional.of(new JobId(text)) : Optional.empty();
    }

    /** The version that the sender saw, from {@code If-Match: "7"}. */
    static Optional<Long> seen(HttpServletRequest request) {
        String header = request.getHeader("If-Match");
        return header != null && header.matches("\"\\d{1,18}\"")
                ? Optional.of(Long.parseLong(header.substring(1, header.length() - 1)))
                : Optional.empty();
    }

    /** The body as text; nothing where it is too large or no UTF-8. */
    static Optional<String> body(HttpServletRequest request) throws IOException {
        byte[] bytes = request.getInputStream().readNBytes(LARGEST_BYTES + 1);
        if (bytes.length > LARGEST_BYTES) return Optional.empty();
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException notText) {
            return Optional.empty();
        }
    }
}
