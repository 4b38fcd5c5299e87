package plumbleaf.web.page;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;

/** A form that is not what its page sends is the sender's mistake, not ours. */
@ControllerAdvice
class NotUnderstood {
    @ExceptionHandler(MaxUploadSizeExceededException.class)
    void tooLarge(HttpServletResponse answer) throws IOException {
        answer.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
    }

    @ExceptionHandler(MultipartException.class)
    void notAForm(HttpServletResponse answer) throws IOException {
        answer.sendError(HttpServletResponse.SC_BAD_REQUEST);
    }
}
