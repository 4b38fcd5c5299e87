package plumbleaf.web.page;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** The page for what is not there, not allowed, or our fault. */
@Controller
class WentWrong implements ErrorController {
    private final Pages pages;

    WentWrong(Pages pages) {
        this.pages = pages;
    }

    @RequestMapping("/error")
    ResponseEntity<String> page(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer number ? HttpStatus.resolve(number) : null;
        HttpStatus said = status == null ? HttpStatus.NOT_FOUND : status;
        String words = switch (said) {
            case NOT_FOUND -> "There is nothing at this address. The job may have been renamed or moved to the trash.";
            case FORBIDDEN ->
                "This page was open too long, or it is not for you. Go back, load it again and repeat the change.";
            case CONTENT_TOO_LARGE -> "That was too large to take.";
            default ->
                said.is5xxServerError()
                        ? "Our fault. What was saved before is safe; try again, and tell us if it comes back."
                        : "This could not be understood.";
        };
        return pages.html(said, "wrong.jte", Map.of("frame", pages.frame(request, "Plumbleaf"), "words", words));
    }
}
