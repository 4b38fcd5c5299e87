package plumbleaf.web.guide;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.web.page.Pages;

/** The guide for whoever works here; it says nothing of any job. */
@Controller
class GuideDoor {
    private static final int LONGEST_QUESTION = 200;

    private final Guide guide;
    private final Pages pages;

    GuideDoor(Guide guide, Pages pages) {
        this.guide = guide;
        this.pages = pages;
    }

    @GetMapping("/guide")
    ResponseEntity<String> first(
            HttpServletRequest request, @RequestParam(name = "q", defaultValue = "") String asked) {
        return asked.isBlank() ? page(request, "index") : found(request, asked);
    }

    @GetMapping("/guide/{chapter}")
    ResponseEntity<String> page(HttpServletRequest request, @PathVariable("chapter") String chapter) {
        Page page = guide.page(chapter).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        return show(request, page.title(), "", Optional.of(page));
    }

    private ResponseEntity<String> found(HttpServletRequest request, String asked) {
        String question = asked.strip();
        if (question.length() > LONGEST_QUESTION) question = question.substring(0, LONGEST_QUESTION);
        return show(request, "Guide: " + question, question, Optional.empty());
    }

    private ResponseEntity<String> show(HttpServletRequest request, String title, String asked, Optional<Page> page) {
        return pages.html(
                HttpStatus.OK,
                "guide.jte",
                Map.of(
                        "frame", pages.frame(request, title),
                        "pages", guide.pages(),
                        "page", page,
                        "asked", asked,
                        "found", guide.search(asked)));
    }
}
